// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/place/detail/row_contest.h"
#include "pipward/place/detail/row_reading.h"

/// Inside of the room: at which number each row's positions begin.
namespace pipward::place::detail {

struct DecodedRow {
    TakenRow taken{};
    int start = 0;         ///< number of the row's first position
    double certainty = 0;  ///< that it is the first
};

struct FoundStarts {
    bool clear = true;  ///< false: there is no common edge, or too few rows show one
    bool ask = false;   ///< one answer would tell more
};

/// Sets start and certainty of each row.
FoundStarts find_starts(std::vector<DecodedRow>& rows, const RowReading& found, const RecoveryRule& rule);

}  // namespace pipward::place::detail
