// SPDX-License-Identifier: MIT
#include "pipward/intake/layer_columns.h"

#include <algorithm>

#include "pipward/book/heading.h"

namespace pipward::intake {
namespace {

LayerColumn bound_column(std::string_view table, const book::BookColumn& column) {
    LayerColumn bound{std::string(table) + "." + std::string(column.name), table, column.name, column.label,
                      &column};
    for (const auto& known : column.known_as) {
        bound.words.emplace_back(known.folded);
    }
    return bound;
}

std::vector<LayerColumn> make_columns() {
    std::vector<LayerColumn> columns;
    for (const auto table : imported_tables()) {
        for (const auto& column : book::find_book_table(table)->columns) {
            columns.push_back(bound_column(table, column));
        }
    }
    columns.push_back({"place.x",
                       place_table,
                       "x",
                       "Location: easting or longitude",
                       nullptr,
                       {"x", "lon", "long", "longitude", "lng", "easting", "east", "e", "xcoord", "coordx",
                        "pointx", "gpslon", "gpslongitude", "rechtswert", "ostwert", "laengengrad",
                        "langengrad", "laenge", "lange"}});
    columns.push_back({"place.y",
                       place_table,
                       "y",
                       "Location: northing or latitude",
                       nullptr,
                       {"y", "lat", "latitude", "northing", "north", "n", "ycoord", "coordy", "pointy",
                        "gpslat", "gpslatitude", "hochwert", "nordwert", "breitengrad", "breite"}});
    columns.push_back({"place.at",
                       place_table,
                       "at",
                       "Location: latitude and longitude",
                       nullptr,
                       {"coordinates", "coordinate", "latlon", "latlong", "latlng", "coords", "gps",
                        "gpsposition", "gpscoordinates", "geo", "geouri", "geolink", "location",
                        "koordinaten", "gpskoordinaten", "standort", "coordonnees"}});
    return columns;
}

}  // namespace

std::span<const std::string_view> imported_tables() {
    static const auto tables = [] {
        std::vector<std::string_view> names;
        for (const auto& table : book::book_tables()) {
            if (table.takes_layers) {
                names.insert(names.begin(), table.name);
            }
        }
        return names;
    }();
    return tables;
}

std::span<const LayerColumn> layer_columns() {
    static const auto columns = make_columns();
    return columns;
}

const LayerColumn* find_layer_column(std::string_view code) {
    const auto found = std::ranges::find(layer_columns(), code, &LayerColumn::code);
    return found == layer_columns().end() ? nullptr : &*found;
}

bool heads_a_layer(std::string_view heading) {
    const auto wanted = book::field_word(heading);
    return !wanted.empty() && std::ranges::any_of(layer_columns(), [&](const LayerColumn& column) {
        return book::field_word(column.name) == wanted ||
               std::ranges::find(column.words, wanted) != column.words.end();
    });
}

}  // namespace pipward::intake
