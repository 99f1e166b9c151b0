// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <map>
#include <span>
#include <string>

#include "pipward/bloom/observation.h"

namespace pipward::bloom {

/// The stages that a window foretells.
inline constexpr std::array window_stages{first_bloom, full_bloom, bloom_end};

/// The day of each window stage that was noted in one accession's spring: a season day, the mean over its
/// trees of the first note of just that stage.
using NotedStages = std::map<Bbch, double>;

struct AccessionSpring {
    Season season;
    std::string accession;

    auto operator<=>(const AccessionSpring&) const = default;
};

/// Springs without a note of a window stage are not in it.
std::map<AccessionSpring, NotedStages> noted_stages(std::span<const StageSeen> stages, Hemisphere hemisphere);

}  // namespace pipward::bloom
