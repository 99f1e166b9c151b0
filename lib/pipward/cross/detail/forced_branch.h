// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/cross/detail/bloom_course.h"

/// A donor's branch, cut and forced, against a seed parent's days. Both sides must come from one forecast;
/// chances are shares of its scenarios, as in meeting.h, and hold neither germination nor forcing_success.
namespace pipward::cross::detail {

/// A branch cut on `cut` or later: dormant wood must first have its chill.
struct Cutting {
    SeasonDay cut = season_first;  ///< the earliest day to cut
    ChillPortions chill;           ///< that the donor needs
};

/// The branch gives dried pollen before the seed parent's last workable day. A donor that stands at balloon
/// by then is collected, not forced.
double chance_forced(const BloomCourses& seed_parent, const BloomCourses& donor, Cutting cutting);

/// The last day to cut that still has `part` of the chance of `from.cut`. Nothing where that is 0.
std::optional<SeasonDay> last_cut(const BloomCourses& seed_parent, const BloomCourses& donor, Cutting from,
                                  double part);

/// Median of the first days on or after the cut on which cutting is of use: dormant wood waits for its chill.
SeasonDay median_useful_cut(const BloomCourses& donor, Cutting cutting);

/// What to cut when, over the scenarios in which a branch cut on the last day is in time.
struct ForcedDays {
    DayRun cut;  ///< `last` leaves the risk of being too late
    DayRun use;  ///< from the median day on which pollen of the first cut and flowers are there ...
    SeasonDay ready = season_first;  ///< median day on which pollen of the first cut is dry
    int days_in_the_room = 0;        ///< median, from the last cut to open anthers; waiting for chill counts
    /// ... to the last day at the risk, or to the median last day where pollen of the last cut would miss it.
    bool use_by_median = false;
};

/// Cut from `from.cut` on. Branches are not cut long before the last safe day: their pollen would only wait.
/// Nothing where no branch is in time.
std::optional<ForcedDays> forced_days(const BloomCourses& seed_parent, const BloomCourses& donor,
                                      Cutting from, double risk);

/// The same of a branch that was cut on `cut.cut` and on no other day; nothing where it is not in time.
std::optional<ForcedDays> days_of_cut_branch(const BloomCourses& seed_parent, const BloomCourses& donor,
                                             Cutting cut, double risk);

/// The share of the scenarios in which the branch is in time and fresh (or, with `kept`, stored) pollen of
/// the other donor tree is not.
double chance_forced_alone(const BloomCourses& seed_parent, const BloomCourses& donor, Cutting cutting,
                           const BloomCourses& collected, bool kept);

}  // namespace pipward::cross::detail
