// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/cross/detail/choice.h"
#include "pipward/cross/detail/crossing.h"
#include "pipward/cross/detail/way_outlook.h"

namespace pipward::cross::detail {

/// What is planned with one donor of a goal.
struct DonorPlan {
    Crossing crossing;             ///< the goal with this donor
    PollenNeed need;               ///< what is asked of its pollen
    std::vector<WayOutlook> ways;  ///< chosen first
    /// A cross of this season that fails for want of pollen: what to collect now, so that the next can work.
    std::optional<WayOutlook> for_next_spring;
};

/// What is planned for one goal.
struct GoalPlan {
    const CrossGoal* goal = nullptr;  ///< never null
    bool next_season = false;         ///< the goal is of the season after the forecast's
    std::vector<DonorPlan> donors;    ///< one, or a blend's members by name
    bool together = true;             ///< there are days on which every member of a blend has pollen
};

/// One goal with all its donors: which ways are followed. Members of a blend that have no chance leave their
/// share to the others. `ledger` holds what the goals before take from the lots; this goal's own is added.
/// Days and stores are still those that each way has by itself: see agreement.h.
GoalPlan plan_goal(Bench& bench, const CrossGoal& goal, LotLedger& ledger);

/// Whether the plan follows this way in the field: chosen, with a chance and with flowers left to work.
bool worth_doing(const WayOutlook& way);
std::vector<WayOutlook*> followed(DonorPlan& donor);              ///< those worth doing, in their order
std::vector<const WayOutlook*> followed(const DonorPlan& donor);  ///< likewise

/// Verdicts and reasons of all its ways, when everything is decided.
void finish_plan(GoalPlan& plan);

}  // namespace pipward::cross::detail
