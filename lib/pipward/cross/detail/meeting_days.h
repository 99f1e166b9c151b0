// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/cross/detail/bloom_course.h"

/// The days of a meeting, over those scenarios in which it comes about.
namespace pipward::cross::detail {

/// `collect.last` and `use.last` leave `risk` of being too late, `use.first` is a median. Where the risk
/// leaves less than two days, as it may early in the year, the last days are medians too, and `by_median`
/// says so.
struct MeetingDays {
    DayRun collect;          ///< season days on which balloon flowers are to be collected
    DayRun use;              ///< season days on which the seed parent is to be worked with them
    bool by_median = false;  ///< the last days are medians
};

/// Fresh pollen: collected at most fresh_to_days before a working day. `collect.first` is a median, because
/// pollen collected before the seed parent is ready is wasted. Nothing where they never meet.
std::optional<MeetingDays> same_day_days(const BloomCourses& seed_parent, const BloomCourses& donor,
                                         double risk);

/// Kept pollen: collected from the first balloon flowers on; `collect.first` is early at the risk.
std::optional<MeetingDays> kept_days(const BloomCourses& seed_parent, const BloomCourses& donor, double risk);

}  // namespace pipward::cross::detail
