// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/lineage/pedigree_graph.h"

/// What of a line is drawn: boxes and links, every accession once.
namespace pipward::lineage {

/// How much of a line is drawn.
struct PedigreeLimits {
    int up = 4;             ///< generations of ancestors
    int down = 1;           ///< generations of descendants
    int most_children = 0;  ///< boxes of a generation of descendants; 0: all
};

/// On which side of the subject a box stands.
enum class PedigreeSide {
    subject,    ///< the accession asked about
    ancestor,   ///< or a blend among them
    descendant  ///< or the box of the descendants that are not drawn one by one
};

/// What one box of a drawing stands for.
struct PedigreeBox {
    int node = -1;  ///< into PedigreeGraph::nodes; -1 for an unknown parent, or for more than are shown
    PedigreeSide side = PedigreeSide::subject;  ///< ancestors first: one that is both is drawn as an ancestor
    int generation = 0;                         ///< by the shortest way; 0 for the subject
    std::vector<int>
        family{};  ///< seedlings of the same parents drawn as one box; node is the first; else empty
    int more = 0;  ///< descendants that this box stands for and that have no other
    bool is_shared = false;  ///< an ancestor to which several links lead
    bool goes_on = false;    ///< its line is known further than it is drawn
    /// A parent that is not recorded, whose partner is.
    bool is_unknown() const { return node < 0 && more == 0; }
};

/// Between boxes: `child` and `parent` are places in PedigreeView::boxes.
using BoxLink = PedigreeLink;

/// Boxes and links, before anything is placed.
struct PedigreeView {
    std::vector<PedigreeBox> boxes;  ///< the subject first, then ancestors, seed side first, then descendants
    std::vector<BoxLink> links;      ///< every link between two boxes, once
    std::vector<int>
        columns;           ///< of each box: the youngest stand in column 0, parents right of their children
    int column_count = 1;  ///< 1 or more
    int ancestors_left_out = 0;    ///< known, but beyond `up`; blends are not counted
    int descendants_left_out = 0;  ///< known, but beyond `down` or `most_children`; blends are not counted
};

/// Seedlings of one family that have no descendants in the view stand in one box where they are so many.
inline constexpr int family_of_seedlings = 3;

/// Ancestors as far as `up` generations and descendants as far as `down`, with every link between them; an
/// unknown parent of a cross whose other parent is known has a box of its own.
PedigreeView pedigree_view(const PedigreeGraph& graph, int subject, const PedigreeLimits& limits);

}  // namespace pipward::lineage
