// SPDX-License-Identifier: MIT
#pragma once

#include <bitset>
#include <optional>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/value/season.h"

/// The courses that one accession's spring may take, day by day, for crossing.
namespace pipward::cross::detail {

/// Days of a season as bits; bit 0 is season_first.
using SeasonDays = std::bitset<season_length>;

/// A seed parent can be worked while so much of its flowers can take pollen at once, and a donor collected
/// while so much stands at balloon: below a tenth one looks for flowers more than one works. Common practice,
/// no source.
inline constexpr Share least_at_once{0.10};

/// A flower stands at balloon for so many degree-days above ladder_base before it opens: one and a half days
/// at 20 °C. Common practice, no source (forced branches open from balloon in 1 to 2 days).
inline constexpr DegreeDays balloon_lasts{30};

/// Fresh pollen is collected at balloon, dried, and used within so many days of collecting.
inline constexpr int fresh_from_days = 1;
inline constexpr int fresh_to_days = 3;  ///< both common practice, no source

/// A run of season days, both ends in it; empty where `last` lies before `first`.
struct DayRun {
    SeasonDay first = season_last + 1;  ///< past the season where it is empty
    SeasonDay last = season_first - 1;  ///< before the season where it is empty

    /// Whether there is no such day.
    bool empty() const { return last < first; }
};

/// One member's weather with one node of the season's spread and one of the window's own.
struct BloomCourse {
    double full_bloom = 0;  ///< fractional season day
    SeasonDays
        workable;      ///< days on which at least least_at_once of the flowers can take pollen and set seed
    DayRun working;    ///< first and last of these
    DayRun balloon;    ///< days on which at least least_at_once of the flowers stand at balloon
    SeasonDays fresh;  ///< days on which fresh pollen can be on hand
};

/// Every course of a window, all equally likely.
/// Shape: members x residual nodes of the season x residual nodes of the window's own, the last changing
/// fastest: two windows of a forecast share weather and season where the first two agree. What the ladder
/// leaves open of a bloom's ends is in the nodes, as if it moved the whole bloom.
struct BloomCourses {
    const std::vector<bloom::SeasonCurves>* curves = nullptr;  ///< one a member
    SeasonDay from = season_first;                             ///< earlier days are over and left out
    std::vector<BloomCourse> each;                             ///< in the order told above
    double too_cold = 0;  ///< share of the courses in which no flower could set seed, for cold alone
};

/// `forecast` must outlive the result.
BloomCourses bloom_courses(const bloom::BloomForecast& forecast, const bloom::BloomWindow& window);

/// The same courses with what lies before `from` left out.
BloomCourses from_day(BloomCourses courses, SeasonDay from);

/// The day that the runs' first (last) days do not exceed with this chance, over the courses that have any.
std::optional<SeasonDay> first_day(const BloomCourses& courses, DayRun BloomCourse::*run, double chance);
/// Likewise of the last days: with chance 0.1, nine courses in ten still have that day. Nothing where no
/// course has any.
std::optional<SeasonDay> last_day(const BloomCourses& courses, DayRun BloomCourse::*run, double chance);
/// Share of the courses in which the run is not empty.
double share_with(const BloomCourses& courses, DayRun BloomCourse::*run);

}  // namespace pipward::cross::detail
