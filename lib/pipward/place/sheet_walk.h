// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "pipward/place/walk.h"

namespace pipward::place {

/// The trees of a sheet in the order in which to come to them.
struct SheetWalk {
    /// One tree of the walk.
    struct Stop {
        const Tree* tree = nullptr;    ///< into the orchard, which must outlive this; null in none of `stops`
        std::optional<double> walked;  ///< metres up to here; nothing for a tree without a place on the map
    };
    std::vector<Stop> stops;  ///< in the order of the walk
    double metres = 0;        ///< of the whole walk; 0 where nobody walks
};

/// So many stops take some seconds; more are no walk of a day.
inline constexpr std::size_t most_stops = 1500;

/// Labels that no tree has are passed over; trees without a place come last, by label. Throws Error (input)
/// for more stops than a walk can have. `progress` is told the share done, 0 to 1, and may throw to stop it.
SheetWalk walk_to(const std::set<std::string>& labels, const Orchard& orchard,
                  const std::optional<WalkEnd>& start, const std::function<void(double)>& progress = {});

}  // namespace pipward::place
