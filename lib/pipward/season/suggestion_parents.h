// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/suggestion.h"
#include "pipward/lineage/trait_wish.h"
#include "pipward/value/finding.h"

namespace pipward::season {

/// Who may be crossed, and what their seedlings are to be.
struct ParentWish {
    /// Separated by commas; empty: every cultivar and selection with a living tree, or all of them where the
    /// book has no trees.
    std::string names;
    /// Of the traits wished for; empty: none, and merits stay empty.
    std::vector<lineage::TraitWeight> weights;
    std::string better_than;  ///< empty: the best of the parents
    double heritability = 0;  ///< of every trait, 0..1; used where traits are wished for
    Day as_of;                ///< later scores and plantings have no say
};

/// The accessions that may be crossed, and what they hand on by the wish. Merits are in spreads of the
/// scores, each trait's deviation divided by the standard deviation of its scores and weighted, so that
/// traits of different units add up; traits are taken as handed on independently of each other.
struct SuggestionParents {
    std::vector<cross::ParentCandidate> candidates;  ///< in the order of the names; each once
    double additive_variance = 0;  ///< of founders, in squared spreads; 0 where no trait was wished for
    /// The merit to be better than; empty where no trait was wished for or nobody's merit is known.
    std::optional<double> bar;
    std::string bar_name;  ///< whose merit that is; empty with it
};

/// Error findings for names that the book does not have and for fewer than two parents. Throws Error (input)
/// for a trait that nobody scored, or with too few scores. Where traits are wished for, the pedigree runs in
/// no circle.
SuggestionParents suggestion_parents(const ParentWish& wish, const Orchard& orchard, Findings& findings);

}  // namespace pipward::season
