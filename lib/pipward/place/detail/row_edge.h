// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

/// Inside of the room: where the rows of a block begin, although first trees may be missing.
namespace pipward::place::detail {

struct RowBeginning {
    double across = 0;       ///< metres across the block, from row to row
    double first = 0;        ///< metres along the row, from a line across all rows: its first tree's position
    double step = 1;         ///< metres from position to position
    double uncertainty = 0;  ///< standard deviation of `first`, metres
    int missing = 0;         ///< out: positions before the first tree
    double certainty = 0;    ///< out: that they are so many, 0..1
};

/// What was found of the rows' beginnings.
struct FoundEdge {
    bool clear = false;  ///< most rows agree on one edge
    bool late_rows =
        false;  ///< rows side by side begin later together: missing trees, or their own beginning
};

/// Rows begin at a common edge, a line that may bend as a parabola and, where rows are staggered, step back
/// at every second row. Of many edges through first trees (random sample consensus: Fischler & Bolles 1981,
/// Commun. ACM 24:381) the likeliest, each position missing with the share `missing` and beginnings uneven by
/// as much as they are seen to be; fitted by expectation and maximisation (Dempster, Laird & Rubin 1977, J.
/// R. Stat. Soc. B 39:1). A row's certainty is the posterior of its number among the edges that do nearly as
/// well. With `common` it is known that all rows count from one edge, so that rows that begin late miss
/// trees.
FoundEdge find_edge(std::vector<RowBeginning>& rows, double missing, bool common);

/// The same where the edge turns once between two rows, as at a cut corner: each part has three rows or more.
FoundEdge find_bent_edge(std::vector<RowBeginning>& rows, double missing);

}  // namespace pipward::place::detail
