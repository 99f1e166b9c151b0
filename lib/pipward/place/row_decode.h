// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <limits>
#include <span>
#include <vector>

/// Inside of the room: which tree of a row stands at which position, with what certainty.
namespace pipward::place {

/// A row's positions lie at origin + step * number.
struct PositionScale {
    double origin = 0;
    double step = 1;
    double noise = 0.1;                                ///< standard deviation along the row
    double missing = 0.1;                              ///< share of positions without a tree
    int lowest = std::numeric_limits<int>::min() / 2;  ///< no position before it
    int highest = std::numeric_limits<int>::max() / 2;
};

struct PlacedPoint {
    int number = 0;
    double certainty = 0;  ///< that it stands there, and alone
    double shared = 0;     ///< that it shares its position with another point
    double stray = 0;      ///< that it belongs to no position
};

/// `along` in rising order. The posterior of a hidden Markov chain over the points: each stands at a later
/// position than the one before it, rarely at the same one, rarely at none; positions may be missed. Two
/// neighbours that may have changed places lower each other's certainty.
std::vector<PlacedPoint> decode_row(std::span<const double> along, const PositionScale& scale);

}  // namespace pipward::place
