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
    std::string name;
    std::optional<double>
        merit;         ///< what it hands on: a deviation from the founders, by the wish's own scale
    double doubt = 0;  ///< standard error of the merit
    double inbreeding = 0;
    std::optional<int> ploidy;
    std::optional<lineage::SAlleles> alleles;
    std::string genus{};  ///< "Malus"; empty where the book does not tell it
};

struct SuggestionRules {
    double additive_variance =
        0;                      ///< of founders, on the scale of the merit; 0 where no trait was wished for
    std::optional<double> bar;  ///< seedlings that hand on more than this are the wanted ones
    int wanted = 1;             ///< at least so many of them are to be seen, 1..1000
    double confidence = 0.95;
    double most_kinship = 0.125;
};

enum class LeftOut {
    no,
    related,       ///< the parents' kinship is above the limit
    no_seed,       ///< by their S-alleles no pollen grain can pass, either way
    triploid,      ///< either parent: few sound seeds, and weak seedlings
    other_genus,   ///< an apple and a pear
    not_foretold,  ///< nothing is known of what a parent hands on
};

struct SuggestedCross {
    std::size_t one = 0;           ///< into the candidates
    std::size_t other = 0;         ///< the later one
    std::optional<double> mean;    ///< of the seedlings
    std::optional<double> spread;  ///< standard deviation between them
    std::optional<double> doubt;   ///< standard error of the mean
    std::optional<double> share;   ///< of the seedlings above the bar
    std::optional<int> plants;     ///< to see `wanted` of them; nothing where that is more than can be grown
    std::optional<double> kinship;
    lineage::SCompatibility by_one;    ///< `one` bears the seed
    lineage::SCompatibility by_other;  ///< `other` bears the seed
    LeftOut left_out = LeftOut::no;
};

/// More seedlings than this nobody grows of one cross. Common practice, no source.
inline constexpr int most_plants = 100'000;

/// Every pair of two candidates: mean of the parents' merits; spread of seedlings within a family, half the
/// additive variance less what the parents' inbreeding takes (Falconer & Mackay 1996, ch. 15, from memory);
/// seedlings to grow by the exact binomial. The fewest seedlings first, then the least kinship, then by name;
/// those left out last. `kinship` is asked once a pair.
using KinshipOf = std::function<std::optional<double>(const std::string&, const std::string&)>;
std::vector<SuggestedCross> suggest_crosses(const std::vector<ParentCandidate>& candidates,
                                            const SuggestionRules& rules, const KinshipOf& kinship);

/// One pair of them.
SuggestedCross weigh_cross(const std::vector<ParentCandidate>& candidates, std::size_t one, std::size_t other,
                           std::optional<double> kinship, const SuggestionRules& rules);

}  // namespace pipward::cross
