// SPDX-License-Identifier: MIT
#include "pipward/place/named_place.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

#include "pipward/place/own_position.h"
#include "pipward/place/tree_index.h"
#include "pipward/record/name_index.h"
#include "pipward/value/complaint.h"

namespace pipward::place {
namespace {

// To the tree that is nearest on the map, or any tree where the place cannot be on that map; endless where no
// tree has a place on the earth.
double metres_to_trees(const LonLat& place, const Orchard& orchard, const ToEarth& to_earth) {
    const auto stand = own_position(place, orchard.crs);
    const MapPoint* nearest = nullptr;
    double shortest = std::numeric_limits<double>::infinity();
    for (const auto& tree : orchard.trees) {
        const double plain = tree.at && stand ? stand->plain_distance(*tree.at) : 0.0;
        if (tree.at && plain < shortest) {
            shortest = plain;
            nearest = &*tree.at;
        }
    }
    const auto there = nearest == nullptr ? std::nullopt : to_earth(*nearest);
    return there ? way_between(place, *there).distance.value : std::numeric_limits<double>::infinity();
}

std::string distance_words(double metres) {
    return metres < 10000 ? fmt::format("{:.1f} km", metres / 1000) : fmt::format("{:.0f} km", metres / 1000);
}

// As people write it: "48.1337,9.3001".
std::string lat_lon_text(const LonLat& place) {
    return fmt::format("{:.6g},{:.6g}", place.lat, place.lon);
}

Finding far_from_trees(const LonLat& place, double metres, const Orchard& orchard, const ToEarth& to_earth,
                       const NamedPlace& named) {
    const LonLat swapped{place.lat, place.lon};
    const bool can_swap = std::abs(swapped.lat) <= 90;
    const bool swap_fits = can_swap && metres_to_trees(swapped, orchard, to_earth) <= too_far.value;
    auto message = say("This position is {} from the nearest tree.", distance_words(metres));
    if (swap_fits) {
        return about_parameter(named.key, named.text,
                               say("{} Latitude and longitude seem to stand the wrong way round.", message),
                               say("Write the latitude first: {}.", lat_lon_text(swapped)));
    }
    return about_parameter(named.key, named.text, std::move(message),
                           say("Give a position in the orchard or at its gate."));
}

}  // namespace

std::optional<MapPoint> place_on_map(const LonLat& place, const Orchard& orchard, const NamedPlace& named,
                                     Findings& findings) {
    const ToEarth to_earth(orchard.crs);
    const double metres = metres_to_trees(place, orchard, to_earth);
    if (std::isfinite(metres) && metres > too_far.value) {
        findings.push_back(far_from_trees(place, metres, orchard, to_earth, named));
        return std::nullopt;
    }
    const auto at = to_earth.back(place);
    if (!at) {
        findings.push_back(about_parameter(named.key, named.text,
                                           say("The trees have no coordinate system of the earth."),
                                           say("Give the layer its coordinate system.")));
    }
    return at;
}

std::optional<MapPoint> parse_grid(std::string_view text) {
    const auto comma = text.find(',');
    if (comma == std::string_view::npos) {
        return std::nullopt;
    }
    const auto x = parse_coordinate(text.substr(0, comma));
    const auto y = parse_coordinate(text.substr(comma + 1));
    return x && y ? std::optional{MapPoint{*x, *y, {}}} : std::nullopt;
}

std::optional<MapPoint> grid_on_map(const Orchard& orchard, const NamedPlace& named, Findings& findings) {
    const auto at = parse_grid(named.text);
    const ToEarth to_earth(orchard.crs);
    const auto place = at ? to_earth(*at) : std::nullopt;
    if (at && place) {
        const double metres = metres_to_trees(*place, orchard, to_earth);
        if (std::isfinite(metres) && metres > too_far.value) {
            findings.push_back(about_parameter(
                named.key, named.text,
                say("This position is {} from the nearest tree.", distance_words(metres)),
                say("Give x and y in the book's own system, {}: first to the east, then to the north.",
                    orchard.crs)));
            return std::nullopt;
        }
    }
    return at;
}

Sentence labels_like(const Orchard& orchard, const std::string& name) {
    std::set<std::string_view> labels;
    for (const auto& tree : orchard.trees) {
        labels.insert(tree.label);
    }
    if (labels.empty()) {
        return say("The book has no trees yet.");
    }
    auto names = TreeIndex(orchard).names_like(name, 20);
    std::erase_if(names, [&](const std::string& like) { return !labels.contains(like); });
    names.resize(std::min<std::size_t>(names.size(), 3));
    return names.empty() ? say("Search for it with tree-find.")
                         : say("The nearest labels are: {}.", fmt::format("{}", fmt::join(names, ", ")));
}

std::optional<std::uint32_t> tree_labelled(const Orchard& orchard, const std::string& label) {
    if (const auto* exact = first_named(orchard.trees, &Tree::label, label)) {
        return static_cast<std::uint32_t>(exact - orchard.trees.data());
    }
    const auto found = TreeIndex(orchard).find(label, 2);
    const auto fits = [&](std::size_t i) {
        return found.size() > i && found[i].match.kind == MatchKind::label &&
               found[i].match.extent == Extent::whole;
    };
    return fits(0) && !fits(1) ? std::optional{static_cast<std::uint32_t>(found[0].tree)} : std::nullopt;
}

}  // namespace pipward::place
