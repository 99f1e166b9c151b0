// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Who descends from whom, as a graph: what drawings, shares and notations of a line are made from.
namespace pipward::lineage {

/// What a parent is to its child.
enum class PedigreeRole {
    seed,    ///< bore the fruit
    pollen,  ///< gave the pollen; may be a blend
    member,  ///< one of those that a blend is mixed of: the blend is the child
    sport    ///< the original that mutated or was cloned
};

/// One step back in a line.
struct PedigreeLink {
    int child = 0;                           ///< into PedigreeGraph::nodes
    int parent = 0;                          ///< into PedigreeGraph::nodes
    PedigreeRole role = PedigreeRole::seed;  ///< of the parent
    double share = 1;                        ///< of a blend's member in it, 0..1; else 1
};

/// An accession, a blend, or a parent that has a name only.
struct PedigreeNode {
    std::string name;                   ///< as the book writes it
    const Accession* record = nullptr;  ///< null for a blend, and for a name that has no record
    bool is_blend = false;              ///< its parents are its members
};

/// Of a whole book: both ends of every link are nodes.
struct PedigreeGraph {
    std::vector<PedigreeNode> nodes;  ///< every parent stands before its children
    std::vector<std::vector<PedigreeLink>>
        parents;  ///< by node: seed parent, pollen parent; a blend's members; a sport's original only
    std::vector<std::vector<PedigreeLink>> children;  ///< by node, in the order of nodes
    std::map<std::string, int> number;                ///< by name

    /// The first link of `node` in this role; null where none is recorded. Points into `parents`.
    const PedigreeLink* parent(int node, PedigreeRole role) const;
};

/// What an ancestor passes on by a link: half to a child, all of it to a sport, its share to a blend.
double passed_on(const PedigreeLink& link);
/// Generations that a link spans: none between an original and its sport, a blend and its member.
int generations_of(const PedigreeLink& link);

/// Every accession, blend and parent that has a name only. The genes of a sport are its original's: its own
/// parents are passed over. The records must outlive the graph; a second record of a name is passed over.
/// Shares of a blend that are missing divide what the others leave; shares above 1 are scaled down, and what
/// they fall short of 1 is unknown pollen. Throws Error (input) where accessions are their own ancestors.
PedigreeGraph pedigree_graph(std::span<const Accession> accessions, std::span<const BlendMember> blends);

}  // namespace pipward::lineage
