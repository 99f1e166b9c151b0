// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/place/detail/numbering.h"

/// Inside of the room: trees between two rows that might belong to either.
namespace pipward::place::detail {

/// A row that a tree may belong to, and where it would stand in it.
struct RowChoice {
    int row = 0;
    double number = 0;  ///< positions along the row, whole at a position
    double off = 0;     ///< metres across from its line, positive to the right
};

struct RowOfPoint {
    RowChoice choice{};
    double certainty = 0;  ///< that it belongs to that row, 0..1
};

/// A row with the numbers of its trees; members and scale are in positions.
struct TakenRow {
    int row = 0;
    RowMembers members{};
    std::vector<PlacedPoint> points{};
    PositionScale scale{};
};

struct RowNoise {
    double across = 0.1;  ///< standard deviation, metres
    double distance = 4;  ///< from row to row, metres
    double tails = 0;     ///< share of trees whose error is three times as great, 0..1
};

/// Weighs which row each point belongs to. Where some positions are surely taken (`rows` is not empty, and
/// rises by number) a point between two rows rather belongs to the one that has a gap there. Only trees that
/// are sure themselves take a position, so that two doubtful ones cannot make each other sure. Bayes'
/// theorem, a taken position counting two thousandths of a free one: common practice, no source. Points
/// without a choice have the row -1.
std::vector<RowOfPoint> weigh_rows(std::span<const std::vector<RowChoice>> points, const RowNoise& noise,
                                   std::span<const TakenRow> rows);

/// How often a point between the rows belongs to none: common practice, no source.
inline constexpr double share_stray = 0.0005;

}  // namespace pipward::place::detail
