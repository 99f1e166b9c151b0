// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "pipward/lineage/pedigree_graph.h"

namespace pipward::lineage {

/// What an accession has of an ancestor.
struct AncestorShare {
    int node = 0;              ///< into PedigreeGraph::nodes
    double share = 0;          ///< expected part of the genes, 0..1
    int nearest = 0;           ///< generations back by the shortest way; 0 for the original of a sport
    int farthest = 0;          ///< by the longest
    std::int64_t ways = 0;     ///< by which it is an ancestor; most_ways where there are more
    bool by_blend = false;     ///< some way goes through a blend: what came by it is an expectation twice
    bool is_founder = false;   ///< nothing is recorded of its parents
    double unknown_share = 0;  ///< of the subject, 0..1: what came from an unknown parent of this one
};

inline constexpr std::int64_t most_ways = 1'000'000'000;  ///< where the counting of ways stops

/// The subject itself first, then every ancestor, blends left out, by share falling, then by name. Each
/// parent gives half; shares of grandparents and beyond are means over what meiosis may do, not facts of this
/// one plant. The shares of founders and the unknown shares add up to 1.
std::vector<AncestorShare> ancestor_shares(const PedigreeGraph& graph, int subject);

/// What every node has of `ancestor`: 1 for itself, 0 where it does not descend from it.
std::vector<double> shares_of_ancestor(const PedigreeGraph& graph, int ancestor);

/// Who descends from an accession, and what it has of it.
struct Descendant {
    int node = 0;        ///< into PedigreeGraph::nodes
    double share = 0;    ///< expected part of its genes that came from the ancestor, 0..1
    int generation = 0;  ///< generations on by the shortest way; 1 for a child
};

/// Blends left out, by generation, then by name.
std::vector<Descendant> descendants_of(const PedigreeGraph& graph, int ancestor);

}  // namespace pipward::lineage
