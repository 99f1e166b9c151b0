// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "pipward/place/earth.h"

/// Lines as they are measured in the field: in metres over the ground, whatever the map's coordinates are.
namespace pipward::place {

/// A surveyed point.
struct GroundPoint {
    LonLat at;                       ///< in degrees on WGS 84
    std::optional<Metres> height{};  ///< above the sea
};

/// Where one comes to by walking `distance` straight from `from`, over the WGS 84 ellipsoid (Karney 2013, J.
/// Geodesy 87:43, as in PROJ). The bearing is clockwise from true north at the start; any number of degrees.
LonLat way_from(const LonLat& from, double bearing_deg, Metres distance);

/// A course from point to point along geodesics. Between two points that both have heights the length is
/// that of the slope, at their height above the ellipsoid; otherwise it is the ellipsoid's, which at 500 m
/// above the sea is short by 8 cm a kilometre.
class GroundLine {
  public:
    /// Points that repeat the one before them are passed over.
    explicit GroundLine(std::span<const GroundPoint> points);

    /// Metres over the ground, 0 or more; 0 without two different points.
    Metres length() const;
    /// The place so far along the course; before its beginning and beyond its end it goes straight on.
    /// Needs a length.
    GroundPoint at(Metres along) const;
    /// Clockwise from true north, 0..360, from the first point to the last; 0 without a length.
    double bearing_deg() const;
    /// The corners with what lies between `from` and `to` along the course.
    std::vector<GroundPoint> part(Metres from, Metres to) const;
    /// The sharpest turn at a corner, 0..180.
    double sharpest_turn_deg() const;
    /// The same course `distance` to the right, negative to the left: every leg parallel.
    std::vector<GroundPoint> beside(Metres distance) const;

  private:
    struct Leg {
        GroundPoint start;
        GroundPoint end;
        double begins = 0;  // along the course, in ground metres
        double length = 0;  // in ground metres
        double level = 0;   // over the ellipsoid
        double bearing_deg = 0;
        double bearing_at_end_deg = 0;
    };
    const Leg& leg_at(double along) const;
    std::vector<Leg> legs_;
};

}  // namespace pipward::place
