// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/record/orchard_index.h"

/// What a breeder wants of a cross, as it is written down in a parameter.
namespace pipward::lineage {

/// A trait and how much it counts; below 0 where low scores are the good ones.
struct TraitWeight {
    std::string trait;  ///< never empty
    double weight = 0;  ///< for each unit of the trait; never 0; 1 where none is written
};
/// "taste=2; scab=-1". Nothing where it cannot be read or a trait stands twice.
std::optional<std::vector<TraitWeight>> parse_weights(std::string_view text);

/// A trait that both sides of a cross must show.
struct ShownTrait {
    std::string trait;     ///< never empty
    bool at_least = true;  ///< else at most
    double bound = 0;      ///< in the trait's own unit, itself enough
};
/// "taste>=7" or "scab<=3".
std::optional<ShownTrait> parse_shown(std::string_view text);

/// Means of the scores of accessions' own trees, by accession; each tree counts once.
std::map<std::string, double> own_means(const Orchard& orchard, const std::string& trait, Day as_of);

/// Who shows the trait: the accession itself, else its seed parent, else its pollen parent; nothing where
/// none of them was scored so.
std::optional<std::string> shown_by(const OrchardIndex& book, const std::map<std::string, double>& means,
                                    const ShownTrait& wanted, const std::string& accession);

}  // namespace pipward::lineage
