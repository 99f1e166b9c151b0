// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "pipward/place/row_barrier.h"

/// A walk to a set of trees that keeps to the alleys.
namespace pipward::place {

/// A gate, or a tree.
struct WalkEnd {
    MapPoint at;                          ///< in the book's system
    std::optional<std::uint32_t> tree{};  ///< into Orchard::trees
};

/// What the walk is to be.
struct WalkWish {
    std::vector<std::uint32_t> trees;  ///< into Orchard::trees: each has a place, none twice
    std::optional<WalkEnd> start;      ///< where the best walk begins, where left out
    std::optional<WalkEnd> end;        ///< at the best last stop, where left out
    BarrierRules rules;                ///< looked at only where rows bar
    bool rows_bar = true;              ///< whether rows are in the way at all
};

/// A part of the walk: from the stop before it (or the start) to the next.
struct WalkLeg {
    std::optional<std::uint32_t> tree;  ///< where it leads; nothing for the last one, to the end
    double metres = 0;                  ///< to walk
    Sentence side{};                    ///< of the row on which one stands: "north-east"; empty without a row
    Sentence alley{};                   ///< "between rows 3 and 4", "outside of row 5"
    std::vector<MapPoint> line{};       ///< empty for a first stop without a start
    bool through_rows = false;          ///< no way round them was found: the line is straight
};

/// The walk found; empty for no trees.
struct Walk {
    std::vector<WalkLeg> legs;  ///< in the order of the walk
    double metres = 0;          ///< the sum of its legs
    bool is_shortest = false;   ///< for certain; else as short as was found
};

/// The walk: from alley to alley only round the ends of rows and through gaps, each tree worked from
/// whichever side makes the whole shorter. `tell` is called with the share done and may throw to stop the
/// work.
Walk plan_walk(const Orchard& orchard, const WalkWish& wish, const std::function<void(double)>& tell = {});

}  // namespace pipward::place
