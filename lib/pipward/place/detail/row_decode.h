// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <limits>
#include <span>
#include <vector>

/// Inside of the room: which tree of a row stands at which position, with what certainty. Lengths are metres.
namespace pipward::place::detail {

/// A row's positions lie at origin + step * number.
struct PositionScale {
    double origin = 0;
    double step = 1;
    double noise = 0.1;    ///< standard deviation along the row, above 0
    double missing = 0.1;  ///< share of positions without a tree, above 0, below 1
    int lowest = std::numeric_limits<int>::min() / 2;  ///< no position before it
    int highest = std::numeric_limits<int>::max() / 2;
    double stray = 0.0005;  ///< share of points that belong to no position, above 0, below 1
    double tails = 0;       ///< share of points whose error is three times as great, 0..1
};

struct PlacedPoint {
    int number = 0;
    double certainty = 0;  ///< that it stands there, and alone; 0..1 as the next two
    double shared = 0;     ///< that it shares its position with another point
    double stray = 0;      ///< that it belongs to no position
};

/// `along` in rising order. The posterior of a hidden Markov chain over the points, by the forward-backward
/// algorithm (Rabiner 1989, Proc. IEEE 77:257): each stands at a later position than the one before it,
/// rarely at the same one (1 in 2000), rarely at none; positions may be missed. Both rates are common
/// practice, no source. Two neighbours that may have changed places lower each other's certainty: our
/// own addition, because the chain keeps the order of the points and noise may not.
std::vector<PlacedPoint> decode_row(std::span<const double> along, const PositionScale& scale);

}  // namespace pipward::place::detail
