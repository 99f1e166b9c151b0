// SPDX-License-Identifier: MIT
#include "pipward/place/whereabouts_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/place/transformation.h"
#include "pipward/value/sentence.h"

namespace pipward::place {
namespace {

/// Metres: an orchard and its outlying fields lie within them (common practice, no source).
constexpr double far_away = 50'000;
constexpr std::size_t enough = 200;  // trees, evenly spread through the book

bool may_be_degrees(const MapPoint& point) {
    return std::abs(point.x) <= 180 && std::abs(point.y) <= 180 && (point.x != 0 || point.y != 0);
}

bool is_near(const std::optional<LonLat>& place, std::span<const LonLat> known) {
    return place && std::ranges::any_of(known, [&](const LonLat& other) {
               return way_between(*place, other).distance.value <= far_away;
           });
}

Finding wrong(Level level, const MapPoint& point, const std::string& field, Sentence message,
              Sentence remedy) {
    return {level, {}, {}, field, coordinates_text(point), std::move(message), std::move(remedy)};
}

std::optional<Finding> told(const PlaceJudge& judge, const MapPoint& point, const std::string& crs,
                            const std::string& field, const std::string& book_crs) {
    switch (judge(point)) {
        case PlaceDoubt::none:
            break;
        case PlaceDoubt::far:
            return wrong(Level::warning, point, field,
                         say("It lies {:.0f} km from everything else in the book.",
                             judge.away(point).value_or(Metres{}).value / 1000),
                         say("Check the coordinates and their coordinate system."));
        case PlaceDoubt::degrees:
            return wrong(Level::error, point, field,
                         say("These numbers look like degrees, but {} counts metres.", crs),
                         say("Give their coordinate system: for GNSS degrees, layer-crs EPSG:4326."));
        case PlaceDoubt::exchanged:
            return wrong(Level::error, point, field, judge.words_of_exchange(),
                         say("Give the east (longitude, x) first, then the north (latitude, y)."));
        case PlaceDoubt::nowhere:
            return wrong(Level::error, point, field, say("This is no location on the earth in {}.", crs),
                         say("Check the coordinates and their coordinate system: east first, then north."));
        case PlaceDoubt::outside: {
            auto [message, remedy] = words_of_outside(*ToEarth(crs)(point), book_crs);
            return wrong(Level::error, point, field, std::move(message), std::move(remedy));
        }
    }
    return std::nullopt;
}

}  // namespace

std::pair<Sentence, Sentence> words_of_outside(const LonLat& place, const std::string& book_crs) {
    return {say("It lies at latitude {:.4f}, longitude {:.4f}, outside of the area of use of the book's "
                "coordinate system, {}.",
                place.lat, place.lon, system_name(book_crs)),
            say("Check the coordinates and their system. If they are right, make a book with book-new in a "
                "system for that area.")};
}

Sentence PlaceJudge::words_of_exchange() const {
    if (known_.empty()) {
        return in_degrees() ? say("Latitude and longitude are swapped: the other way round it lies in the "
                                  "area of use of the book's coordinate system.")
                            : say("Easting and northing are swapped: the other way round it lies in the area "
                                  "of use of the book's coordinate system.");
    }
    return in_degrees() ? say("Latitude and longitude are swapped: the other way round it lies among the "
                              "book's locations.")
                        : say("Easting and northing are swapped: the other way round it lies among the "
                              "book's locations.");
}

bool PlaceJudge::is_home(const std::optional<LonLat>& place) const {
    constexpr double beyond = 3;  // degrees
    return place && (!home_ || home_->holds(*place, beyond));
}

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

PlaceDoubt PlaceJudge::operator()(const MapPoint& point) const {
    if (!to_earth_.from_degrees() && may_be_degrees(point)) {
        return PlaceDoubt::degrees;
    }
    const auto place = to_earth_(point);
    const bool home = is_home(place);
    if (place && (known_.empty() ? home : is_near(place, known_))) {
        return PlaceDoubt::none;
    }
    const auto turned = to_earth_({point.y, point.x, {}});
    if (known_.empty() ? home_ && is_home(turned) : is_near(turned, known_)) {
        return PlaceDoubt::exchanged;
    }
    return !place ? PlaceDoubt::nowhere : home ? PlaceDoubt::far : PlaceDoubt::outside;
}

std::optional<Metres> PlaceJudge::away(const MapPoint& point) const {
    const auto place = to_earth_(point);
    std::optional<Metres> nearest;
    for (const auto& other : known_) {
        if (place) {
            const auto way = way_between(*place, other).distance;
            nearest = nearest && nearest->value < way.value ? nearest : std::optional{way};
        }
    }
    return nearest;
}

std::optional<Finding> check_whereabouts(std::span<const MapPoint> points, const std::string& crs,
                                         std::span<const LonLat> known, const std::string& field,
                                         const std::string& book_crs) {
    const PlaceJudge judge(crs, known, book_crs);
    std::optional<Finding> doubt;
    for (const auto& point : points) {
        auto finding = told(judge, point, crs, field, book_crs);
        if (finding && finding->level == Level::error) {
            return finding;
        }
        doubt = doubt ? doubt : finding;
    }
    return doubt;
}

}  // namespace pipward::place
