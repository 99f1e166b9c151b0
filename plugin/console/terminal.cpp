// SPDX-License-Identifier: MIT
#include "console/terminal.h"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdio>

#include "console/screen.h"
#include "pipward/record/terminal_text.h"
#include "pipward/value/finding.h"
#include "pipward/value/utf8.h"

namespace pipward::console {
namespace {

volatile std::sig_atomic_t interrupt_count = 0;

extern "C" void on_interrupt(int signal) {
    interrupt_count = 1;
    std::signal(signal, SIG_DFL);
}

constexpr int bar_cells = 30;
constexpr int bar_width = bar_cells + 11;  // with its frame and the share

/// As much of the step as stands beside the bar: the bar is drawn over itself, so it must be one line.
std::string beside_bar(std::string_view step) {
    const int room = error_screen().width - bar_width - 1;
    return room < 2 ? "" : record::broken_into_lines(step, room).front();
}

/// Levels stand out where the screen can show it.
std::string with_level_in_bold(const std::string& text, const record::Screen& screen) {
    for (const auto level : {Level::error, Level::warning}) {
        const auto word = fmt::format("{}:", to_text(level));
        if (text.starts_with(word)) {
            return bold(word, screen) + text.substr(word.size());
        }
    }
    return text;
}

}  // namespace

void listen_for_interrupt() {
    std::signal(SIGINT, on_interrupt);
    std::signal(SIGTERM, on_interrupt);
}

bool interrupted() {
    return interrupt_count != 0;
}

ProgressBar::ProgressBar(bool wanted) : wanted_(wanted && isatty(STDERR_FILENO) != 0) {}

ProgressBar::~ProgressBar() {
    clear();
}

void ProgressBar::show(double share, std::string_view step) {
    if (!wanted_) {
        return;
    }
    const int filled = std::clamp(static_cast<int>(share * bar_cells), 0, bar_cells);
    fmt::print(stderr, "\r[{:#>{}}{:.>{}}] {:3.0f} %  {}\033[K", "", filled, "", bar_cells - filled,
               100 * share, beside_bar(step));
    std::fflush(stderr);
    shown_ = true;
}

void ProgressBar::clear() {
    if (shown_) {
        fmt::print(stderr, "\r\033[K");
        std::fflush(stderr);
        shown_ = false;
    }
}

void tell(std::string_view line) {
    constexpr std::size_t longest = 4000;
    constexpr int moved_in = 2;
    const auto screen = error_screen();
    fmt::print(stderr, "{}\n",
               with_level_in_bold(in_lines(one_line(line, longest), screen, moved_in), screen));
}

}  // namespace pipward::console
