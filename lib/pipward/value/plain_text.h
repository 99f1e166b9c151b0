// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/value/spoken.h"

namespace pipward::value {

/// Of ASCII only.
constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// Nothing but blanks, tabs and line ends, or empty.
bool is_blank(std::string_view text);

/// Without the blanks, tabs and line ends at both ends.
std::string_view trimmed(std::string_view text);

/// What stands between blanks, tabs and line ends; none for blank text.
std::vector<std::string> words_in(std::string_view text);

}  // namespace pipward::value
