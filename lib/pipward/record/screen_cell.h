// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/record/table.h"

/// Cells as people read them on a screen: short days, chances in per cent, plain words.
namespace pipward::record {

/// Whether the column holds parts of a whole, 0 to 1 or per cent: by its unit.
bool is_part_of_whole(const Column& column);

/// "96 %", below ten per cent with a decimal ("3.1 %"), sixteenths in full ("12.5 %", "6.25 %"); "<0.1 %" and
/// ">99 %" rather than a false none or all.
std::string per_cent(double share);

/// Unknown is "-". A text stays one line whatever it holds: line ends become blanks, control characters and
/// turns of direction U+FFFD.
std::string cell_on_screen(const Column& column, const Cell& cell, std::optional<int> year);

/// The label with its unit, where the cells do not tell it.
std::string head_on_screen(const Column& column);

}  // namespace pipward::record
