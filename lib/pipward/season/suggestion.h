// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/suggestion.h"
#include "pipward/season/meetings.h"
#include "pipward/season/pipeline.h"
#include "pipward/season/suggestion_parents.h"

/// Which crosses to make of some parents.
namespace pipward::season {

/// A pair with all that was found out about it.
struct WeighedCross {
    cross::SuggestedCross cross;  ///< genes, S-alleles and kinship
    Sentence reason{};            ///< why it is left out; empty: it is not
    /// 1 for the best; empty for one that is left out, or before choose_crosses().
    std::optional<int> rank{};
    /// This spring; empty where it was not held against the season.
    std::optional<CrossMeeting> meeting{};
    std::optional<std::string> shown_by_one{};  ///< who shows the trait that both sides must show
    /// Likewise of the other parent; both empty where nothing is asked of both sides.
    std::optional<std::string> shown_by_other{};
};

/// What is wished for, and within which limits.
struct SuggestionWish {
    std::string both_sides;  ///< a trait that both sides must show, as parse_shown() reads it; may be empty
    bool by_traits = false;  ///< whether traits were wished for; otherwise what is easiest comes first
    double most_kinship = 0.125;  ///< of two parents that is still borne, 0 to 1
    int per_parent = 2;           ///< in so many crosses one parent may stand
    int crosses = 10;             ///< so many at the most
};

/// Every pair of the parents, weighed by the wish; none is ranked yet. `both_sides` must be readable.
/// Throws Error (input) where the pedigree runs in a circle.
std::vector<WeighedCross> weighed_crosses(const SuggestionWish& wish, const SuggestionParents& parents,
                                          const cross::SuggestionRules& rules, const Orchard& orchard,
                                          Day as_of);

/// Bloom and pollen of the crosses that promise most. Throws Error (input) as forecast_season().
void hold_against_season(std::vector<WeighedCross>& crosses, const SuggestionParents& parents,
                         const PlanWish& plan, Place& place, const Step& step = quietly());

/// Ranks the first ones within the limits; all others get the reason why they are left out.
void choose_crosses(std::vector<WeighedCross>& crosses, const SuggestionWish& wish,
                    const SuggestionParents& parents);

}  // namespace pipward::season
