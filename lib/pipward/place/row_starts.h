// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

/// Inside of the room: where the rows of a block begin, although first trees may be missing.
namespace pipward::place {

struct RowStart {
    double across = 0;  ///< the row's place across the block
    double origin = 0;  ///< positions lie at origin + step * number
    double step = 1;
    int first = 0;           ///< number of the first tree that stands
    double uncertainty = 0;  ///< standard deviation of the origin
    int number = 0;          ///< out: of the row's first position
    double certainty = 0;    ///< out: that it is the first
};

/// Rows of a block begin at a common edge, a line that most first trees stand at and none stands before. Sets
/// each row's number of its first position. Nothing is changed, and no is returned, where fewer than three
/// rows or fewer than half of them agree on an edge.
bool find_edge(std::vector<RowStart>& rows);

}  // namespace pipward::place
