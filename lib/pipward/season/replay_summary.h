// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/cross/replay.h"

namespace pipward::season {

/// How one planner fared over all replayed springs.
struct PlannerScore {
    cross::Planner planner = cross::Planner::as_planned;  ///< the one scored
    int springs = 0;                                      ///< replayed
    int crosses = 0;                                      ///< of all springs
    double success = 0;                                   ///< share of the crosses, 0..1
    double success_sd = 0;    ///< of that share from spring to spring; 0 with one spring
    double seedlings = 0;     ///< wanted ones times the share of the flowers pollinated in time
    double of_hindsight = 0;  ///< seedlings over those with hindsight; 0 where hindsight has none
};

/// The replays together.
struct ReplayScore {
    std::vector<PlannerScore> planners;         ///< one each, in the order of cross::planners
    std::vector<cross::ReplayedCross> crosses;  ///< of all springs
    std::vector<cross::Reliability> chances;    ///< of all springs
    double flipped = 0;                         ///< share of the crosses that changed their way, 0..1
    int late = 0;                               ///< crosses first announced too late
};

/// `replays` may be empty.
ReplayScore score_replays(std::span<const cross::SpringReplay> replays);

}  // namespace pipward::season
