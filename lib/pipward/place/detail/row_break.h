// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/place/detail/row_curve.h"

/// Inside of the room: places along rows beyond which positions do not go on evenly.
namespace pipward::place::detail {

struct SpacedRow {
    std::span<const double> along;  ///< metres, rising
    double spacing = 1;             ///< metres
    const RowCurve* curve = nullptr;
};

/// Metres along each row, rising: there the trees behind stand by more than `jump` positions off those
/// before, as the eight trees on either side show, taken together with three rows to each side: a road
/// crosses rows that stand beside one another. The phase of one side against the other does not depend on
/// where a row begins, so that staggered rows count together.
std::vector<std::vector<double>> find_breaks(std::span<const SpacedRow> rows, double jump);

}  // namespace pipward::place::detail
