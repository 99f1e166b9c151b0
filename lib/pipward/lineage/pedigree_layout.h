// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/lineage/pedigree_view.h"

/// Where the boxes of a line stand, in columns, and how its links run. Lengths are millimetres or whatever
/// the caller measures in.
namespace pipward::lineage {

/// What a page gives.
struct PedigreeSpace {
    double width = 0;            ///< of all columns with the gaps between them
    double height = 0;           ///< of the fullest column at most
    double between_columns = 9;  ///< gap in which links turn
    double between_boxes = 1;    ///< least gap of two boxes of a column
    double lane = 1.8;           ///< height that a link takes where it passes a column
    double widest_box = 60;      ///< columns become no wider, however much room there is
};

/// A point; the origin is the drawing's top left corner.
struct PedigreeSpot {
    double x = 0;  ///< to the right
    double y = 0;  ///< downwards
};

/// A box of the view by its top left corner and its size.
struct PlacedBox {
    double left = 0;    ///< the same for all boxes of a column
    double top = 0;     ///< downwards
    double width = 0;   ///< column_width() for every box
    double height = 0;  ///< as the caller gave it

    /// Where links to parents begin.
    double right() const { return left + width; }
    /// Of the lower edge, downwards.
    double bottom() const { return top + height; }
};

/// The corners of one link.
struct PlacedLink {
    int link = 0;  ///< into PedigreeView::links
    /// From the right side of the child to the left side of the parent; runs are level or upright.
    std::vector<PedigreeSpot> through;
};

/// The drawing, within the space that was given.
struct PedigreeLayout {
    std::vector<PlacedBox> boxes;   ///< one a box of the view
    std::vector<PlacedLink> links;  ///< one a link of the view, in its order
    double between_tracks = 0;      ///< least distance at which upright runs of links lie side by side
};

/// How wide each column's boxes are.
double column_width(const PedigreeView& view, const PedigreeSpace& space);
/// The height that the fullest column needs.
double height_needed(const PedigreeView& view, const std::vector<double>& heights,
                     const PedigreeSpace& space);

/// Boxes of the given heights in their columns. Boxes never overlap, links pass between them, and a seed
/// parent stands above the pollen parent of the same child where both stand in one column; where reciprocal
/// crosses ask for both orders, the first is kept. Nothing where a column does not fit the height.
std::optional<PedigreeLayout> pedigree_layout(const PedigreeView& view, const std::vector<double>& heights,
                                              const PedigreeSpace& space);

}  // namespace pipward::lineage
