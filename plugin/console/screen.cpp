// SPDX-License-Identifier: MIT
#include "console/screen.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <optional>
#include <sstream>
#include <string_view>

#include "pipward/record/terminal_text.h"

namespace pipward::console {
namespace {

constexpr int least_width = 20;
constexpr int most_width = 1000;
constexpr int width_of_no_terminal = 100;

std::string_view environment(const char* name) {
    const char* value = std::getenv(name);  // NOLINT(concurrency-mt-unsafe): no thread changes it
    return value == nullptr ? std::string_view{} : std::string_view{value};
}

std::optional<int> wished_width() {
    const auto text = environment("COLUMNS");
    int width = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), width);
    const bool is_number = read.ec == std::errc{} && read.ptr == text.data() + text.size();
    return is_number && width > 0 ? std::optional{width} : std::nullopt;
}

std::optional<int> terminal_width_of(int file) {
    winsize size{};
    const bool known = ioctl(file, TIOCGWINSZ, &size) == 0 && size.ws_col > 0;
    return known ? std::optional<int>{size.ws_col} : std::nullopt;
}

int width_of(int file) {
    const auto width = wished_width().value_or(terminal_width_of(file).value_or(width_of_no_terminal));
    return std::clamp(width, least_width, most_width);
}

bool shows_styles(int file) {
    return isatty(file) != 0 && environment("NO_COLOR").empty() && environment("TERM") != "dumb";
}

}  // namespace

record::Screen output_screen() {
    return {.width = width_of(STDOUT_FILENO), .styled = shows_styles(STDOUT_FILENO)};
}

record::Screen error_screen() {
    const bool is_terminal = isatty(STDERR_FILENO) != 0;
    return {.width = is_terminal ? width_of(STDERR_FILENO) : 0, .styled = shows_styles(STDERR_FILENO)};
}

std::string in_lines(const std::string& text, const record::Screen& screen, int moved_in) {
    if (screen.width == 0) {
        return text;
    }
    const std::string blanks(static_cast<std::size_t>(moved_in), ' ');
    std::string lines;
    std::istringstream paragraphs(text);
    for (std::string paragraph; std::getline(paragraphs, paragraph);) {
        for (const auto& line : record::broken_into_lines(paragraph, screen.width - moved_in)) {
            lines += (lines.empty() ? "" : "\n" + blanks) + line;
        }
    }
    return lines;
}

}  // namespace pipward::console
