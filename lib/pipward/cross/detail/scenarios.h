// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstddef>

#include "pipward/cross/detail/bloom_course.h"

/// Walking the scenarios of two windows of one forecast.
namespace pipward::cross::detail {

/// Calls `visit(index of seed course, index of donor course)` for every pair that shares weather and season:
/// courses of one weather and season stand together, one a node of the own spread.
template <class Visit>
void for_each_scenario(const BloomCourses& seed_parent, Visit visit) {
    const std::size_t own = bloom::residual_nodes().size();
    for (std::size_t group = 0; group < seed_parent.each.size(); group += own) {
        for (std::size_t s = group; s < group + own; ++s) {
            for (std::size_t d = group; d < group + own; ++d) {
                visit(s, d);
            }
        }
    }
}

/// The share of scenarios in which `meet(index of seed course, index of donor course)` holds.
template <class Meet>
double share_of_scenarios(const BloomCourses& seed_parent, Meet meet) {
    std::size_t met = 0;
    for_each_scenario(seed_parent, [&](std::size_t s, std::size_t d) { met += meet(s, d) ? 1 : 0; });
    const auto all = seed_parent.each.size() * bloom::residual_nodes().size();
    return static_cast<double>(met) / static_cast<double>(std::max<std::size_t>(1, all));
}

}  // namespace pipward::cross::detail
