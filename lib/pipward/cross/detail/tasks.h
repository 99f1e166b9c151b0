// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/cross/detail/collection.h"
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
/// Pollen that is used within so many days of collecting is as good as fresh and needs no test; stored pollen
/// is tested after them. Common practice, no source.
inline constexpr int untested_days = 7;

/// What the collections ask of the donors' trees, and the tests that the lots in use ask for. By last safe
/// day.
std::vector<PollenTask> pollen_tasks(const Bench& bench, const std::vector<GoalPlan>& goals,
                                     const std::vector<Collection>& collections);

/// What the goals of this season ask of the seed parents' trees. By first day.
std::vector<FieldTask> field_tasks(const Bench& bench, const std::vector<GoalPlan>& goals);

}  // namespace pipward::cross::detail
