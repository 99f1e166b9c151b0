// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/operation/user_places.h"
#include "pipward/place/row_layout.h"

namespace pipward::operation {

/// How the rows of a row-lay are told.
struct CoursesRequest : PlacesRequest {
    std::string block;
    std::string row;
    std::string row_column;
    int rows = 1;
    std::optional<Metres> row_distance;
    place::Side side = place::Side::right;
    bool alternate = false;
};

/// What of the request does not go together.
Findings check_courses(const CoursesRequest& request);

/// The rows to lay, named. Throws Error (usage, input, access).
std::vector<place::RowCourse> courses_of(const CoursesRequest& request, const Orchard& orchard,
                                         Findings& findings);

}  // namespace pipward::operation
