// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "pipward/place/earth.h"
#include "pipward/record/orchard.h"

namespace pipward::place {

/// Metres to the east and to the north of the plane's origin.
struct PlanePoint {
    double east = 0;
    double north = 0;
};

inline PlanePoint operator+(PlanePoint a, PlanePoint b) {
    return {a.east + b.east, a.north + b.north};
}
inline PlanePoint operator-(PlanePoint a, PlanePoint b) {
    return {a.east - b.east, a.north - b.north};
}
inline PlanePoint operator*(PlanePoint a, double factor) {
    return {a.east * factor, a.north * factor};
}
inline double dot(PlanePoint a, PlanePoint b) {
    return a.east * b.east + a.north * b.north;
}
inline double turn(PlanePoint a, PlanePoint b) {
    return a.east * b.north - a.north * b.east;
}
double length(PlanePoint way);
/// Of length 1; nothing's is east.
PlanePoint unit(PlanePoint way);
/// A quarter turn to the left.
inline PlanePoint left_of(PlanePoint way) {
    return {-way.north, way.east};
}
/// Degrees clockwise from north, 0..360.
double bearing_of(PlanePoint way);

/// An orchard's ground as a plane in metres, whatever the book's coordinates are: distance and direction from
/// the origin are true (azimuthal equidistant), others within a millimetre in a kilometre. Where the
/// system is not of the earth its coordinates are taken for metres.
class MetrePlane {
  public:
    MetrePlane(const std::string& crs, const MapPoint& origin);

    PlanePoint operator()(const MapPoint& point) const;
    MapPoint back(PlanePoint point) const;
    bool on_earth() const { return origin_on_earth_.has_value(); }
    std::optional<LonLat> lon_lat(const MapPoint& point) const { return to_earth_(point); }

  private:
    ToEarth to_earth_;
    MapPoint origin_;
    std::optional<LonLat> origin_on_earth_;
};

/// The middle of the box around points, of which there is at least one.
MapPoint middle_of(std::span<const MapPoint> points);

}  // namespace pipward::place
