// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/lineage/trait_descent.h"
#include "pipward/record/orchard.h"

/// The scores of an orchard's trees.
namespace pipward::lineage {

/// The scores given no later than a day.
std::vector<TraitScore> scores_until(const Orchard& orchard, Day as_of);

/// Every trait that the orchard has scores of, by name.
std::vector<std::string> traits_of(const Orchard& orchard);

/// "taste 6.1 (4 trees)".
Sentence mean_words(const std::string& trait, const TraitMean& mean);

}  // namespace pipward::lineage
