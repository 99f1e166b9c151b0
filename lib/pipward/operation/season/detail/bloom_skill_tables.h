// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/operation/declare/column_of.h"
#include "pipward/season/pipeline.h"

/// The result tables of scoring forward in time, and the days of issue as people write them.
namespace pipward::operation::detail {

/// The forecast methods, for a column that holds them.
std::vector<CodeWord> methods_as_codes();

/// One row a method, stage, issue day and: accession, species, "all".
ResultShape bloom_skill_shape();
/// In the order of the scores; `chosen` is the method that forecasts use.
Table bloom_skill_table(std::span<const bloom::ForwardScore> scores, bloom::BloomMethod chosen);

/// One row a stage, issue day, species (or "all") and tenth of the forecast.
ResultShape forecast_place_shape();
/// Of the scores of `chosen`; single accessions are left out.
Table forecast_place_table(std::span<const bloom::ForwardScore> scores, bloom::BloomMethod chosen);

/// One row a way and issue day for all probabilities, then one a tenth of the scale in which any fell.
extern const TableOf<cross::MeetingScore> meeting_skill_table;

/// "02-15, 03-01": nothing where a part is no day of a year.
std::optional<std::vector<bloom::DayOfYear>> read_issue_days(const std::string& text);
/// From mid-February to mid-April, in the south half a year later.
std::vector<bloom::DayOfYear> usual_issue_days(Hemisphere hemisphere);

}  // namespace pipward::operation::detail
