// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

/// Inside of the room: where the rows of a block begin, although first trees may be missing. Lengths are
/// metres.
namespace pipward::place::detail {

struct RowStart {
    double across = 0;       ///< the row's place across the block
    double origin = 0;       ///< along the row: positions lie at origin + step * number
    double step = 1;         ///< above 0
    int first = 0;           ///< number of the first tree that stands
    double uncertainty = 0;  ///< standard deviation of the origin
    int number = 0;          ///< out: of the row's first position
    double certainty = 0;    ///< out: that it is the first, 0..1
};

/// Rows of a block begin at a common edge, a line that most first trees stand at and none stands before. Sets
/// each row's number of its first position. The edge is the line through two first trees that most others
/// agree with, to a quarter of a spacing (random sample consensus: Fischler & Bolles 1981, Commun. ACM
/// 24:381; here every pair of at most sixty rows), then fitted to all that agree by least squares. Nothing is
/// changed, and no is returned, where fewer than three rows or fewer than half of them agree on an edge.
bool find_edge(std::vector<RowStart>& rows);

}  // namespace pipward::place::detail
