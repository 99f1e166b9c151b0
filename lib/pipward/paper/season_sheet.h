// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/bloom/skill.h"
#include "pipward/cross/plan.h"
#include "pipward/value/finding.h"

namespace pipward::paper {

/// What the season's sheet is made from.
struct SeasonSheet {
    std::string orchard_name;                        ///< of the orchard or its book
    const cross::SeasonPlan* plan = nullptr;         ///< needed
    const bloom::BloomForecast* forecast = nullptr;  ///< without it the sheet has no bloom chart and says so
    std::vector<bloom::SkillScore> skill;            ///< the chosen method's lines are told; may be empty
    cross::CrossingAssumptions assumptions;          ///< those the plan was made with
    Findings findings;                               ///< of the book; shown with the plan's own, each once
    std::string subtitle;  ///< printed under the title: "Made-up data ..." for a sample book
};

/// The season's plan as one page of HTML 5 in UTF-8: what to do now, bloom chart, crosses, pollen work, field
/// work, findings, how sure it all is, cautions. Whole in itself (no script, nothing from outside); for a
/// desktop, a phone in the orchard, and A4 paper in black and white.
/// Throws Error (usage) without a plan. Its words are those of the host; names, dates and figures stay.
std::string season_sheet_html(const SeasonSheet& sheet, const Wording& wording = in_english);

}  // namespace pipward::paper
