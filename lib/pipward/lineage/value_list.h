// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/lineage/trait_values.h"

/// Breeding values of one trait, accession by accession.
namespace pipward::lineage {

struct ListedValue {
    std::string accession;
    std::optional<AccessionKind> kind;  ///< nothing for a parent without a record
    int scores = 0;                     ///< of its own trees
    std::optional<double> mean;         ///< plain mean of them, in the trait's unit
    std::optional<BreedingValue> value;
    std::optional<int> rank;  ///< 1 for the highest value; equal values share one
    Sentence remark;          ///< what to bear in mind; empty where nothing
};

struct ValueList {
    std::vector<ListedValue> listed;  ///< the highest first, those without a value last
    std::size_t left_out = 0;         ///< accessions of whom the scores tell nothing
};

/// Where neither scores nor relatives tell more than this, 0..1, an accession is left out.
inline constexpr double least_reliability = 0.005;

/// Every accession with a record, and parents that have a name only.
ValueList value_list(const Orchard& orchard, const PedigreeOrder& order, const TraitScores& scores,
                     const BreedingValues& values);

}  // namespace pipward::lineage
