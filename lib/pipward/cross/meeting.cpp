// SPDX-License-Identifier: MIT
#include "pipward/cross/meeting.h"

#include "pipward/cross/forcing.h"
#include "pipward/cross/scenarios.h"

namespace pipward::cross {

double chance_same_day(const BloomCourses& seed_parent, const BloomCourses& donor) {
    return share_of_scenarios(seed_parent, [&](std::size_t s, std::size_t d) {
        return (seed_parent.each[s].workable & donor.each[d].fresh).any();
    });
}

double chance_kept(const BloomCourses& seed_parent, const BloomCourses& donor) {
    return share_of_scenarios(seed_parent, [&](std::size_t s, std::size_t d) {
        const auto& balloon = donor.each[d].balloon;
        return !balloon.empty() && balloon.first + drying_days <= seed_parent.each[s].working.last;
    });
}

}  // namespace pipward::cross
