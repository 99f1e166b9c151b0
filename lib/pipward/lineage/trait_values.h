// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "pipward/lineage/breeding_values.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Breeding values of a book's scored traits.
namespace pipward::lineage {

/// Fewer say more about chance than about trees: common practice, no source.
inline constexpr std::size_t least_scores = 10;
inline constexpr std::size_t least_accessions = 5;  ///< the same

/// The scores of one trait, by accession and as the model wants them.
struct TraitScores {
    std::map<std::string, std::vector<double>> of;  ///< scores by accession, polyploid ones included
    std::vector<ScoreRecord> records;               ///< those of members that are calculated
    std::map<int, int> years;                       ///< group by year
    std::set<int> members;                          ///< that have a record
    Findings left_out;                              ///< warnings: scores of trees without an accession
};

/// Which trait is asked about.
struct TraitQuestion {
    std::string trait;  ///< as it was scored, letter for letter
    Day as_of;          ///< scores given later are not used
    std::string key;    ///< of the parameter that named the trait, for what is wrong with it
};

/// Throws Error (input) for a trait that nobody scored.
TraitScores scores_of(const Orchard& orchard, const PedigreeOrder& order, const TraitQuestion& question);

/// Throws Error (input) where there are too few scores to tell anything, or the equations cannot be solved.
BreedingValues values_of(const TraitScores& scores, const KinshipFactors& factors, ScoreVariance variance,
                         const TraitQuestion& question);

/// Of the scores, within the groups.
double score_variance(const TraitScores& scores);

inline constexpr double usual_heritability = 0.35;  ///< a judgement

/// The heritability and a quarter of what it leaves: a judgement.
inline ScoreVariance usual_variance(double heritability) {
    return {heritability, heritability + (1 - heritability) / 4};
}

}  // namespace pipward::lineage
