// SPDX-License-Identifier: MIT
#include "pipward/bloom/observed_stages.h"

#include <algorithm>

#include "pipward/math/quantile.h"

namespace pipward::bloom {
namespace {

struct OfTree {
    AccessionSpring spring;
    Bbch stage;
    std::string tree;

    auto operator<=>(const OfTree&) const = default;
};

}  // namespace

std::map<AccessionSpring, ObservedStages> observed_stages(std::span<const StageSeen> stages,
                                                          Hemisphere hemisphere) {
    std::map<OfTree, int> first;
    for (const auto& seen : stages) {
        if (std::ranges::find(window_stages, seen.stage) == window_stages.end()) {
            continue;
        }
        const int day = seen.observed_on - anchor_of(seen.season, hemisphere);
        const auto [entry, added] =
            first.emplace(OfTree{{seen.season, seen.accession}, seen.stage, seen.tree}, day);
        entry->second = added ? day : std::min(entry->second, day);
    }
    std::map<AccessionSpring, std::map<Bbch, std::vector<double>>> days;
    for (const auto& [of_tree, day] : first) {
        days[of_tree.spring][of_tree.stage].push_back(day);
    }
    std::map<AccessionSpring, ObservedStages> noted;
    for (const auto& [spring, of_stage] : days) {
        for (const auto& [stage, of_trees] : of_stage) {
            noted[spring][stage] = math::mean(of_trees);
        }
    }
    return noted;
}

}  // namespace pipward::bloom
