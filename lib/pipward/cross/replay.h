// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <functional>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/cross/plan.h"

/// The plan lived through in a spring that is over, and judged by what bloomed.
namespace pipward::cross {

/// Who works the crosses of a replayed spring.
enum class Planner {
    as_planned,      ///< by the plan of each look, from what was known that day
    with_hindsight,  ///< by the same plan, the whole spring known beforehand
    fresh_only,      ///< fresh pollen on the day it sheds, every day looked at: no plan can do more with it
    fixed_calendar,  ///< on the usual days, whatever the spring
};
inline constexpr std::array planners{Planner::as_planned, Planner::with_hindsight, Planner::fresh_only,
                                     Planner::fixed_calendar};  ///< all of them
/// The word for tables: "as planned".
std::string_view to_text(Planner planner);

/// What a replayed spring is made of. All of it must outlive the call.
struct ReplaySpring {
    const Orchard& orchard;             ///< goals of the spring; no pollen, no work of it
    const bloom::BloomForecast& truth;  ///< what bloomed: as seen when it was over, without spreads
    const std::vector<Day>& looks;      ///< days on which the plan is made, rising
    std::function<bloom::BloomForecast(Day)> forecast_on;  ///< from what was known that day
    std::map<std::string, Day> usual_full_bloom;           ///< by accession, moved to the spring
    std::map<std::string, bool> observed;                  ///< accessions whose full bloom was noted
    CrossingAssumptions assumptions;                       ///< of every planner
};

/// One cross of one spring.
struct ReplayedCross {
    Season season;          ///< the spring
    std::string cross;      ///< code of the goal
    bool observed = false;  ///< full bloom of both parents was noted
    int wanted = 0;         ///< seedlings
    std::array<double, planners.size()>
        done{};  ///< share of its flowers pollinated in time, 0..1, by planner
    /// Changes of the followed way before its flowers are worked; to use what was collected for it is none.
    int flips = 0;
    bool late = false;  ///< work of it was first announced past its last day
};

/// Least share of the flowers pollinated in time that makes a cross a success.
inline constexpr double success_from = 0.9;

/// What a plan said of a cross, and what came.
struct ChanceSaid {
    double chance = 0;  ///< of the followed way, 0..1
    bool came = false;  ///< whether the cross was a success in the end
};

/// One spring.
struct SpringReplay {
    std::vector<ReplayedCross> crosses;  ///< as the goals stand
    std::vector<ChanceSaid> chances;     ///< one a look and cross that is not worked yet
};

/// Between looks all that the last plan asks for is done on the first of its days on which it can be: pollen
/// is collected when balloon flowers stand, flowers are worked when they take pollen and the pollen is dry
/// and germinates. A cut branch gives its pollen. Amounts are taken to be as planned.
SpringReplay replay(const ReplaySpring& spring);

/// One tenth of the scale of chances.
struct Reliability {
    double from = 0;  ///< least chance in it
    int n = 0;        ///< chances said
    double said = 0;  ///< their mean
    double came = 0;  ///< share that came about
};
/// The tenths in which any chance fell, rising.
std::vector<Reliability> reliability(std::span<const ChanceSaid> chances);

}  // namespace pipward::cross
