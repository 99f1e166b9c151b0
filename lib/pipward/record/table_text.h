// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "pipward/record/table.h"
#include "pipward/value/spoken.h"

/// Result tables as text that leaves the house.
namespace pipward::record {

/// RFC 4180: a header of column names, CR LF ends, quotes where a comma, quote or line end asks for them.
/// UTF-8 without mark. Unknown is empty. Text that a spreadsheet could take for a formula has an apostrophe
/// before it, and control characters are U+FFFD: see spreadsheet_text.h.
std::string to_csv(const Table& table);

/// Aligned columns as wide as they need: title, labels with units, then the rows. Numbers to the right, at
/// most three decimals (CSV and JSON carry them whole); unknown as "-"; words of a closed list plain. A text
/// stays in its cell whatever it holds: line ends become blanks, control characters and turns of direction
/// U+FFFD, and the longest are cut. For a screen of a given width see screen_table.h.
std::string to_terminal(const Table& table);

/// "Pollen (mg)": the label with its unit, where the label is not the unit's name already.
std::string head_of(const Column& column);
/// At most three decimals, trailing zeros gone.
std::string short_number(double number);

}  // namespace pipward::record
