// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/lineage/kinship_factors.h"

/// What an accession hands on to its children, from its own scores and those of its relatives.
namespace pipward::lineage {

/// One score of a member of the pedigree.
struct ScoreRecord {
    int member = 0;    ///< into KinshipFactors, one that is calculated
    int group = 0;     ///< what scores of one kind have in common: the year; from 0 without gaps
    double score = 0;  ///< in the trait's own unit, any range
};

/// Shares of the variance of scores within a group.
struct ScoreVariance {
    double heritability = 0.4;   ///< handed on to children, above 0, below 1
    double repeatability = 0.4;  ///< common to all scores of an accession, from the heritability to below 1
};

/// What one member hands on. A member that was not scored and has no scored relative: 0 with reliability 0.
struct BreedingValue {
    double value = 0;        ///< deviation from the founders, in units of the score
    double reliability = 0;  ///< squared accuracy, 0..1: 1 - PEV / ((1 + F) variance of founders)
};

/// The solution of the equations: no member and no group is left out.
struct BreedingValues {
    std::vector<double> groups;         ///< effect of each group, in units of the score
    std::vector<BreedingValue> values;  ///< by member
};

/// The animal model, best linear unbiased prediction: score = group + breeding value + what else all scores
/// of the accession share + residual (Henderson 1984; Mrode 2014, ch. 3 and 4). Groups are fixed effects;
/// unknown parents are founders of one population. Reliabilities are exact: the needed diagonal of the
/// inverse comes of its sparse factor, at any size. Every group has a score. Members of `factors` that are
/// not calculated must have no scores. Nothing where the equations cannot be solved.
std::optional<BreedingValues> breeding_values(const KinshipFactors& factors,
                                              std::span<const ScoreRecord> scores, ScoreVariance variance);

}  // namespace pipward::lineage
