// SPDX-License-Identifier: MIT
#pragma once

#include <span>

/// The ground as a plane: the one point type of every room that calculates in metres.
namespace pipward::math {

/// Metres to the east and to the north of a plane's origin; also a way from one such point to another.
struct PlanePoint {
    double east = 0;   ///< metres; negative to the west
    double north = 0;  ///< metres; negative to the south

    bool operator==(const PlanePoint&) const = default;
};

/// Where the way `b` leads from `a`; of two ways, both of them.
inline PlanePoint operator+(PlanePoint a, PlanePoint b) {
    return {a.east + b.east, a.north + b.north};
}
/// The way from `b` to `a`.
inline PlanePoint operator-(PlanePoint a, PlanePoint b) {
    return {a.east - b.east, a.north - b.north};
}
/// A multiple of a way.
inline PlanePoint operator*(PlanePoint way, double factor) {
    return {way.east * factor, way.north * factor};
}
/// Square metres: the length of one way times that of the other's part along it; negative where it runs back.
inline double dot(PlanePoint a, PlanePoint b) {
    return a.east * b.east + a.north * b.north;
}
/// A quarter turn to the left.
inline PlanePoint left_of(PlanePoint way) {
    return {-way.north, way.east};
}
/// In metres.
double length(PlanePoint way);
/// The same direction with length 1; east for a way of no length.
PlanePoint unit(PlanePoint way);

/// Degrees clockwise from the plane's north, 0 up to 360; 0 for a way of no length.
double bearing_deg(PlanePoint way);
/// The way of length 1 with this bearing, degrees clockwise from the plane's north.
PlanePoint way_at(double bearing_deg);

/// The direction, of length 1, along which points lie most: their principal axis (Pearson 1901, Phil. Mag.
/// 2:559), towards the last of them rather than the first. East where they have none.
PlanePoint main_direction(std::span<const PlanePoint> points);

/// The straight rectangle around points.
struct Box {
    PlanePoint low;   ///< its south-western corner
    PlanePoint high;  ///< its north-eastern corner
};
/// Of at least one point.
Box box_around(std::span<const PlanePoint> points);

}  // namespace pipward::math
