// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

/// The little of statistics that the sums of crossing need.
namespace pipward::cross {

/// The chance that a standard normal value lies below `z`.
double normal_below(double z);
/// The z below which a standard normal value lies with this chance. Range of chance: clamped to
/// 0.0001..0.9999.
double normal_quantile(double chance);

/// Of equally likely whole numbers: the smallest that at least `chance` of them do not exceed.
/// Nothing for none.
std::optional<int> quantile(std::vector<int> values, double chance);

}  // namespace pipward::cross
