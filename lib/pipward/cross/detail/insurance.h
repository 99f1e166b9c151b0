// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/cross/detail/goal_plan.h"

namespace pipward::cross::detail {

/// A second way is worth its work where it raises the chance by at least this. Common practice, no source.
inline constexpr double worth_insuring = 0.10;
/// It is not asked for longer before its last day: the forecast may still settle the matter. Common practice,
/// no source.
inline constexpr int insured_ahead_days = 14;

/// Where the pollen that a goal's donor is to give this spring may well come too late, marks a forced branch
/// of it as a second way, and tells what it brings and costs.
void insure(const Bench& bench, GoalPlan& plan);

}  // namespace pipward::cross::detail
