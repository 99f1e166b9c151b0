// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/cross/detail/collection.h"

namespace pipward::cross::detail {

/// Makes one decision of what the goals have chosen each by itself, and writes it into the rows of all of
/// them: the days on which every member of a blend has pollen; stored pollen where the donor's is stored for
/// another cross anyway; a second way where the first is doubtful; the collections. Reasons and verdicts
/// follow from it. Whatever is told of the plan after this comes from its rows and collections.
std::vector<Collection> agree(const Bench& bench, std::vector<GoalPlan>& goals);

}  // namespace pipward::cross::detail
