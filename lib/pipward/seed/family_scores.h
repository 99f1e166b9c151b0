// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"

namespace pipward::seed {

/// How the seedlings of one family do in one trait. Scores of a tree are averaged first, so that a tree that
/// was scored often counts as one.
struct FamilyScores {
    std::string seed_parent;                   ///< an accession
    std::string pollen_parent;                 ///< an accession or a blend
    std::string trait;                         ///< all numbers below are in its own unit
    int seedlings = 0;                         ///< of the family that stand or stood; a grafted one once
    int scored = 0;                            ///< trees of the family with a score
    double mean = 0;                           ///< of the trees
    std::optional<double> spread;              ///< standard deviation between trees; of two trees or more
    double least = 0;                          ///< lowest mean of a tree
    double most = 0;                           ///< highest mean of a tree
    std::string highest;                       ///< the tree with the most
    int years = 0;                             ///< in which scores were made
    std::optional<double> seed_parent_mean;    ///< of the parents' own trees, where they were scored
    std::optional<double> pollen_parent_mean;  ///< likewise
};

/// By seed parent, pollen parent and trait. Families are accessions with both parents recorded; a blend is a
/// pollen parent like another.
std::vector<FamilyScores> family_scores(const Orchard& orchard, Day as_of);

}  // namespace pipward::seed
