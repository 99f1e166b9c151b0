// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <cstdint>
#include <string>

#include "bloom/springs.h"
#include "pipward/record/orchard.h"

/// A made-up orchard of two apples on a hill, spring by spring.
namespace pipward::testing {

/// The station's days of a spring; those after `known_to`, a day of the season, are `warmer` by so much.
inline void add_weather(Orchard& orchard, int year, CelsiusStep warmer = {}, int known_to = 0) {
    const auto spring = spring_weather(year);
    const Day last_known = anchor_of({year}, Hemisphere::north) + known_to;
    for (std::size_t i = 0; i < spring.days.size(); ++i) {
        const Day day = spring.first + static_cast<int>(i);
        const auto more = day > last_known ? warmer : CelsiusStep{};
        orchard.weather.push_back({0, "Hill", day, spring.days[i].t_min + more, spring.days[i].t_max + more,
                                   WeatherSource::observed});
    }
}

/// Full bloom as the spring's own warmth has it, `later` by so many days.
inline void add_full_bloom(Orchard& orchard, const std::string& accession, int year, double need,
                           int later = 0) {
    const auto spring = spring_weather(year);
    const auto curves = bloom::season_curves(spring.days, spring.first, orchard_latitude, CelsiusStep{0});
    BloomObservation seen;
    seen.fid = static_cast<std::int64_t>(orchard.bloom_observations.size()) + 1;
    seen.accession = accession;
    seen.observed_on = anchor_of({year}, Hemisphere::north) +
                       static_cast<int>(std::lround(true_bloom(curves, need))) + later;
    seen.bbch = Bbch{65};
    orchard.bloom_observations.push_back(seen);
}

/// Station, accessions and a tree of each, without a spring yet.
inline Orchard two_apple_trees() {
    Orchard orchard;
    orchard.stations = {{1, "Hill", Metres{300}, MapPoint{9, 50, {}}, orchard_latitude}};
    orchard.accessions = {apple("Apple A"), apple("Apple B")};
    for (const auto* name : {"Apple A", "Apple B"}) {
        Tree tree;
        tree.label = std::string("T-") + name;
        tree.accession = name;
        orchard.trees.push_back(tree);
    }
    return orchard;
}

}  // namespace pipward::testing
