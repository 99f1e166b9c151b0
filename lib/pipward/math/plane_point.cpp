// SPDX-License-Identifier: MIT
#include "pipward/math/plane_point.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pipward::math {
namespace {

constexpr double degree = std::numbers::pi / 180;

PlanePoint middle_of(std::span<const PlanePoint> points) {
    PlanePoint sum;
    for (const auto& point : points) {
        sum = sum + point;
    }
    return sum * (1.0 / static_cast<double>(std::max<std::size_t>(points.size(), 1)));
}

}  // namespace

double length(PlanePoint way) {
    return std::hypot(way.east, way.north);
}

PlanePoint unit(PlanePoint way) {
    const double metres = length(way);
    return metres > 0 ? way * (1 / metres) : PlanePoint{1, 0};
}

double bearing_deg(PlanePoint way) {
    return std::fmod(std::atan2(way.east, way.north) / degree + 360.0, 360.0);
}

PlanePoint way_at(double bearing_deg) {
    return {std::sin(bearing_deg * degree), std::cos(bearing_deg * degree)};
}

PlanePoint main_direction(std::span<const PlanePoint> points) {
    const auto middle = middle_of(points);
    double east = 0;
    double north = 0;
    double both = 0;
    for (const auto& point : points) {
        const auto way = point - middle;
        east += way.east * way.east;
        north += way.north * way.north;
        both += way.east * way.north;
    }
    const double angle = 0.5 * std::atan2(2 * both, east - north);
    const PlanePoint along{std::cos(angle), std::sin(angle)};
    const bool backwards = !points.empty() && dot(points.back() - points.front(), along) < 0;
    return backwards ? along * -1 : along;
}

Box box_around(std::span<const PlanePoint> points) {
    Box box{points.front(), points.front()};
    for (const auto& point : points) {
        box.low = {std::min(box.low.east, point.east), std::min(box.low.north, point.north)};
        box.high = {std::max(box.high.east, point.east), std::max(box.high.north, point.north)};
    }
    return box;
}

}  // namespace pipward::math
