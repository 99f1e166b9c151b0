// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "pipward/record/table.h"
#include "pipward/value/spoken.h"

/// Result tables as text that leaves the house.
namespace pipward::record {

/// RFC 4180: a header of column names, CR LF ends, quotes where a comma, quote or line end asks for them.
/// UTF-8 without mark. Unknown is empty.
std::string to_csv(const Table& table);

/// Aligned columns for a terminal: title, labels with units, then the rows. Numbers to the right, at most
/// three decimals (CSV and JSON carry them whole); unknown as "-"; words of a closed list plain. A text stays
/// in its cell whatever it holds: line ends become blanks, control characters and turns of direction U+FFFD,
/// and the longest are cut.
std::string to_terminal(const Table& table);

/// Columns that a UTF-8 text takes on a terminal: two for East Asian wide characters, none for combining
/// marks.
int terminal_width(std::string_view utf8);

}  // namespace pipward::record
