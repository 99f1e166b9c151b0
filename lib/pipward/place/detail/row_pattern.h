// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "pipward/math/plane_point.h"

/// Inside of the room: finding what repeats in a cloud of points.
///
/// Points on even lines all have one phase against a wave of the lines' distance that runs across them. How
/// strongly they keep to it is the length of the mean of their unit vectors on that wave's circle: the
/// periodogram of a point process (Bartlett 1964, Biometrika 51:299), its chance level that of Rayleigh 1880
/// (Phil. Mag. 10:73). Which bearings and distances are tried, and which of several that do well is taken, is
/// our own method, because rows stand farther apart than trees in a row; docs/method.md tells how well it
/// does.
namespace pipward::place::detail {

/// A family of even, parallel lines.
struct LineFamily {
    double bearing_deg = 0;  ///< of the lines, from the plane's north, 0 up to 180: they have no sense
    double distance = 0;     ///< metres from line to line
    double strength = 0;     ///< how strongly the points keep to them: 0 not at all, 1 exactly
};

struct FamilySearch {
    double least = 2;                     ///< metres: distances looked among, above 0
    double most = 8;                      ///< metres, above `least`
    std::optional<double> bearing_deg{};  ///< only lines within 20 degrees of it, either sense
};

struct FoundFamily {
    LineFamily rows;
    bool ambiguous = false;  ///< lines across it are as even and as far apart: a square planting
};

/// The widest family of lines to which the points keep well: 85 % as strongly as to the best. Nothing where
/// no family is four times as strong as chance would make it, or there are fewer than six points.
std::optional<FoundFamily> find_lines(std::span<const math::PlanePoint> points, const FamilySearch& search);

/// Values of several rows that share a spacing but not an origin.
struct FoundSpacing {
    double spacing = 0;    ///< metres
    double coherence = 0;  ///< 0..1, squared: exp(-(2 pi noise / spacing)^2) for normal noise
};
/// The longest spacing, of `least` to `most` metres, that the values of `rows` (metres along each) keep to
/// three quarters as well as to the best: halves and thirds of a spacing fit nearly as well. Nothing where
/// none is five times as coherent as chance would make it.
std::optional<FoundSpacing> find_spacing(std::span<const std::vector<double>> rows, double least,
                                         double most);

/// Where positions of this spacing lie best: metres, 0 up to the spacing, by the mean direction on the circle
/// (Mardia & Jupp 2000, Directional Statistics, 2.2).
double origin_of(std::span<const double> along, double spacing);

}  // namespace pipward::place::detail
