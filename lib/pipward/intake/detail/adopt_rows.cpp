// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/adopt_rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "pipward/place/metre_plane.h"

namespace pipward::intake::detail {
namespace {

constexpr double margin = 3;  // metres around the outermost trees

using RowName = std::pair<std::string, std::string>;  // block and row

struct Stand {
    std::int64_t position = 0;
    MapPoint at;
};

std::set<RowName> rows_of(const Orchard& orchard) {
    std::set<RowName> rows;
    for (const auto& row : orchard.rows) {
        rows.insert({row.block, row.name});
    }
    return rows;
}

std::map<RowName, std::vector<AdoptRow*>> missing_rows(Adoption& adoption, const std::set<RowName>& known) {
    std::map<RowName, std::vector<AdoptRow*>> missing;
    for (auto& row : adoption.rows) {
        const RowName name{row.text("block"), row.text("row")};
        if (row.fate != Fate::left_out && !name.first.empty() && !name.second.empty() &&
            !known.contains(name)) {
            missing[name].push_back(&row);
        }
    }
    return missing;
}

std::vector<Stand> stands_of(const std::vector<AdoptRow*>& trees) {
    std::vector<Stand> stands;
    for (const auto* tree : trees) {
        const auto position = tree->cells.find("position");
        if (position != tree->cells.end() && tree->points.size() == 1) {
            stands.push_back({std::get<std::int64_t>(position->second), tree->points.front()});
        }
    }
    std::ranges::stable_sort(stands, {}, &Stand::position);
    return stands;
}

// From the first tree to the last: rows are straight, and the places of single trees are not exact.
MadeRow made_row(const RowName& name, const std::vector<AdoptRow*>& trees) {
    MadeRow made{"tree_row", {{"block", name.first}, {"name", name.second}}};
    const auto stands = stands_of(trees);
    made.cells["first_position"] = stands.empty() ? std::int64_t{1} : stands.front().position;
    if (stands.size() > 1) {
        const auto& first = stands.front().at;
        const auto& last = stands.back().at;
        if (first.x != last.x || first.y != last.y) {
            made.points = {{first.x, first.y, {}}, {last.x, last.y, {}}};
        }
    }
    return made;
}

void refuse_row(Adoption& adoption, const RowName& name, const std::vector<AdoptRow*>& trees) {
    const auto message =
        say("Block {} has no row of this name; trees that name it: {}.", name.first, trees.size());
    for (auto* tree : trees) {
        tree->why = tree->fate == Fate::refused ? tree->why : message;
        tree->fate = Fate::refused;
    }
    const auto* goal = adoption.mapping.to("tree.row");
    adoption.tell(Level::error, goal == nullptr ? "row" : goal->field, name.second, message,
                  say("Import or lay the rows first, or let add-rows draw it through its trees."));
}

}  // namespace

MadeRow made_block(const std::string& name, const std::vector<AdoptRow*>& rows, const std::string& crs) {
    std::vector<MapPoint> points;
    for (const auto* row : rows) {
        points.insert(points.end(), row->points.begin(), row->points.end());
    }
    MadeRow made{"block", {{"name", name}}};
    if (points.empty()) {
        return made;
    }
    const place::MetrePlane plane(crs, place::middle_of(points));
    std::vector<math::PlanePoint> places;
    for (const auto& point : points) {
        places.push_back(plane(point));
    }
    const auto [low, high] = math::box_around(places);
    for (const auto& corner : {math::PlanePoint{low.east - margin, low.north - margin},
                               math::PlanePoint{high.east + margin, low.north - margin},
                               math::PlanePoint{high.east + margin, high.north + margin},
                               math::PlanePoint{low.east - margin, high.north + margin},
                               math::PlanePoint{low.east - margin, low.north - margin}}) {
        made.points.push_back(plane.back(corner));
    }
    return made;
}

void judge_tree_rows(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard) {
    for (const auto& [name, trees] : missing_rows(adoption, rows_of(orchard))) {
        if (options.add_rows) {
            adoption.made.push_back(made_row(name, trees));
        } else {
            refuse_row(adoption, name, trees);
        }
    }
}

}  // namespace pipward::intake::detail
