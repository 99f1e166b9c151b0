// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>

#include "pipward/cross/plan.h"
#include "pipward/record/orchard.h"

/// The orchard's own counts put to use: the handbook's figure is where one begins, and every flower, fruit
/// and seed counted moves it.
namespace pipward::seed {

/// One figure: the handbook's, the orchard's own and the one to use.
struct LearnedFigure {
    double handbook = 0;         ///< the figure of the assumptions that were given
    double handbook_weight = 0;  ///< so many counted flowers, fruits or seeds the handbook is worth
    int counted = 0;             ///< flowers, fruits or seeds of the orchard
    double yours = 0;            ///< mean of them; 0 for none
    double used = 0;             ///< (handbook x weight + yours x counted) / (weight + counted)
};

/// Every figure that counts can move. All are shares, 0..1, but for those of seeds.
struct Learned {
    LearnedFigure fruit_set;  ///< of pollinated flowers, all genera together; beta-binomial
    /// The same by the seed parent's genus ("Malus"; empty where the book does not tell it), of genera of
    /// which something was counted: apples and pears set differently.
    std::map<std::string, LearnedFigure> fruit_set_of_genus;
    /// Standard deviation of set from cross to cross within a genus, chance apart; counted in crosses.
    LearnedFigure fruit_set_sd;
    LearnedFigure seeds_per_fruit;  ///< sound ones; gamma-Poisson
    LearnedFigure germination;      ///< of seeds, in lots that are done; beta-binomial
    double survival =
        0;  ///< of germinated seed that becomes seedlings: the handbook's, for the book counts none
    double seeds_variance = 0;  ///< of seeds between fruits, in the handbook's ratio to the mean
};

/// Of the handbook's germination x survival this much is germination (common practice, no source).
inline constexpr double handbook_germination = 0.8;

/// What the book's finished work tells up to a day. Set is learned where every tag of a cross had its fruit
/// counted, but not from crosses that the S-alleles forbid or whose parents are of two genera; its spread by
/// the moments of the beta-binomial (Kleinman 1973, J. Am. Stat. Assoc. 68:46, from memory); seeds where a
/// tag's were, germination from lots that are done: all their seed has left, or nobody has counted for two
/// months. A handbook figure is worth 50 flowers, 5 crosses, 10 fruits or 50 seeds: common practice, no
/// source. Seeds and germination are for the orchard as a whole.
Learned learn(const Orchard& orchard, Day as_of, const cross::CrossingAssumptions& handbook);

/// The assumptions with what was learned in the handbook's place.
cross::CrossingAssumptions with_learned(cross::CrossingAssumptions assumptions, const Learned& learned);

}  // namespace pipward::seed
