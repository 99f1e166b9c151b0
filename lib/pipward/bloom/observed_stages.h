// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <map>
#include <span>
#include <string>

#include "pipward/bloom/observation.h"

namespace pipward::bloom {

/// The stages that a window forecasts.
inline constexpr std::array window_stages{first_bloom, full_bloom, bloom_end};

/// The day of each window stage that was observed in one accession's spring: a season day, the mean over its
/// trees of the first observation of just that stage.
using ObservedStages = std::map<Bbch, double>;

/// One spring of one accession.
struct AccessionSpring {
    Season season;          ///< the year of its bloom
    std::string accession;  ///< its name

    auto operator<=>(const AccessionSpring&) const = default;
};

/// Springs without an observation of a window stage are not in it.
std::map<AccessionSpring, ObservedStages> observed_stages(std::span<const StageSeen> stages,
                                                          Hemisphere hemisphere);

}  // namespace pipward::bloom
