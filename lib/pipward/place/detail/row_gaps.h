// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

/// Inside of the room: rows without a tree between rows that have some.
namespace pipward::place::detail {

struct GapReading {
    std::vector<int> skipped{};  ///< of each gap: rows without trees that have room in it; 0 for most
    bool alleys = false;         ///< wide gaps come at even steps, as alleys do: no rows are missing there
};

/// `gaps` are metres from row to row. Only rows that are evenly apart otherwise show that one has room
/// between two: a gap twice, three or four times as wide as most, within a fifth. At least three of them with
/// equally many rows between are alleys.
GapReading read_gaps(std::span<const double> gaps);

}  // namespace pipward::place::detail
