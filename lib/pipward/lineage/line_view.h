// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/lineage/line_graph.h"

/// What of a line is drawn: boxes and links, every accession once.
namespace pipward::lineage {

struct LineLimits {
    int up = 4;             ///< generations of ancestors
    int down = 1;           ///< generations of descendants
    int most_children = 0;  ///< boxes of a generation of descendants; 0: all
};

enum class LineSide { subject, ancestor, descendant };

struct LineBox {
    int node = -1;  ///< into LineGraph::nodes; -1 for an unknown parent, or for more than are shown
    LineSide side = LineSide::subject;
    int generation = 0;         ///< by the shortest way; 0 for the subject
    std::vector<int> family{};  ///< seedlings of the same parents drawn as one box; node is the first
    int more = 0;               ///< descendants that this box stands for and that have no other
    bool is_shared = false;     ///< an ancestor to which several links lead
    bool goes_on = false;       ///< its line is known further than it is drawn
    bool is_unknown() const { return node < 0 && more == 0; }
};

/// Between boxes: `child` and `parent` are places in LineView::boxes.
using BoxLink = LineLink;

struct LineView {
    std::vector<LineBox> boxes;  ///< the subject first, then ancestors, seed side first, then descendants
    std::vector<BoxLink> links;
    std::vector<int>
        columns;  ///< of each box: the youngest stand in column 0, parents right of their children
    int column_count = 1;
    int ancestors_left_out = 0;
    int descendants_left_out = 0;
};

/// Seedlings of one family that have no descendants in the view stand in one box where they are so many.
inline constexpr int family_of_seedlings = 3;

/// Ancestors as far as `up` generations and descendants as far as `down`, with every link between them; an
/// unknown parent of a cross whose other parent is known has a box of its own.
LineView line_view(const LineGraph& graph, int subject, const LineLimits& limits);

}  // namespace pipward::lineage
