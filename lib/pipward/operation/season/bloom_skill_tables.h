// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "pipward/record/table.h"
#include "pipward/season/meeting_skill.h"
#include "pipward/season/pipeline.h"

/// The result tables of scoring forward in time, and the days of issue as people write them.
namespace pipward::operation {

/// One row a method, stage, issue day and: accession, species, "all".
TableShape bloom_skill_shape();
Table bloom_skill_table(std::span<const bloom::ForwardScore> scores, bloom::BloomMethod chosen);

/// One row a way and issue day for all chances, then one a tenth of the scale in which any fell.
TableShape meeting_skill_shape();
Table meeting_skill_table(std::span<const season::MeetingScore> scores);

/// "02-15, 03-01": nothing where a part is no day of a year.
std::optional<std::vector<bloom::DayOfYear>> read_issue_days(const std::string& text);
/// From mid-February to mid-April, in the south half a year later.
std::vector<bloom::DayOfYear> usual_issue_days(Hemisphere hemisphere);

}  // namespace pipward::operation
