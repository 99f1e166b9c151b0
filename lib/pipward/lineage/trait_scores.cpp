// SPDX-License-Identifier: MIT
#include "pipward/lineage/trait_scores.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace pipward::lineage {

std::vector<TraitScore> scores_until(const Orchard& orchard, Day as_of) {
    std::vector<TraitScore> scores;
    std::ranges::copy_if(orchard.trait_scores, std::back_inserter(scores),
                         [&](const TraitScore& score) { return score.scored_on <= as_of; });
    return scores;
}

std::vector<std::string> traits_of(const Orchard& orchard) {
    std::set<std::string> traits;
    for (const auto& score : orchard.trait_scores) {
        traits.insert(score.trait);
    }
    return {traits.begin(), traits.end()};
}

Sentence mean_words(const std::string& trait, const TraitMean& mean) {
    return mean.trees == 1 ? say("{} {:.3g} (1 tree)", trait, mean.mean)
                           : say("{} {:.3g} ({} trees)", trait, mean.mean, mean.trees);
}

}  // namespace pipward::lineage
