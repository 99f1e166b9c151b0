// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/bloom/skill.h"
#include "pipward/cross/plan.h"
#include "pipward/record/table.h"
#include "pipward/season/pipeline.h"
#include "pipward/value/finding.h"

/// The result tables: what each looks like, and how plain results become its rows. The one place.
namespace pipward::operation {

TableShape finding_shape();
Table finding_table(const Findings& findings);

TableShape bloom_model_shape();
Table bloom_model_table(std::span<const season::NeedRow> needs);

TableShape bloom_left_out_shape();
Table bloom_left_out_table(std::span<const bloom::SkillScore> scores);

/// One row and point a living tree, then one row without a point for each accession without a living tree.
TableShape bloom_window_shape();
Table bloom_window_table(const bloom::BloomForecast& forecast);

TableShape cross_outlook_shape();
Table cross_outlook_table(const cross::SeasonPlan& plan);
TableShape pollen_task_shape();
Table pollen_task_table(const cross::SeasonPlan& plan);
TableShape field_task_shape();
Table field_task_table(const cross::SeasonPlan& plan);

/// Every table that a book keeps results in.
std::vector<TableShape> book_result_shapes();

}  // namespace pipward::operation
