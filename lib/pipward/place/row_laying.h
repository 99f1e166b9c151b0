// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "pipward/place/row_courses.h"

/// Rows laid out in a block: how, held against the orchard, as its records.
namespace pipward::place {

struct LayingWish : CoursesWish {
    Metres spacing;
    int first_position = 1;
    Metres headland{};         ///< free at both ends
    std::optional<int> count;  ///< positions a row; as many as there is room for where not given
    bool add_block = false;    ///< a block that the orchard does not have is not a mistake
};

/// The rows along the layer's lines and points. Error findings for a block that the orchard does not have,
/// for names that are taken or given twice, and for rows that cannot be laid: those are left out. Throws
/// Error (usage, input) where no courses can be made out.
std::vector<LaidRow> lay_rows(const LayingWish& wish, const GroundLayer& layer, const Orchard& orchard,
                              Findings& findings);

/// As the orchard keeps it, in the coordinates of `to_earth`.
TreeRow record_of(const LaidRow& laid, const LayingWish& wish, const ToEarth& to_earth);

/// Opposite corners of a rectangle on the map.
struct MapBox {
    MapPoint low;
    MapPoint high;
};
/// The smallest upright rectangle that holds the rows, about half a row distance (at least a metre) wider on
/// every side: an area to be redrawn. There is at least one row, each with a line.
MapBox box_around(std::span<const TreeRow> rows, const LayingWish& wish, const ToEarth& to_earth);

}  // namespace pipward::place
