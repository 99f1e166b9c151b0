// SPDX-License-Identifier: MIT
#include "site.h"

#include <fmt/format.h>

#include "random_source.h"

namespace pipward::larkfold {
namespace {

constexpr double origin_east = 522400;
constexpr double origin_north = 5331200;
// The rows run 24 parts east and 7 parts north: a 7-24-25 triangle needs no trigonometry.
constexpr double east_part = 0.96;
constexpr double north_part = 0.28;
constexpr double foot_of_slope = 446;
constexpr double rise_up = 0.11;
constexpr double rise_along = 0.005;

std::string corner(SlopePlace place) {
    const auto point = map_point(place);
    return fmt::format("{:.2f} {:.2f}", point.x, point.y);
}

}  // namespace

MapPoint map_point(SlopePlace place) {
    MapPoint point;
    point.x = rounded(origin_east + east_part * place.along - north_part * place.up, 100);
    point.y = rounded(origin_north + north_part * place.along + east_part * place.up, 100);
    return point;
}

Metres elevation_at(SlopePlace place) {
    return {rounded(foot_of_slope + rise_up * place.up + rise_along * place.along, 10)};
}

std::string line_wkt(SlopePlace from, SlopePlace to) {
    return fmt::format("LINESTRING ({}, {})", corner(from), corner(to));
}

std::string rectangle_wkt(SlopePlace low, SlopePlace high) {
    const auto start = corner(low);
    return fmt::format("POLYGON (({}, {}, {}, {}, {}))", start, corner({high.along, low.up}), corner(high),
                       corner({low.along, high.up}), start);
}

Station larkfold_station() {
    Station station;
    station.name = "Larkfold";
    station.elevation = elevation_at(station_place);
    station.at = map_point(station_place);
    return station;
}

}  // namespace pipward::larkfold
