// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/place/row_position.h"

namespace pipward {

/// The vacant positions in the order in which one plants: block by block, row by row, each row from the end
/// that is nearer to where the last one ended. Rows go by their names, numbers by their size.
std::vector<RowPosition> in_planting_order(std::vector<RowPosition> positions);

}  // namespace pipward
