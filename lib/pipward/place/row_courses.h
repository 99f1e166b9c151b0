// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/place/ground_layer.h"
#include "pipward/place/row_layout.h"

namespace pipward::place {

/// How rows are to be laid along lines and points.
struct CoursesWish {
    std::string block;       ///< not blank
    std::string row;         ///< the first one's name; empty: one more than the block's highest number
    std::string row_column;  ///< of the layer, with the rows' names; empty: a usual name is looked for
    int rows = 1;            ///< so many beside one another, the given line being the first
    std::optional<Metres> row_distance;  ///< needed for more than one row, above 0
    Side side = Side::right;             ///< on which further rows lie, seen along the line
    bool alternate = false;              ///< every second row is numbered from the other end
};

/// What of the wish does not go together: a block without a name, several rows without a distance.
Findings check_courses(const CoursesWish& wish);

/// The rows to lay, named. Throws Error (usage, input).
std::vector<RowCourse> courses_of(const CoursesWish& wish, const GroundLayer& layer, const Orchard& orchard);

}  // namespace pipward::place
