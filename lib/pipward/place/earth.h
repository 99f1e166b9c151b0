// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <numbers>
#include <optional>
#include <string>
#include <string_view>

#include "pipward/record/orchard.h"
#include "pipward/value/sentence.h"

/// From the book's coordinates to the earth: longitude and latitude, distance and bearing.
namespace pipward::place {

/// On WGS 84, in degrees: longitude -180..180 to the east, latitude -90..90 to the north.
struct LonLat {
    double lon = 0;  ///< east; west is negative
    double lat = 0;  ///< north; south is negative
};

/// Carries points of one coordinate system to the earth, by PROJ. Not for two threads at once.
class ToEarth {
  public:
    /// `crs` as in Orchard::crs: AUTHORITY:CODE or well-known text. One that is unknown, or not of the earth,
    /// carries nothing.
    explicit ToEarth(const std::string& crs);
    ~ToEarth();
    /// The one moved from may only be destroyed or assigned to.
    ToEarth(ToEarth&&) noexcept;
    ToEarth& operator=(ToEarth&&) noexcept;

    /// Nothing where the point has no place on the earth.
    std::optional<LonLat> operator()(const MapPoint& point) const;
    /// The way back.
    std::optional<MapPoint> back(const LonLat& place) const;
    /// Whether the system is one that PROJ knows and that is of the earth.
    bool is_known() const;
    /// Whether the book's coordinates are degrees.
    bool from_degrees() const;

  private:
    struct Projection;
    std::unique_ptr<Projection> projection_;
};

/// The numbers of a point as the book has them, x before y, with a blank between.
std::string coordinates_text(const MapPoint& point);

/// A part of the earth between two meridians and two parallels, in degrees as LonLat; west is greater than
/// east where it holds the 180th meridian.
struct EarthBox {
    double west = -180;  ///< its western meridian
    double south = -90;  ///< its southern parallel
    double east = 180;   ///< its eastern meridian
    double north = 90;   ///< its northern parallel

    /// Whether the place lies in it or at most so many degrees beyond.
    bool holds(const LonLat& place, double margin_deg = 0) const;
};

/// Where a coordinate system is meant to be used, as its authority says. Nothing where PROJ does not know the
/// system or the authority does not say.
std::optional<EarthBox> area_of_use(const std::string& crs);

/// One coordinate as people write it: blanks around it and a plus before it do not matter. Nothing for what
/// is no finite number.
std::optional<double> parse_coordinate(std::string_view text);

/// "48.13,11.57": latitude first, as people say and as map programs on phones print it. Nothing for anything
/// else.
std::optional<LonLat> parse_lat_lon(std::string_view text);

/// How to come from one place to another.
struct WayTo {
    Metres distance;         ///< 0 or more, over the ellipsoid: heights do not count
    double bearing_deg = 0;  ///< clockwise from true north, 0..360, at the start; 0 where there is no way
};

/// An angle in degrees as one in radians.
constexpr double radians(double degrees) {
    return degrees * (std::numbers::pi / 180);
}

/// The length of a degree of the equator of WGS 84, in metres; a degree of latitude is as long but for 1 %.
constexpr double metres_a_degree = 111'320;

/// The shortest way over the WGS 84 ellipsoid (Karney 2013, J. Geodesy 87:43, as in PROJ).
WayTo way_between(const LonLat& from, const LonLat& to);

/// "north-east" for 22.5 to 67.5 degrees and so on: the nearest of eight. The bearing is clockwise from
/// north, 0..360.
Sentence compass_words(double bearing_deg);

}  // namespace pipward::place
