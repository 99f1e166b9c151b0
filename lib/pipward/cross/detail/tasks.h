// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/cross/detail/goal_plan.h"
#include "pipward/cross/plan.h"
#include "pipward/cross/urgency.h"

namespace pipward::cross::detail {

/// A lot that will be used is tested when its last test is older than this on the day of use. Common
/// practice, no source.
inline constexpr int test_holds_days = 60;
/// Tests are made so long before use that there is still time to do without the lot. Common practice, no
/// source.
inline constexpr int test_ahead_days = 14;

/// What the chosen ways ask of the donors' trees and of the lots, collected by donor, season of use and work.
/// By last safe day.
std::vector<PollenTask> pollen_tasks(const Bench& bench, const std::vector<GoalPlan>& goals);

/// What the goals of this season ask of the seed parents' trees. By first day.
std::vector<FieldTask> field_tasks(const Bench& bench, const std::vector<GoalPlan>& goals);

}  // namespace pipward::cross::detail
