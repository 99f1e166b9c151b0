// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <vector>

#include "pipward/place/walk.h"
#include "pipward/value/finding.h"

/// A planned walk, stop by stop, as people follow it.
namespace pipward::place {

/// Where a leg of the walk leads. Points into the orchard and the walk.
struct WalkStop {
    int order = 0;               ///< from 1
    const Tree* tree = nullptr;  ///< null for the end of the walk
    const WalkLeg* leg = nullptr;
    double walked = 0;   ///< metres from the beginning up to here
    Sentence address{};  ///< of the tree; empty where unknown
    Sentence from{};     ///< "start", or the label of the tree before
};
std::vector<WalkStop> walk_stops(const Walk& walk, const Orchard& orchard);

/// A warning for every leg to which no way round the rows leads.
Findings barred_legs(const Walk& walk, const Orchard& orchard);

/// Throws Error (input) for more stops than a walk can have.
void expect_walkable(std::size_t trees);

/// "12 trees, 340 m to walk: no order is shorter."
Sentence walk_summary(const Walk& walk, std::size_t trees);

}  // namespace pipward::place
