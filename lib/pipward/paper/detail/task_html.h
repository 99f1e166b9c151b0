// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "pipward/cross/plan.h"
#include "pipward/paper/speech.h"

/// How the sheet words one task; all of it markup.
namespace pipward::paper::detail {

/// "Collect balloon flowers of Ember, tree A-03".
std::string work_html(const cross::PollenTask& task, const Speech& speech);
/// "Pollinate Larkfold Red, tree B-11, with Ember".
std::string work_html(const cross::FieldTask& task, const Speech& speech);

/// "too late", "today" ...: a word in a frame whose stroke tells them apart without colour.
std::string urgency_tag(cross::Urgency urgency, const Speech& speech);
/// "for spring 2027" when the pollen is kept for a later season than the plan's; else nothing.
std::string later_season_tag(const cross::PollenTask& task, Season season, const Speech& speech);
/// A last safe day in bold; one that is a median is not, and says so. `day` is markup.
std::string last_day_html(const std::string& day, bool by_median, const Speech& speech);
/// First day, then the last one as above.
std::string days_html(Day from, Day to, bool by_median, const Speech& speech);
/// A box to tick; `what` says to a listener which task it belongs to.
std::string tick_box(const Sentence& what, const Speech& speech);

}  // namespace pipward::paper::detail
