// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/record/screen_table.h"

/// What standard output and standard error lead to: how wide it is and what it can show.
namespace pipward::console {

/// Of standard output: COLUMNS where that is set to a number, else the terminal's width, else 100 columns.
/// Bold letters only on a terminal, never where NO_COLOR is set to anything (no-color.org) or TERM is "dumb".
record::Screen output_screen();

/// Of standard error; without a terminal its width is 0: lines stay whole, for logs and searches.
record::Screen error_screen();

/// The words in lines that the screen holds, each after the first moved in; whole where its width is 0.
std::string in_lines(const std::string& text, const record::Screen& screen, int moved_in);

}  // namespace pipward::console
