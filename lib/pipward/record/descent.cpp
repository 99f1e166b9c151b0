// SPDX-License-Identifier: MIT
#include "pipward/record/descent.h"

#include <set>
#include <vector>

namespace pipward::record {

std::optional<std::string> species_of(const OrchardIndex& index, std::string_view accession) {
    std::set<std::string_view> seen;
    std::vector<std::string_view> ahead{accession};
    while (!ahead.empty()) {
        const auto* const record = index.accession(ahead.back());
        const bool is_new = seen.insert(ahead.back()).second;
        ahead.pop_back();
        if (record == nullptr || !is_new) {
            continue;
        }
        if (record->species) {
            return record->species;
        }
        if (record->seed_parent) {
            ahead.push_back(*record->seed_parent);
        }
        if (record->sport_of) {
            ahead.push_back(*record->sport_of);
        }
    }
    return std::nullopt;
}

std::string genus_of(const OrchardIndex& index, std::string_view accession) {
    const auto species = species_of(index, accession).value_or("");
    return species.substr(0, species.find(' '));
}

const CrossGoal* cross_of_seedling(const OrchardIndex& index, const Accession& seedling) {
    const std::string_view name = seedling.name;
    const CrossGoal* first = nullptr;
    for (auto dash = name.find('-'); dash != name.npos; dash = name.find('-', dash + 1)) {
        const auto* const goal = index.goal(name.substr(0, dash));
        if (goal != nullptr && (first == nullptr || goal < first) &&
            seedling.seed_parent == goal->seed_parent && seedling.pollen_parent == goal->pollen_parent) {
            first = goal;
        }
    }
    return first;
}

}  // namespace pipward::record
