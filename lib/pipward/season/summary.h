// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>

#include "pipward/bloom/forecast.h"
#include "pipward/cross/plan.h"

namespace pipward::season {

/// "Season 2026 as of 2026-03-20: full bloom from 14 Apr (A) to 2 May (B), forecast by averaged."
Sentence summary_of(const bloom::BloomForecast& forecast);
/// Of each cross by its code: it is as good as its best way.
std::map<std::string, cross::Verdict> verdicts_of(const cross::SeasonPlan& plan);
/// "Of 9 crosses 5 are good, 3 fair, 1 unlikely. 4 pieces of pollen work, the first by 3 Apr."
Sentence summary_of(const cross::SeasonPlan& plan);

}  // namespace pipward::season
