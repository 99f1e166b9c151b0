// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/meeting.h"

#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/scenarios.h"

namespace pipward::cross::detail {

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

}  // namespace pipward::cross::detail
