// SPDX-License-Identifier: MIT
#include "pipward/place/whereabouts_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace pipward {
namespace {

/// An orchard and its outlying fields lie within it.
constexpr double far_away = 50'000;
constexpr std::size_t enough = 200;

std::string shown(const MapPoint& point) {
    return fmt::format("{} {}", point.x, point.y);
}

double nearest_of(const LonLat& place, std::span<const LonLat> known) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const auto& other : known) {
        nearest = std::min(nearest, way_between(place, other).distance.value);
    }
    return nearest;
}

bool looks_like_degrees(const MapPoint& point) {
    return std::abs(point.x) <= 180 && std::abs(point.y) <= 180 && (point.x != 0 || point.y != 0);
}

bool is_near(const std::optional<LonLat>& place, std::span<const LonLat> known) {
    return place && nearest_of(*place, known) <= far_away;
}

Finding wrong(Level level, const MapPoint& point, const std::string& field, Sentence message,
              Sentence remedy) {
    return {level, {}, {}, field, shown(point), std::move(message), std::move(remedy)};
}

std::optional<Finding> check_far(const MapPoint& point, const LonLat& place, const ToEarth& to_earth,
                                 std::span<const LonLat> known, const std::string& field) {
    if (known.empty() || is_near(place, known)) {
        return std::nullopt;
    }
    if (is_near(to_earth({point.y, point.x, {}}), known)) {
        return wrong(Level::error, point, field,
                     to_earth.from_degrees()
                         ? say("Latitude and longitude are exchanged: the other way round it "
                               "lies among the book's places.")
                         : say("East and north are exchanged: the other way round it lies "
                               "among the book's places."),
                     say("Give the east (longitude, x) first, then the north (latitude, y)."));
    }
    return wrong(Level::warning, point, field,
                 say("It lies {:.0f} km from everything else in the book.", nearest_of(place, known) / 1000),
                 say("Check the coordinates and their coordinate system."));
}

std::optional<Finding> check_point(const MapPoint& point, const ToEarth& to_earth,
                                   std::span<const LonLat> known, const std::string& crs,
                                   const std::string& field) {
    if (!to_earth.from_degrees() && looks_like_degrees(point)) {
        return wrong(Level::error, point, field,
                     say("These numbers look like degrees, but {} counts metres.", crs),
                     say("Say which system they are in: for GNSS degrees, points-crs EPSG:4326."));
    }
    const auto place = to_earth(point);
    if (!place && is_near(to_earth({point.y, point.x, {}}), known)) {
        return wrong(Level::error, point, field, say("Latitude and longitude are exchanged."),
                     say("Give the east (longitude, x) first, then the north (latitude, y)."));
    }
    if (!place) {
        return wrong(Level::error, point, field, say("This is no place on the earth in {}.", crs),
                     say("Check the coordinates and their coordinate system: east first, then north."));
    }
    return check_far(point, *place, to_earth, known, field);
}

}  // namespace

std::vector<MapPoint> places_in(const Orchard& orchard) {
    std::vector<MapPoint> places;
    const auto step = orchard.trees.size() / enough + 1;
    for (std::size_t i = 0; i < orchard.trees.size(); i += step) {
        if (orchard.trees[i].at) {
            places.push_back(*orchard.trees[i].at);
        }
    }
    for (const auto& row : orchard.rows) {
        if (!row.line.empty() && places.size() < 2 * enough) {
            places.push_back(row.line.front());
        }
    }
    for (const auto& station : orchard.stations) {
        if (station.at) {
            places.push_back(*station.at);
        }
    }
    return places;
}

std::optional<Finding> check_whereabouts(std::span<const MapPoint> points, const std::string& crs,
                                         std::span<const LonLat> known, const std::string& field) {
    const ToEarth to_earth(crs);
    std::optional<Finding> doubt;
    for (const auto& point : points) {
        auto finding = check_point(point, to_earth, known, crs, field);
        if (finding && finding->level == Level::error) {
            return finding;
        }
        doubt = doubt ? doubt : finding;
    }
    return doubt;
}

}  // namespace pipward
