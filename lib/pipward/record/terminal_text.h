// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/value/spoken.h"

/// Text in the cells of a terminal's grid. Needs no terminal and no locale.
namespace pipward::record {

/// Columns that a UTF-8 text takes on a terminal: two for East Asian wide characters and emoji, none for
/// combining marks and other characters without width; ambiguous ones count as narrow (Unicode Standard Annex
/// 11).
int terminal_width(std::string_view utf8);

/// The text in lines of at most `width` columns (2 or more), broken at blanks; a word that is longer than a
/// line is broken where the line is full. Several blanks become one. Empty text gives one empty line.
std::vector<std::string> broken_into_lines(std::string_view utf8, int width);

/// The width of the longest word: below it a line has to break one.
int longest_word(std::string_view utf8);

}  // namespace pipward::record
