// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/place/detail/numbering.h"
#include "pipward/place/detail/row_lines.h"

/// Inside of the room: trees between two rows that might belong to either.
namespace pipward::place::detail {

/// A row with the numbers of its trees.
struct TakenRow {
    int row = 0;
    RowMembers members{};
    std::vector<PlacedPoint> points{};
    PositionScale scale{};
};

/// Weighs again which row each point belongs to, now that some positions are surely taken: a point between
/// two rows rather belongs to the one that has a gap there. Only trees that are sure themselves take a
/// position, so that two doubtful ones cannot make each other sure. Bayes' theorem, a taken position counting
/// two thousandths of a free one: common practice, no source. `rows` rise by their number.
std::vector<RowOfPoint> weigh_rows(std::span<const RowPoint> points, const FittedRows& fit,
                                   std::span<const TakenRow> rows);

}  // namespace pipward::place::detail
