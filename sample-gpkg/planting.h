// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "site.h"

/// Blocks, rows and trees of the made-up orchard.
namespace pipward::larkfold {

/// A block as laid out on the slope: five rows along the contour.
struct BlockPlan {
    std::string name;
    std::string letters;  ///< the beginning of its labels
    SlopePlace start;     ///< first position of the first row
    double spacing = 3;   ///< along the row, metres
};

inline constexpr int rows_a_block = 5;
inline constexpr int trees_a_row = 12;

std::vector<BlockPlan> block_plans();
SlopePlace place_of(const BlockPlan& block, int row, int position);
std::string block_wkt(const BlockPlan& block);
std::string row_wkt(const BlockPlan& block, int row);

std::vector<Tree> planted_trees();
/// The labels of an accession's trees that live on a day, in the order of their rows.
std::vector<std::string> trees_of(const std::vector<Tree>& trees, const std::string& accession, Day day);

}  // namespace pipward::larkfold
