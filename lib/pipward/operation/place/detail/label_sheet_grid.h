// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/operation/declare/detail/declare.h"
#include "pipward/paper/label_grid.h"

namespace pipward::operation::detail {

/// The sheet that a user names, and what differs from it.
struct SheetWish {
    paper::LabelSheet sheet = paper::LabelSheet::a4_70x37;
    std::optional<double> page_width;  // millimetres, all of them
    std::optional<double> page_height;
    std::optional<double> label_width;
    std::optional<double> label_height;
    std::optional<int> columns;
    std::optional<int> rows;
    std::optional<double> left;
    std::optional<double> top;
    std::optional<double> gap_across;
    std::optional<double> gap_down;
};

std::vector<Bound<SheetWish>> sheet_parameters();
/// A sheet of one's own lies on A4 and has no margins and gaps where nothing else is said.
paper::LabelGrid grid_of(const SheetWish& wish);
Findings problems_of(const SheetWish& wish);

}  // namespace pipward::operation::detail
