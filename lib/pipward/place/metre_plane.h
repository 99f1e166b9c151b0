// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "pipward/math/plane_point.h"
#include "pipward/place/earth.h"
#include "pipward/record/orchard.h"

namespace pipward::place {

/// An orchard's ground as a plane in metres, whatever the book's coordinates are: distance and direction from
/// the origin are true (azimuthal equidistant; Snyder 1987, USGS Professional Paper 1395, p. 191; over the
/// ellipsoid by Karney 2013), others within a millimetre in a kilometre. Where the system is not of the earth
/// its coordinates are taken for metres. Not for two threads at once.
class MetrePlane {
  public:
    /// `crs` as in Orchard::crs.
    MetrePlane(const std::string& crs, const MapPoint& origin);

    /// Metres east and north of the origin. A point without a place on the earth is taken as its coordinates
    /// less the origin's.
    math::PlanePoint operator()(const MapPoint& point) const;
    /// The way back, without a height.
    MapPoint back(math::PlanePoint point) const;
    /// Whether the plane's north is the earth's; else it is the book's own grid's.
    bool on_earth() const { return origin_on_earth_.has_value(); }
    /// Nothing where the point has no place on the earth.
    std::optional<LonLat> lon_lat(const MapPoint& point) const { return to_earth_(point); }

  private:
    ToEarth to_earth_;
    MapPoint origin_;
    std::optional<LonLat> origin_on_earth_;
};

/// The middle of the box around points, of which there is at least one.
MapPoint middle_of(std::span<const MapPoint> points);

}  // namespace pipward::place
