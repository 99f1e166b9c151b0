// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/book/heading.h"
#include "pipward/intake/cells.h"
#include "pipward/intake/detail/adopt_ground.h"
#include "pipward/intake/detail/adopting.h"
#include "pipward/intake/detail/book_value.h"
#include "pipward/place/place_text.h"
#include "pipward/place/transformation.h"
#include "pipward/value/complaint.h"

namespace pipward::intake::detail {
namespace {

std::optional<std::string> text_in(const book::UserFeature& feature, const FieldGoal& goal) {
    const auto text = feature.texts.find(goal.field);
    return text == feature.texts.end() || says_nothing(text->second) ? std::nullopt
                                                                     : std::optional{text->second};
}

void tell_unreadable(Adoption& adoption, AdoptRow& row, const FieldGoal& goal, const std::string& text) {
    ++adoption.unreadable[goal.field];
    adoption.complain(row, {Level::error, goal.field, text, say("This is no coordinate."),
                            goal.column == "place.at"
                                ? say("Write latitude and longitude, as in 48.1340, 9.3010.")
                                : say("Write it as a plain number, or in degrees, minutes and seconds.")});
}

/// What the writing of coordinates in columns says of them.
struct Taken {
    bool degrees = false;
};

// One of two columns: a number, or degrees with their signs.
std::optional<double> coordinate_in(const std::string& text, bool east, Taken& taken) {
    if (const auto number = read_number(text)) {
        return *number;
    }
    const auto angle = place::parse_angle(text);
    const auto letters = east ? std::string_view("EW") : std::string_view("NS");
    if (!angle || (angle->hemisphere != '\0' && letters.find(angle->hemisphere) == std::string_view::npos)) {
        return std::nullopt;
    }
    taken.degrees = true;
    return angle->degrees;
}

void take_both(Adoption& adoption, const book::UserLayer& layer, const FieldGoal& goal) {
    for (std::size_t i = 0; i < adoption.rows.size(); ++i) {
        const auto text = text_in(layer.features[i], goal);
        if (!text) {
            continue;
        }
        if (const auto place = place::parse_place(*text)) {
            adoption.rows[i].points = {{place->at.lon, place->at.lat, {}}};
        } else {
            tell_unreadable(adoption, adoption.rows[i], goal, *text);
        }
    }
}

void take_each(Adoption& adoption, const book::UserLayer& layer, const FieldGoal& x, const FieldGoal& y,
               Taken& taken) {
    for (std::size_t i = 0; i < adoption.rows.size(); ++i) {
        auto& row = adoption.rows[i];
        MapPoint point;
        int found = 0;
        for (const auto* goal : {&x, &y}) {
            const auto text = text_in(layer.features[i], *goal);
            const auto number = text ? coordinate_in(*text, goal == &x, taken) : std::nullopt;
            if (number) {
                (goal == &x ? point.x : point.y) = *number;
                ++found;
            } else if (text) {
                tell_unreadable(adoption, row, *goal, *text);
            }
        }
        if (found == 2) {
            row.points = {point};
        }
    }
}

// Coordinates that stand in columns.
Taken take_coordinates(Adoption& adoption, const book::UserLayer& layer) {
    const auto* x = adoption.mapping.to("place.x");
    const auto* y = adoption.mapping.to("place.y");
    const auto* both = adoption.mapping.to("place.at");
    Taken taken;
    if (x != nullptr && y != nullptr) {
        take_each(adoption, layer, *x, *y, taken);
    } else if (both != nullptr) {
        take_both(adoption, layer, *both);
        taken.degrees = true;
    } else if (x != y) {
        adoption.tell(
            Level::error, (x != nullptr ? x : y)->field, {},
            say("The layer has one of the two coordinates only."),
            say("Give the other field with map: x is easting or longitude, y northing or latitude."));
    }
    return taken;
}

bool is_lon_lat(const FieldMapping& mapping) {
    const auto says = [&](const char* column, std::initializer_list<std::string_view> parts) {
        const auto* goal = mapping.to(column);
        const auto word = goal == nullptr ? std::string{} : book::field_word(goal->field);
        return std::ranges::any_of(
            parts, [&](std::string_view part) { return word.find(part) != std::string::npos; });
    };
    return says("place.x", {"lon", "lng", "laeng", "lang"}) && says("place.y", {"lat", "breit"});
}

std::vector<MapPoint> all_points(const Adoption& adoption) {
    std::vector<MapPoint> points;
    for (const auto& row : adoption.rows) {
        points.insert(points.end(), row.points.begin(), row.points.end());
    }
    return points;
}

// "book" and "GNSS" beside what PROJ knows.
std::string system_given(const std::string& text, const Orchard& orchard) {
    const auto word = lower_case(text);
    return word == "book" ? orchard.crs : word == "gnss" || word == "gps" ? "EPSG:4326" : text;
}

std::string system_of(Adoption& adoption, const book::UserLayer& layer, const AdoptOptions& options,
                      const Taken& taken, const Orchard& orchard) {
    if (!options.layer_crs.empty()) {
        const auto given = system_given(options.layer_crs, orchard);
        if (!layer.crs.empty() && place::system_name(layer.crs) != place::system_name(given)) {
            adoption.tell(Level::warning, "layer-crs", options.layer_crs,
                          say("By its own metadata the layer is in {}.", place::system_name(layer.crs)),
                          say("The one given was used; leave it out to use the layer's own."));
        }
        return given;
    }
    if (layer.crs.empty() && (taken.degrees || is_lon_lat(adoption.mapping))) {
        adoption.tell(Level::notice, {}, {}, say("Longitude and latitude were taken as WGS 84, EPSG:4326."),
                      say("Give layer-crs if they are in another system."));
        return "EPSG:4326";
    }
    return layer.crs;
}

// Asked of the first place: which of the two usual answers its numbers speak for.
void ask_for_system(Adoption& adoption, const std::vector<MapPoint>& points, const Orchard& orchard) {
    const auto& first = points.front();
    const bool degrees = std::abs(first.x) <= 180 && std::abs(first.y) <= 90;
    const auto book = place::system_name(orchard.crs);
    adoption.tell(
        Level::error, "layer-crs", {},
        say("The layer does not give its coordinate system.") + verbatim(" ") +
            (degrees
                 ? say("Are {} and {} longitude and latitude, as GNSS receivers and telephones give them?",
                       first.x, first.y)
                 : say("Are {} and {} in the book's own system, {}?", first.x, first.y, book)),
        degrees ? say("If they are, give layer-crs EPSG:4326; if they are in the book's own system, "
                      "layer-crs book; else the code of their system.")
                : say("If they are, give layer-crs book; else the code of their system, as in EPSG:31467: it "
                      "stands in the settings of the program or receiver that they come from."));
}

void tell_placeless(Adoption& adoption) {
    for (auto& row : adoption.rows) {
        if (row.points.empty() && row.fate == Fate::added && adoption.table != "accession") {
            adoption.complain(row, {Level::warning,
                                    {},
                                    {},
                                    say("It has no location on the map."),
                                    say("It is imported without a geometry; draw it in the book.")});
        }
    }
}

void exchange(Adoption& adoption) {
    for (auto& row : adoption.rows) {
        for (auto& point : row.points) {
            std::swap(point.x, point.y);
        }
    }
}

double rounded(double metres) {
    return std::round(metres * 1000) / 1000 + 0.0;
}

// A point's height is kept where heights are looked for: in the tree's own column.
void take_heights(Adoption& adoption) {
    const auto* column = book::find_column(*book::find_book_table("tree"), "elevation_m");
    int taken = 0;
    for (auto& row : adoption.rows) {
        if (adoption.table != "tree" || row.points.size() != 1 || !row.points.front().height) {
            continue;
        }
        const Cell height = rounded(row.points.front().height->value);
        row.points.front().height.reset();
        if (row.cells.contains("elevation_m")) {
            continue;
        }
        if (book::check_cell(*column, height)) {
            adoption.complain(row, {Level::warning,
                                    {},
                                    to_text(height),
                                    say("The point's height cannot be one above the sea."),
                                    say("It was left out.")});
            continue;
        }
        row.cells["elevation_m"] = height;
        ++taken;
    }
    if (taken > 0 && place::has_ellipsoidal_heights(adoption.crs)) {
        adoption.tell(Level::warning, "elevation_m", {},
                      say("The heights of {} points are above the ellipsoid, not above sea level: some ten "
                          "metres more or less in most places.",
                          taken),
                      say("Differences between trees are correct; compare with the elevations in the book."));
    }
}

void carry(Adoption& adoption, const place::Transformation& transformation) {
    for (auto& row : adoption.rows) {
        for (auto& point : row.points) {
            if (const auto there = transformation(point)) {
                point = *there;
            } else if (row.fate != Fate::refused) {
                adoption.complain(row, {Level::error,
                                        {},
                                        place::coordinates_text(point),
                                        say("This position cannot be drawn in the book's coordinates."),
                                        say("Check the coordinates and their system.")});
            }
        }
    }
}

}  // namespace

void read_places(Adoption& adoption, const book::UserLayer& layer, const AdoptOptions& options,
                 const Orchard& orchard, std::span<const place::LonLat> known) {
    const auto taken = take_coordinates(adoption, layer);
    tell_placeless(adoption);
    const auto points = all_points(adoption);
    if (points.empty() || adoption.table == "accession") {
        return;
    }
    adoption.crs = system_of(adoption, layer, options, taken, orchard);
    if (adoption.crs.empty()) {
        ask_for_system(adoption, points, orchard);
        return;
    }
    if (place::system_name(adoption.crs).empty()) {
        throw Error(Trouble::usage, Finding{Level::error,
                                            {},
                                            {},
                                            "layer-crs",
                                            adoption.crs,
                                            say("This coordinate system is not known."),
                                            say("Give one by its EPSG number, as in EPSG:4326.")});
    }
    if (options.exchange_axes) {
        exchange(adoption);
    }
    const bool sound = judge_whereabouts(adoption, known, orchard.crs);
    const place::Transformation transformation(adoption.crs, orchard.crs, all_points(adoption));
    if (!transformation.is_possible()) {
        adoption.tell(Level::error, "layer-crs", {},
                      say("There is no transformation from {} to the book's coordinates.",
                          place::system_name(adoption.crs)),
                      say("Transform the layer first."));
        return;
    }
    if (sound) {
        tell_transformation(adoption, transformation.facts(), orchard.crs);
    }
    adoption.accuracy = transformation.facts().accuracy.value_or(Metres{});
    carry(adoption, transformation);
    take_heights(adoption);
}

}  // namespace pipward::intake::detail
