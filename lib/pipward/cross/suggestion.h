// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/ploidy_attrition.h"
#include "pipward/lineage/s_alleles.h"

/// Which of all possible crosses promise most, before bloom is asked.
namespace pipward::cross {

/// An accession that may be crossed.
struct ParentCandidate {
    std::string name;  ///< of the accession
    /// What it hands on: a deviation from the founders, on the wish's own scale; empty where that is not
    /// known.
    std::optional<double> merit;
    double doubt = 0;                          ///< standard error of the merit
    double inbreeding = 0;                     ///< its coefficient F, 0..1
    std::optional<int> ploidy;                 ///< chromosome sets; empty counts as diploid
    std::optional<lineage::SAlleles> alleles;  ///< empty where not recorded
    std::string genus{};                       ///< "Malus"; empty where the book does not tell it
};

/// What is asked of a cross.
struct SuggestionRules {
    /// Of founders, on the scale of the merit, squared; 0 where no trait was wished for.
    double additive_variance = 0;
    std::optional<double> bar;    ///< seedlings that hand on more than this are the wanted ones
    int wanted = 1;               ///< at least so many of them are to be seen, 1..1000
    double confidence = 0.95;     ///< of seeing them, above 0, below 1
    double most_kinship = 0.125;  ///< of two parents that is still borne, 0..1
};

/// Why a pair is no suggestion. Of several reasons one is told: genus before ploidy, S-alleles, kinship and
/// scores.
enum class LeftOut {
    no,            ///< it is one
    related,       ///< the parents' kinship is above the limit
    no_seed,       ///< by their S-alleles no pollen grain can pass, either way
    triploid,      ///< either parent: few sound seeds, and weak seedlings
    other_genus,   ///< an apple and a pear
    not_forecast,  ///< nothing is known of what a parent hands on
};

/// A pair and what its seedlings may be. Merits are on the candidates' scale; empty where a parent has none
/// or no trait was wished for.
struct SuggestedCross {
    std::size_t one = 0;            ///< into the candidates
    std::size_t other = 0;          ///< the later one
    std::optional<double> mean;     ///< of the seedlings
    std::optional<double> spread;   ///< standard deviation between them
    std::optional<double> doubt;    ///< standard error of the mean
    std::optional<double> share;    ///< of the seedlings above the bar
    std::optional<int> plants;      ///< to see `wanted` of them; nothing where that is more than can be grown
    std::optional<double> kinship;  ///< of the parents, 0..1; empty where the pedigree does not tell it
    lineage::SCompatibility by_one;    ///< `one` bears the seed
    lineage::SCompatibility by_other;  ///< `other` bears the seed
    LeftOut left_out = LeftOut::no;    ///< why it is none to make, or no
};

/// More seedlings than this nobody grows of one cross. Common practice, no source.
inline constexpr int most_plants = 100'000;

/// The kinship of two accessions by their names, 0..1; empty where the pedigree does not tell it.
using KinshipOf = std::function<std::optional<double>(const std::string&, const std::string&)>;
/// Every pair of two candidates: mean of the parents' merits; spread of seedlings within a family, half the
/// additive variance less what the parents' inbreeding takes (Falconer & Mackay 1996, ch. 15, from memory);
/// seedlings to grow by the exact binomial. The fewest seedlings first, then the best mean, then the least
/// kinship, then by name; those left out last. `kinship` is asked once a pair.
std::vector<SuggestedCross> suggest_crosses(const std::vector<ParentCandidate>& candidates,
                                            const SuggestionRules& rules, const KinshipOf& kinship);

/// One pair of them.
SuggestedCross weigh_cross(const std::vector<ParentCandidate>& candidates, std::size_t one, std::size_t other,
                           std::optional<double> kinship, const SuggestionRules& rules);

}  // namespace pipward::cross
