// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "pipward/lineage/breeding_values.h"
#include "pipward/operation/common_parameters.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Breeding values of a book's scored traits.
namespace pipward::operation {

/// Fewer say more about chance than about trees: common practice, no source.
inline constexpr std::size_t least_scores = 10;
inline constexpr std::size_t least_accessions = 5;

/// The scores of one trait, by accession and as the model wants them.
struct TraitScores {
    std::map<std::string, std::vector<double>> of;
    std::vector<lineage::ScoreRecord> records;
    std::map<int, int> years;  ///< group by year
    std::set<int> members;
    Findings left_out;  ///< warnings: scores of trees without an accession
};

/// Scores made by `as_of`. Throws Error (input), naming the parameter `key`, for a trait that nobody scored.
TraitScores scores_of(const Orchard& orchard, const lineage::PedigreeOrder& order, const std::string& trait,
                      Day as_of, std::string_view key);

/// Throws Error (input) where there are too few scores to tell anything, or the equations cannot be solved.
lineage::BreedingValues values_of(const TraitScores& scores, const lineage::KinshipFactors& factors,
                                  lineage::ScoreVariance variance, const std::string& trait, Day as_of,
                                  std::string_view key);

/// Of the scores, within the groups.
double score_variance(const TraitScores& scores);

inline constexpr double usual_heritability = 0.35;  ///< a judgement

template <class Request>
Bound<Request> heritability_parameter(double Request::*field) {
    return parameter(field, "heritability", "Heritability",
                     "The part of the differences between scores of one season that is handed on to "
                     "children; a judgement, not an estimate.")
        .in("of 1")
        .between(0.01, 0.95);
}

/// The heritability and a quarter of what it leaves: a judgement.
inline lineage::ScoreVariance usual_variance(double heritability) {
    return {heritability, heritability + (1 - heritability) / 4};
}

}  // namespace pipward::operation
