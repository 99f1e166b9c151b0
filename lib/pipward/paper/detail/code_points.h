// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/value/utf8.h"

namespace pipward::paper::detail {

/// Whether HTML and XML both allow the code point in text.
bool is_markup_character(char32_t c);

/// A character as readers see it: a code point with the marks and joined code points that follow it.
struct Cluster {
    std::u32string code_points;
    double em = 0;  ///< estimated width
};
std::vector<Cluster> clusters_of(std::string_view text);

}  // namespace pipward::paper::detail
