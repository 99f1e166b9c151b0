// SPDX-License-Identifier: MIT
#include "pipward/place/metre_plane.h"

#include <algorithm>

#include "pipward/place/ground_line.h"

namespace pipward::place {

MetrePlane::MetrePlane(const std::string& crs, const MapPoint& origin)
    : to_earth_(crs), origin_(origin), origin_on_earth_(to_earth_(origin)) {}

math::PlanePoint MetrePlane::operator()(const MapPoint& point) const {
    const auto place = origin_on_earth_ ? to_earth_(point) : std::nullopt;
    if (!place) {
        return {point.x - origin_.x, point.y - origin_.y};
    }
    const auto way = way_between(*origin_on_earth_, *place);
    return math::way_at(way.bearing_deg) * way.distance.value;
}

MapPoint MetrePlane::back(math::PlanePoint point) const {
    const MapPoint plain{origin_.x + point.east, origin_.y + point.north, {}};
    if (!origin_on_earth_) {
        return plain;
    }
    return to_earth_.back(way_from(*origin_on_earth_, math::bearing_deg(point), Metres{math::length(point)}))
        .value_or(plain);
}

MapPoint middle_of(std::span<const MapPoint> points) {
    MapPoint low = points.front();
    MapPoint high = points.front();
    for (const auto& point : points) {
        low.x = std::min(low.x, point.x);
        low.y = std::min(low.y, point.y);
        high.x = std::max(high.x, point.x);
        high.y = std::max(high.y, point.y);
    }
    return {(low.x + high.x) / 2, (low.y + high.y) / 2, {}};
}

}  // namespace pipward::place
