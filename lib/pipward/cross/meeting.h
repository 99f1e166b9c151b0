// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/cross/bloom_course.h"

/// How two windows of one forecast meet. Every chance is the share of the scenarios: members x the season's
/// spread, which both feel alike, x the own spread of each. Both sides must come from one forecast.
/// Germination is not in these chances.
namespace pipward {

/// Fresh pollen on a day on which the seed parent can be worked.
double chance_same_day(const BloomCourses& seed_parent, const BloomCourses& donor);

/// Balloon flowers can be gathered and dried before the seed parent's last workable day.
double chance_kept(const BloomCourses& seed_parent, const BloomCourses& donor);

/// A branch cut on `cut` (or later, where dormant wood must first have its chill) gives dried pollen before
/// the seed parent's last workable day. A donor that stands at balloon by then is gathered, not forced.
double chance_forced(const BloomCourses& seed_parent, const BloomCourses& donor, SeasonDay cut,
                     ChillPortions chill);

/// The last day to cut that still has `part` of the chance of a cut on `from`. Nothing where that is 0.
std::optional<SeasonDay> last_cut(const BloomCourses& seed_parent, const BloomCourses& donor, SeasonDay from,
                                  ChillPortions chill, double part);

/// Median of the first days on or after `cut` on which cutting is of use: dormant wood waits for its chill.
SeasonDay median_useful_cut(const BloomCourses& donor, SeasonDay cut, ChillPortions chill);

/// Median days from cutting on `cut` to open anthers, over the donor's courses; waiting for chill counts.
int median_days_in_the_room(const BloomCourses& donor, SeasonDay cut, ChillPortions chill);

}  // namespace pipward
