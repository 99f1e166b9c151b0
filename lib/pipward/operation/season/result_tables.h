// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/bloom/skill.h"
#include "pipward/cross/plan.h"
#include "pipward/operation/operation.h"
#include "pipward/season/pipeline.h"
#include "pipward/value/finding.h"

/// The result tables: what each looks like, and how plain results become its rows. The one place.
namespace pipward::operation {

ResultShape finding_shape();
Table finding_table(const Findings& findings);

ResultShape bloom_model_shape();
Table bloom_model_table(std::span<const season::NeedRow> needs);

ResultShape bloom_skill_shape();
Table bloom_skill_table(std::span<const bloom::SkillScore> scores);

/// One row and point a living tree, then one row without a point for each accession without a living tree.
ResultShape bloom_window_shape();
Table bloom_window_table(const bloom::BloomForecast& forecast);

ResultShape cross_outlook_shape();
Table cross_outlook_table(const cross::SeasonPlan& plan);
ResultShape pollen_task_shape();
Table pollen_task_table(const cross::SeasonPlan& plan);
ResultShape field_task_shape();
Table field_task_table(const cross::SeasonPlan& plan);

/// Every table that a book keeps results in.
std::vector<TableShape> book_result_shapes();

}  // namespace pipward::operation
