// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/record/orchard.h"

/// Where the made-up orchard lies: an even slope that rises to the north, on no real ground.
namespace pipward::larkfold {

inline constexpr auto site_crs = "EPSG:25832";

/// A place on the slope in metres: `along` the rows (east by north), `up` the slope (north by west).
struct SlopePlace {
    double along = 0;
    double up = 0;
};

/// In the book's coordinate system, to the centimetre.
MapPoint map_point(SlopePlace place);
/// Above sea level, to the decimetre.
Metres elevation_at(SlopePlace place);

std::string line_wkt(SlopePlace from, SlopePlace to);
/// A rectangle between two opposite corners.
std::string rectangle_wkt(SlopePlace low, SlopePlace high);

inline constexpr SlopePlace station_place{-22, -14};
Station larkfold_station();

}  // namespace pipward::larkfold
