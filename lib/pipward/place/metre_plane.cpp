// SPDX-License-Identifier: MIT
#include "pipward/place/metre_plane.h"

#include <algorithm>
#include <cmath>

#include "pipward/place/ground_line.h"

namespace pipward::place {
namespace {

constexpr double degree = 3.14159265358979323846 / 180;

}  // namespace

double length(PlanePoint way) {
    return std::hypot(way.east, way.north);
}

PlanePoint unit(PlanePoint way) {
    const double metres = length(way);
    return metres > 0 ? way * (1 / metres) : PlanePoint{1, 0};
}

double bearing_of(PlanePoint way) {
    return std::fmod(std::atan2(way.east, way.north) / degree + 360.0, 360.0);
}

MetrePlane::MetrePlane(const std::string& crs, const MapPoint& origin)
    : to_earth_(crs), origin_(origin), origin_on_earth_(to_earth_(origin)) {}

PlanePoint MetrePlane::operator()(const MapPoint& point) const {
    const auto place = origin_on_earth_ ? to_earth_(point) : std::nullopt;
    if (!place) {
        return {point.x - origin_.x, point.y - origin_.y};
    }
    const auto way = way_between(*origin_on_earth_, *place);
    return {way.distance.value * std::sin(way.bearing * degree),
            way.distance.value * std::cos(way.bearing * degree)};
}

MapPoint MetrePlane::back(PlanePoint point) const {
    const MapPoint plain{origin_.x + point.east, origin_.y + point.north, {}};
    if (!origin_on_earth_) {
        return plain;
    }
    return to_earth_.back(way_from(*origin_on_earth_, bearing_of(point), Metres{length(point)}))
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
