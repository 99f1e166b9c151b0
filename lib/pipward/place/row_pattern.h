// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

/// Inside of the room: finding what repeats in a cloud of points.
namespace pipward::place {

/// Metres east and north of some middle, or along and across.
struct PlanePoint {
    double x = 0;
    double y = 0;
};

/// A family of even lines: how strongly the points keep to it, 0..1.
struct LineFamily {
    double bearing = 0;  ///< of the lines, radians from north, 0..pi
    double distance = 0;
    double strength = 0;
};

struct FamilySearch {
    double least = 2;  ///< distances looked among, in metres
    double most = 8;
    std::optional<double> bearing{};  ///< radians; only lines within 20 degrees of it
};

struct FoundFamily {
    LineFamily rows;
    bool ambiguous = false;  ///< lines across it are as even and as far apart: a square planting
};

/// The widest family of lines to which the points keep well: rows stand farther apart than trees in a row.
/// Nothing where no family stands out from chance.
std::optional<FoundFamily> find_lines(std::span<const PlanePoint> points, const FamilySearch& search);

/// Values of several rows that share a spacing but not an origin.
struct FoundSpacing {
    double spacing = 0;
    double coherence = 0;  ///< squared: exp(-(2 pi noise / spacing)^2) for normal noise
};
std::optional<FoundSpacing> find_spacing(std::span<const std::vector<double>> rows, double least,
                                         double most);

/// Where positions of this spacing lie best: 0..spacing.
double origin_of(std::span<const double> along, double spacing);

}  // namespace pipward::place
