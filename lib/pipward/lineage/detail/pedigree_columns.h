// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/lineage/pedigree_layout.h"

/// Inside of the layout of lines: what stands in each column, in which order and how high.
namespace pipward::lineage::detail {

/// A box, or the lane of a link that passes a column.
struct ColumnItem {
    int column = 0;
    double height = 0;
    double middle = 0;
    bool is_lane = false;
    std::vector<int> younger{};  ///< items that links join it to in the column before
    std::vector<int> older{};    ///< and in the next one
    std::vector<int> below{};    ///< items of its column that must stand below it
};

struct PedigreeColumns {
    std::vector<ColumnItem> items;          ///< the boxes as in the view, then lanes
    std::vector<std::vector<int>> lanes;    ///< by link: its lanes from the child to the parent
    std::vector<std::vector<int>> columns;  ///< items from top to bottom
};

PedigreeColumns pedigree_columns(const PedigreeView& view, const std::vector<double>& heights,
                                 const PedigreeSpace& space);
/// What is left free between two neighbours of a column.
double gap_between(const ColumnItem& above, const ColumnItem& below, const PedigreeSpace& space);
double column_height(const PedigreeColumns& columns, const std::vector<int>& column,
                     const PedigreeSpace& space);

/// Sorts each column so that links cross little and seed parents stand above, then gives every item its
/// height: as near to the middle of what it is joined to as the others let it.
void order_columns(const PedigreeView& view, PedigreeColumns& columns, const PedigreeSpace& space);

}  // namespace pipward::lineage::detail
