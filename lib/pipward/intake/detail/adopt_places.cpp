// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/book/heading.h"
#include "pipward/intake/cells.h"
#include "pipward/intake/detail/adopt_ground.h"
#include "pipward/intake/detail/adopting.h"
#include "pipward/intake/detail/book_value.h"
#include "pipward/place/transformation.h"
#include "pipward/value/complaint.h"

namespace pipward::intake::detail {
namespace {

// Coordinates that stand in columns.
void take_coordinates(Adoption& adoption, const book::UserLayer& layer) {
    const auto* x = adoption.mapping.to("place.x");
    const auto* y = adoption.mapping.to("place.y");
    if (x == nullptr || y == nullptr) {
        if (x != y) {
            adoption.tell(
                Level::error, (x != nullptr ? x : y)->field, {},
                say("The layer has one of the two coordinates only."),
                say("Give the other field with map: x is easting or longitude, y northing or latitude."));
        }
        return;
    }
    for (std::size_t i = 0; i < adoption.rows.size(); ++i) {
        auto& row = adoption.rows[i];
        MapPoint point;
        int found = 0;
        for (const auto* goal : {x, y}) {
            const auto text = layer.features[i].texts.find(goal->field);
            if (text == layer.features[i].texts.end() || says_nothing(text->second)) {
                continue;
            }
            const auto number = read_number(text->second);
            if (!number) {
                ++adoption.unreadable[goal->field];
                adoption.complain(row, {Level::error, goal->field, text->second,
                                        say("This is no coordinate."), say("Write it as a plain number.")});
                continue;
            }
            (goal == x ? point.x : point.y) = *number;
            ++found;
        }
        if (found == 2) {
            row.points = {point};
        }
    }
}

bool is_lon_lat(const FieldMapping& mapping) {
    const auto* x = mapping.to("place.x");
    const auto* y = mapping.to("place.y");
    const auto says = [](const FieldGoal* goal, std::string_view part) {
        return goal != nullptr && book::field_word(goal->field).find(part) != std::string::npos;
    };
    return (says(x, "lon") || says(x, "lng")) && says(y, "lat");
}

std::vector<MapPoint> all_points(const Adoption& adoption) {
    std::vector<MapPoint> points;
    for (const auto& row : adoption.rows) {
        points.insert(points.end(), row.points.begin(), row.points.end());
    }
    return points;
}

std::string system_of(Adoption& adoption, const book::UserLayer& layer, const AdoptOptions& options) {
    if (!options.layer_crs.empty()) {
        if (!layer.crs.empty() && place::system_name(layer.crs) != place::system_name(options.layer_crs)) {
            adoption.tell(Level::warning, "layer-crs", options.layer_crs,
                          say("By its own metadata the layer is in {}.", place::system_name(layer.crs)),
                          say("The one given was used; leave it out to use the layer's own."));
        }
        return options.layer_crs;
    }
    if (layer.crs.empty() && is_lon_lat(adoption.mapping)) {
        adoption.tell(Level::notice, {}, {}, say("Longitude and latitude were taken as WGS 84, EPSG:4326."),
                      say("Give layer-crs if they are in another system."));
        return "EPSG:4326";
    }
    return layer.crs;
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

std::string shown(const MapPoint& point) {
    return fmt::format("{} {}", point.x, point.y);
}

void carry(Adoption& adoption, const place::Transformation& transformation) {
    for (auto& row : adoption.rows) {
        for (auto& point : row.points) {
            if (const auto there = transformation(point)) {
                point = *there;
            } else if (row.fate != Fate::refused) {
                adoption.complain(row, {Level::error,
                                        {},
                                        shown(point),
                                        say("This position cannot be drawn in the book's coordinates."),
                                        say("Check the coordinates and their system.")});
            }
        }
    }
}

}  // namespace

void read_places(Adoption& adoption, const book::UserLayer& layer, const AdoptOptions& options,
                 const Orchard& orchard, std::span<const place::LonLat> known) {
    take_coordinates(adoption, layer);
    tell_placeless(adoption);
    const auto points = all_points(adoption);
    if (points.empty() || adoption.table == "accession") {
        return;
    }
    adoption.crs = system_of(adoption, layer, options);
    if (adoption.crs.empty()) {
        adoption.tell(Level::error, "layer-crs", {}, say("The layer does not give its coordinate system."),
                      say("Give it, as in EPSG:25832; for GNSS degrees, EPSG:4326."));
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
    const bool sound = judge_whereabouts(adoption, known);
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
