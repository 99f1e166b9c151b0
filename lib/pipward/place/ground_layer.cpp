// SPDX-License-Identifier: MIT
#include "pipward/place/ground_layer.h"

#include <algorithm>
#include <cctype>

#include "pipward/place/row_layout.h"
#include "pipward/place/whereabouts_check.h"

namespace pipward::place {
namespace {

std::string lower(std::string_view text) {
    std::string result(text);
    std::ranges::transform(result, result.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return result;
}

}  // namespace

std::string column_like(const GroundLayer& layer, std::initializer_list<std::string_view> names) {
    for (const auto name : names) {
        for (const auto& column : layer.columns) {
            if (lower(column) == name) {
                return column;
            }
        }
    }
    return {};
}

std::vector<LonLat> known_places(const Orchard& orchard) {
    const ToEarth to_earth(orchard.crs);
    std::vector<LonLat> known;
    for (const auto& point : to_ground(places_in(orchard), to_earth)) {
        known.push_back(point.at);
    }
    return known;
}

Hemisphere hemisphere_of(const Orchard& orchard) {
    const ToEarth to_earth(orchard.crs);
    for (const auto& tree : orchard.trees) {
        if (const auto place = tree.at ? to_earth(*tree.at) : std::nullopt) {
            return value::hemisphere_of(Latitude{place->lat});
        }
    }
    return Hemisphere::north;
}

}  // namespace pipward::place
