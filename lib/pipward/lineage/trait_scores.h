// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/lineage/trait_descent.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// The scores of an orchard's trees.
namespace pipward::lineage {

/// The scores given no later than a day.
std::vector<TraitScore> scores_until(const Orchard& orchard, Day as_of);

/// Every trait that the orchard has scores of, by name.
std::vector<std::string> traits_of(const Orchard& orchard);

/// The traits of a text such as "taste, scab"; every trait that was scored where it says "all". An error
/// finding, about the parameter `key`, for each that nobody has scored.
std::vector<std::string> scored_traits(const Orchard& orchard, const std::string& text,
                                       const std::string& key, Findings& findings);

/// The means of these traits in words, by place in the graph: a line a trait, in their order.
std::map<int, std::vector<Sentence>> trait_lines(const PedigreeGraph& graph, const TraitMeans& means,
                                                 const std::vector<std::string>& traits);

/// "taste 6.1 (4 trees)".
Sentence mean_words(const std::string& trait, const TraitMean& mean);

/// Everybody in whom the trait of a descent was seen, with their means; and of the parents, who are not known
/// or were not scored. "Wrenlea 6.1 (4 trees); seed parent unknown".
Sentence seen_in_words(const PedigreeGraph& graph, const TraitDescent& descent);

/// Every accession that is a parent of another or stands in a cross goal, in the order of the records: places
/// in the graph.
std::vector<int> parents_and_crossed(const Orchard& orchard, const PedigreeGraph& graph);

}  // namespace pipward::lineage
