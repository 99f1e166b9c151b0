// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/seed/trial.h"

namespace pipward::seed::detail {

/// Every two arms compared. Shape: n (n - 1) / 2, by their order in `arms`.
std::vector<TrialPair> compare_arms(const std::vector<TrialArm>& arms);

}  // namespace pipward::seed::detail
