// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/cross/detail/bloom_course.h"

/// How two windows of one forecast meet. Every chance is the share of the scenarios: members x the season's
/// spread, which both feel alike, x the own spread of each. Both sides must come from one forecast.
/// Germination is not in these chances.
namespace pipward::cross::detail {

/// In one scenario: fresh pollen on a day on which the seed parent can be worked.
bool can_use_fresh(const BloomCourse& seed_parent, const BloomCourse& donor);
/// In one scenario: pollen that is dry before the seed parent's last workable day.
bool can_keep(const BloomCourse& seed_parent, const BloomCourse& donor);

/// Fresh pollen on a day on which the seed parent can be worked.
double chance_same_day(const BloomCourses& seed_parent, const BloomCourses& donor);

/// Balloon flowers can be collected and dried before the seed parent's last workable day.
double chance_kept(const BloomCourses& seed_parent, const BloomCourses& donor);

}  // namespace pipward::cross::detail
