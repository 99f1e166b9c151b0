// SPDX-License-Identifier: MIT
#include "pipward/paper/field_contents.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <set>

#include "pipward/place/address.h"
#include "pipward/place/earth.h"
#include "pipward/place/tree_line.h"
#include "pipward/place/walk_stops.h"
#include "pipward/record/presence.h"
#include "pipward/value/sentence.h"

namespace pipward::paper {
namespace {

MapPoint middle_of_trees(const Orchard& orchard, std::span<const std::uint32_t> trees) {
    std::vector<MapPoint> points;
    for (const auto i : trees) {
        points.push_back(*orchard.trees[i].at);
    }
    return place::middle_of(points);
}

MapTree map_tree(const Tree& tree, const place::MetrePlane& plane, Day as_of) {
    return {plane(*tree.at), tree.position ? std::to_string(*tree.position) : tree.label, tree.purpose,
            !stands_on(tree, as_of), tree.block.value_or("")};
}

std::set<place::RowName> rows_of(const Orchard& orchard, std::span<const std::uint32_t> trees) {
    std::set<place::RowName> names;
    for (const auto i : trees) {
        if (const auto name = place::row_name(orchard.trees[i])) {
            names.insert(*name);
        }
    }
    return names;
}

std::vector<math::PlanePoint> drawn_line(const TreeRow& row, const place::MetrePlane& plane) {
    std::vector<math::PlanePoint> line;
    for (const auto& point : row.line) {
        line.push_back(plane(point));
    }
    return line;
}

std::vector<MapRow> map_rows(const Orchard& orchard, std::set<place::RowName> names,
                             const place::MetrePlane& plane) {
    std::vector<MapRow> rows;
    for (const auto& row : orchard.rows) {
        if (row.line.size() > 1 && names.erase({row.block, row.name}) > 0) {
            rows.push_back({row.name, drawn_line(row, plane), row.block});
        }
    }
    for (const auto& line : place::tree_lines(orchard, plane, &names)) {
        if (line.at.size() > 1) {
            rows.push_back({line.name.second, line.at, line.name.first});
        }
    }
    return rows;
}

std::string description_of(const Tree& tree, const Orchard& orchard) {
    const std::string address = place::address_of(tree, orchard.rows);
    const auto accession = tree.accession.value_or("");
    return address.empty() || accession.empty() ? address + accession : address + "; " + accession;
}

std::optional<Metres> elevation_of(const Tree& tree) {
    return tree.elevation ? tree.elevation : tree.at->height;
}

}  // namespace

FieldMap map_of(const Orchard& orchard, std::span<const std::uint32_t> trees, Day as_of) {
    const place::MetrePlane plane(orchard.crs, middle_of_trees(orchard, trees));
    FieldMap map;
    map.true_north = plane.on_earth();
    for (const auto i : trees) {
        map.trees.push_back(map_tree(orchard.trees[i], plane, as_of));
    }
    map.rows = map_rows(orchard, rows_of(orchard, trees), plane);
    return map;
}

std::vector<Waypoint> waypoints_of(const Orchard& orchard, std::span<const std::uint32_t> trees, Day as_of,
                                   Findings& findings) {
    const place::ToEarth to_earth(orchard.crs);
    std::vector<Waypoint> points;
    int without = 0;
    for (const auto i : trees) {
        const auto& tree = orchard.trees[i];
        const auto place = to_earth(*tree.at);
        const bool stands = stands_on(tree, as_of);
        without += !place && stands ? 1 : 0;
        if (place && stands) {
            points.push_back({tree.label, description_of(tree, orchard), place->lat, place->lon,
                              elevation_of(tree), tree.purpose, tree.block.value_or("")});
        }
    }
    if (without > 0) {
        findings.push_back(
            {Level::warning, "tree", "", "", "",
             say("{} trees have no geographic position: they are missing in the GNSS files.", without),
             say("Give the layer its coordinate system.")});
    }
    return points;
}

std::vector<Waypoint> route_of(const Orchard& orchard, std::span<const std::uint32_t> trees, Day as_of,
                               const std::function<void(double)>& tell, Findings& findings) {
    place::WalkWish wish;
    std::ranges::copy_if(trees, std::back_inserter(wish.trees),
                         [&](std::uint32_t i) { return stands_on(orchard.trees[i], as_of); });
    place::expect_walkable(wish.trees.size());
    std::vector<std::uint32_t> order;
    for (const auto& leg : place::plan_walk(orchard, wish, tell).legs) {
        if (leg.tree) {
            order.push_back(*leg.tree);
        }
    }
    return waypoints_of(orchard, order, as_of, findings);
}

}  // namespace pipward::paper
