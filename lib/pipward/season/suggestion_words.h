// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/season/suggestion.h"

/// Suggested crosses in words.
namespace pipward::season {

/// A cross that is suggested, the better way round, with what its numbers rest on. Points into the weighed
/// crosses.
struct Suggestion {
    const WeighedCross* weighed = nullptr;
    std::string seed_parent;
    std::string pollen_parent;
    lineage::SCompatibility alleles{};
    Sentence why{};     ///< what the numbers rest on
    Sentence doubts{};  ///< ties, and what is not known; empty where nothing

    /// How the pollen would be had this spring; nothing where that was not asked or there is no way.
    const std::optional<cross::CrossWay>& way() const;
};

/// The ranked ones, in the order of `crosses`.
std::vector<Suggestion> suggested_crosses(const std::vector<WeighedCross>& crosses,
                                          const SuggestionParents& parents,
                                          const cross::SuggestionRules& rules);

/// How many of how many pairs are suggested, and what the wish is measured against.
Sentence suggestion_summary(const std::vector<WeighedCross>& crosses, const SuggestionParents& parents,
                            const cross::SuggestionRules& rules);

}  // namespace pipward::season
