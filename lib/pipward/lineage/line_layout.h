// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/lineage/line_view.h"

/// Where the boxes of a line stand, in columns, and how its links run. Lengths are millimetres or whatever
/// the caller measures in.
namespace pipward::lineage {

/// What a page gives.
struct LineSpace {
    double width = 0;
    double height = 0;
    double between_columns = 9;
    double between_boxes = 1;
    double lane = 1.8;  ///< height that a link takes where it passes a column
    double widest_box = 60;
};

struct LineSpot {
    double x = 0;
    double y = 0;
};

struct PlacedBox {
    double left = 0;
    double top = 0;
    double width = 0;
    double height = 0;

    double right() const { return left + width; }
    double bottom() const { return top + height; }
};

struct PlacedLink {
    int link = 0;  ///< into LineView::links
    /// From the right side of the child to the left side of the parent; runs are level or upright.
    std::vector<LineSpot> through;
};

struct LineLayout {
    std::vector<PlacedBox> boxes;  ///< one a box of the view
    std::vector<PlacedLink> links;
    double between_tracks = 0;  ///< least distance at which upright runs of links lie side by side
};

/// How wide each column's boxes are.
double column_width(const LineView& view, const LineSpace& space);
/// The height that the fullest column needs.
double height_needed(const LineView& view, const std::vector<double>& heights, const LineSpace& space);

/// Boxes of the given heights in their columns. Boxes never overlap, links pass between them, and a seed
/// parent stands above the pollen parent of the same child where both stand in one column; where reciprocal
/// crosses ask for both orders, the first is kept. Nothing where a column does not fit the height.
std::optional<LineLayout> line_layout(const LineView& view, const std::vector<double>& heights,
                                      const LineSpace& space);

}  // namespace pipward::lineage
