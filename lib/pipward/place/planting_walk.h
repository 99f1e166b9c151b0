// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/place/row_position.h"

namespace pipward::place {

/// The vacant positions in the order in which one plants: block by block, row by row, each row from the end
/// that is nearer to where the last one ended, by the map's coordinates. Rows go by their names, numbers by
/// their size.
std::vector<RowPosition> in_planting_order(std::vector<RowPosition> positions);

/// Without the vacant positions that lie nearer than `apart` to a tree of the same row or to a vacant
/// position that is kept: the first of a row is kept, then the next that is far enough, and so on. Rows
/// without a spacing lose none.
std::vector<RowPosition> keep_apart(std::vector<RowPosition> positions, std::span<const TreeRow> rows,
                                    Metres apart);

}  // namespace pipward::place
