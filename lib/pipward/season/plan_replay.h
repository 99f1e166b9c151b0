// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/cross/replay.h"
#include "pipward/season/pipeline.h"

namespace pipward::season {

/// Which springs are replayed, and how.
struct ReplayRequest {
    PlanWish wish{MethodChoice::averaged};  ///< how bloom is forecast and crosses are planned
    int days_between_looks = 7;             ///< 1..30
    std::optional<int> first_season{};      ///< empty: the first with three of observations before it
};

/// Every past spring with observations. The goals are those of the place's season, or of the last season that
/// has any, moved to each spring as far as both parents stood then; no pollen is in hand when it begins.
/// What is known on a day: earlier springs, this spring's notes up to it, weather up to it. What bloomed:
/// the noted full bloom; where nobody noted it, the forecast with all weather and notes known stands for it.
/// Throws Error (input) where no spring can be replayed.
std::vector<cross::SpringReplay> replay_springs(const Place& place, const ReplayRequest& request,
                                                const Step& step = quietly());

}  // namespace pipward::season
