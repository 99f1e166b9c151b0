// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/math/detail/geos.h"
#include "pipward/math/line.h"

namespace pipward::math {

/// Inside of the room: a line as GEOS has it.
struct Line::Shape {
    explicit Shape(std::vector<PlanePoint> of);

    detail::Geos geos;
    std::vector<PlanePoint> points;
    std::vector<double> begins;  ///< how far along the line each point lies
    detail::Geometry geometry;
};

}  // namespace pipward::math
