// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <optional>
#include <string>

#include "pipward/place/earth.h"
#include "pipward/record/orchard.h"

namespace pipward::place {

/// Where somebody stands, in the book's coordinate system.
struct OwnPosition {
    MapPoint at;          ///< degrees or metres, as the system counts
    double x_shrink = 1;  ///< what one x is worth in y: the cosine of the latitude where they are degrees

    /// In units of y. Good for saying which of two trees is nearer, not for metres.
    double plain_distance(const MapPoint& to) const {
        return std::hypot((to.x - at.x) * x_shrink, to.y - at.y);
    }
};

/// Nothing where the book's system is not of the earth.
std::optional<OwnPosition> own_position(const LonLat& place, const std::string& crs);

}  // namespace pipward::place
