// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/ladders.h"

#include <algorithm>
#include <cmath>

#include "pipward/bloom/observed_stages.h"
#include "pipward/math/quantile.h"

namespace pipward::bloom::detail {
namespace {

constexpr double usual_worth = 3;         // springs
constexpr double half_life = 5;           // years
constexpr double shortest_stretch = 0.2;  // of the usual way, below and beyond which a note is a slip
constexpr double longest_stretch = 2.5;

// Degree-days from full bloom to another stage, one an accession noted in a spring.
using Ways = std::vector<double>;

struct KeyOfWay {
    std::string species;
    Bbch stage;
    Season season;

    auto operator<=>(const KeyOfWay&) const = default;
};

struct TreeSpring {
    std::string accession;
    CelsiusStep offset;
    Season season;

    auto operator<=>(const TreeSpring&) const = default;
};

struct ObservedSpring {
    std::string species;
    ObservedStages days;
};

DegreeDays usual_way(Bbch stage, const StageLadder& ladder) {
    return stage == first_bloom ? ladder.first : ladder.end;
}

// First notes of the window stages of each accession's trees at one height.
std::map<TreeSpring, ObservedSpring> observed_springs(std::span<const StageSeen> stages,
                                                      Hemisphere hemisphere) {
    std::map<TreeSpring, std::vector<StageSeen>> groups;
    for (const auto& seen : stages) {
        groups[{seen.accession, seen.offset, seen.season}].push_back(seen);
    }
    std::map<TreeSpring, ObservedSpring> springs;
    for (const auto& [key, group] : groups) {
        const auto noted = observed_stages(group, hemisphere);
        if (!noted.empty()) {
            springs[key] = {group.front().species, noted.begin()->second};
        }
    }
    return springs;
}

void add_ways(std::map<KeyOfWay, Ways>& ways, const TreeSpring& key, const ObservedSpring& spring,
              const SeasonCurves& curves) {
    const double full = spring.days.at(full_bloom);
    const double at_full = value_at(curves.ladder, full);
    for (const auto stage : {first_bloom, bloom_end}) {
        const auto noted = spring.days.find(stage);
        if (noted == spring.days.end()) {
            continue;
        }
        const double usual = usual_way(stage, usual_ladder(spring.species)).value;
        const double way = value_at(curves.ladder, noted->second) - at_full;
        const double stretch = std::clamp(way / usual, shortest_stretch, longest_stretch);
        ways[{spring.species, stage, key.season}].push_back(stretch * usual);
    }
}

std::map<KeyOfWay, Ways> ways_of(const std::map<TreeSpring, ObservedSpring>& springs,
                                 const CurvesOf& curves) {
    std::map<KeyOfWay, Ways> ways;
    for (const auto& [key, spring] : springs) {
        const auto found = curves.find({key.season, key.offset.degrees});
        if (found != curves.end() && spring.days.contains(full_bloom)) {
            add_ways(ways, key, spring, found->second);
        }
    }
    return ways;
}

DegreeDays learned_way(const std::map<KeyOfWay, Ways>& ways, const std::string& species, Bbch stage,
                       Season season) {
    double sum = usual_worth * usual_way(stage, usual_ladder(species)).value;
    double worth = usual_worth;
    for (const auto& [key, of_spring] : ways) {
        if (key.species == species && key.stage == stage) {
            const double weight = std::exp2(-std::max(0, season.year - key.season.year) / half_life);
            sum += weight * math::mean(of_spring);
            worth += weight;
        }
    }
    return {sum / worth};
}

}  // namespace

Ladders learn_ladders(std::span<const StageSeen> stages, const CurvesOf& curves, Hemisphere hemisphere,
                      Season season) {
    const auto ways = ways_of(observed_springs(stages, hemisphere), curves);
    Ladders ladders;
    for (const auto& seen : stages) {
        ladders.by_species.emplace(seen.species, usual_ladder(seen.species));
    }
    for (auto& [species, ladder] : ladders.by_species) {
        ladder.first = learned_way(ways, species, first_bloom, season);
        ladder.end = learned_way(ways, species, bloom_end, season);
    }
    return ladders;
}

void place_stages(std::vector<StageSeen>& stages, const Ladders& ladders) {
    for (auto& seen : stages) {
        seen.place = place_of(seen, ladders.of(seen.species));
    }
}

}  // namespace pipward::bloom::detail
