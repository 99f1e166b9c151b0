// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/bloom/skill.h"
#include "pipward/cross/plan.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/season/pipeline.h"
#include "pipward/value/finding.h"

/// The result tables: what each looks like, and how plain results become its rows. The one place.
namespace pipward::operation {

/// One row a finding.
extern const TableOf<Finding> finding_table;

/// One row an accession: what it needs before it blooms.
extern const TableOf<season::NeedRow> bloom_model_table;

/// One row a method and lead, of one accession or of all together: how far it was off on seasons left out.
extern const TableOf<bloom::SkillScore> bloom_left_out_table;

/// One row and point a living tree, then one row without a point for each accession without a living tree.
ResultShape bloom_window_shape();
/// In the order of the forecast.
Table bloom_window_table(const bloom::BloomForecast& forecast);

/// One row a cross and way of making it.
ResultShape cross_outlook_shape();
/// In the order of the plan.
Table cross_outlook_table(const cross::SeasonPlan& plan);
/// One row a piece of work on pollen.
ResultShape pollen_task_shape();
/// In the order of the plan.
Table pollen_task_table(const cross::SeasonPlan& plan);
/// One row a piece of work at a tree.
ResultShape field_task_shape();
/// In the order of the plan.
Table field_task_table(const cross::SeasonPlan& plan);

/// Every table that a book keeps results in.
std::vector<TableShape> book_result_shapes();

}  // namespace pipward::operation
