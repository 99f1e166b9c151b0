// SPDX-License-Identifier: MIT
#include "console/terminal.h"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdio>

#include "pipward/value/utf8.h"

namespace pipward::console {
namespace {

volatile std::sig_atomic_t interrupt_count = 0;

extern "C" void on_interrupt(int signal) {
    interrupt_count = 1;
    std::signal(signal, SIG_DFL);
}

constexpr int bar_cells = 30;

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
               100 * share, step);
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
    fmt::print(stderr, "{}\n", one_line(line, longest));
}

}  // namespace pipward::console
