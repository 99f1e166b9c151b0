// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/meeting.h"

#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/scenarios.h"

namespace pipward::cross::detail {

bool can_use_fresh(const BloomCourse& seed_parent, const BloomCourse& donor) {
    return (seed_parent.workable & donor.fresh).any();
}

bool can_keep(const BloomCourse& seed_parent, const BloomCourse& donor) {
    return !donor.balloon.empty() && donor.balloon.first + drying_days <= seed_parent.working.last;
}

double chance_same_day(const BloomCourses& seed_parent, const BloomCourses& donor) {
    return share_of_scenarios(seed_parent, [&](std::size_t s, std::size_t d) {
        return can_use_fresh(seed_parent.each[s], donor.each[d]);
    });
}

double chance_kept(const BloomCourses& seed_parent, const BloomCourses& donor) {
    return share_of_scenarios(seed_parent, [&](std::size_t s, std::size_t d) {
        return can_keep(seed_parent.each[s], donor.each[d]);
    });
}

}  // namespace pipward::cross::detail
