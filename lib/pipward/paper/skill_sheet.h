// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/bloom/forward.h"
#include "pipward/value/day.h"
#include "pipward/value/sentence.h"

namespace pipward::paper {

/// What the sheet of forecast skill is made from.
struct SkillSheet {
    std::string orchard_name;                                  ///< may be empty
    Day as_of;                                                 ///< what was observed later is not in it
    bloom::BloomMethod method = bloom::BloomMethod::averaged;  ///< the one whose forecasts are told
    std::vector<bloom::ForwardScore> scores;  ///< of all methods; single accessions are passed over
};

/// How well past springs were forecast on days of the calendar, as a page of HTML 5 in UTF-8, whole in
/// itself; its appendix shows where among the forecast's scenarios the observed days fell: histograms of the
/// probability integral transform (Dawid 1984, J. R. Stat. Soc. A 147:278, from memory), even where spread
/// and centre are right. Without scores the page says that no spring could be forecast.
std::string skill_sheet_html(const SkillSheet& sheet, const Wording& wording = in_english);

}  // namespace pipward::paper
