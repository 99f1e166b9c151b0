// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/cross/plan.h"
#include "pipward/operation/operation.h"
#include "pipward/season/field_work.h"

/// What people ask of the season first, in a few lines.
namespace pipward::operation::detail {

/// What is late, what has its last day today, what can be done within a week, and what comes next.
std::vector<AnswerLine> work_answer(std::vector<season::FieldWorkItem> work, Day as_of);

/// The crosses by verdict, the best first; a cross is as good as its best way.
std::vector<AnswerLine> crosses_answer(const cross::SeasonPlan& plan);

/// Both: the work at pollen and flowers, then the crosses.
std::vector<AnswerLine> plan_answer(const cross::SeasonPlan& plan);

}  // namespace pipward::operation::detail
