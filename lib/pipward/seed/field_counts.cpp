// SPDX-License-Identifier: MIT
#include "pipward/seed/field_counts.h"

#include <algorithm>

#include "pipward/record/descent.h"
#include "pipward/seed/cross_tally.h"

namespace pipward::seed {
namespace {

std::optional<lineage::CrossCount> count_of(const CrossTally& tally, bool pear) {
    if (!tally.flowers.count || !tally.fruits.count || !tally.fruits.whole) {
        return std::nullopt;
    }
    const int fruits = *tally.fruits.count;
    const bool seed_counted = tally.sound_seed.count && tally.sound_seed.whole;
    if (fruits > 0 && pear && !seed_counted) {
        return std::nullopt;
    }
    const int set = fruits > 0 && seed_counted ? std::min(fruits, *tally.sound_seed.count) : fruits;
    return lineage::CrossCount{*tally.flowers.count, set};
}

}  // namespace

std::map<PairOfParents, lineage::CrossCount> field_counts(const Orchard& orchard, Day as_of) {
    const OrchardIndex book(orchard);
    std::map<PairOfParents, lineage::CrossCount> counts;
    for (const auto& tally : tally_crosses(orchard, as_of)) {
        const bool pear = genus_of(book, tally.goal->seed_parent) == "Pyrus";
        if (const auto count = count_of(tally, pear); count && count->flowers > 0) {
            auto& sum = counts[{tally.goal->seed_parent, tally.goal->pollen_parent}];
            sum.flowers += count->flowers;
            sum.set += count->set;
        }
    }
    return counts;
}

}  // namespace pipward::seed
