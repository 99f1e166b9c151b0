// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace pipward {

inline constexpr char32_t replacement_character = 0xFFFD;

/// The code points of UTF-8 text; every byte that belongs to none gives one replacement character.
std::u32string code_points_of(std::string_view text);
std::string to_utf8(std::u32string_view code_points);

/// Whether HTML and XML both allow the code point in text.
bool is_markup_character(char32_t c);

/// A character as readers see it: a code point with the marks and joined code points that follow it.
struct Cluster {
    std::u32string code_points;
    double em = 0;  ///< estimated width
};
std::vector<Cluster> clusters_of(std::string_view text);

}  // namespace pipward
