// SPDX-License-Identifier: MIT
#include "pipward/place/row_laying.h"

#include <algorithm>
#include <set>

#include "pipward/record/name_index.h"
#include "pipward/value/complaint.h"

namespace pipward::place {
namespace {

Finding about_row(const std::string& name, Sentence message, Sentence remedy) {
    return {Level::error, "tree_row", name, "name", name, std::move(message), std::move(remedy)};
}

void check_clashes(const LayingWish& wish, const std::vector<RowCourse>& courses, const Orchard& orchard,
                   Findings& findings) {
    std::set<std::string> taken;
    for (const auto& row : orchard.rows) {
        if (row.block == wish.block) {
            taken.insert(row.name);
        }
    }
    std::set<std::string> seen;
    for (const auto& course : courses) {
        if (taken.contains(course.name)) {
            findings.push_back(
                about_row(course.name, say("Block {} has a row of this name already.", wish.block),
                          say("Give another name; rows that are there are never overwritten.")));
        } else if (!seen.insert(course.name).second) {
            findings.push_back(about_row(course.name, say("Two of the rows have this name."),
                                         say("Give each row a name of its own within its block.")));
        }
    }
}

void check_block(const LayingWish& wish, const Orchard& orchard, Findings& findings) {
    if (wish.add_block || first_named(orchard.blocks, &Block::name, wish.block) != nullptr) {
        return;
    }
    std::string names;
    for (const auto& block : orchard.blocks) {
        names += (names.empty() ? "" : ", ") + block.name;
    }
    findings.push_back(
        about_parameter("block", wish.block, say("The book has no block of this name."),
                        names.empty() ? say("Correct it, or let add-block make it.")
                                      : say("Correct it (there is: {}), or let add-block make it.", names)));
}

}  // namespace

std::vector<LaidRow> lay_rows(const LayingWish& wish, const GroundLayer& layer, const Orchard& orchard,
                              Findings& findings) {
    const auto courses = courses_of(wish, layer, orchard);
    check_block(wish, orchard, findings);
    check_clashes(wish, courses, orchard, findings);
    std::vector<LaidRow> laid;
    for (const auto& course : courses) {
        if (auto row =
                lay_row(course, {wish.spacing, wish.first_position, wish.headland, wish.count}, findings)) {
            laid.push_back(std::move(*row));
        }
    }
    return laid;
}

TreeRow record_of(const LaidRow& laid, const LayingWish& wish, const ToEarth& to_earth) {
    TreeRow row;
    row.block = wish.block;
    row.name = laid.name;
    row.spacing = wish.spacing;
    row.first_position = laid.first_position;
    for (const auto& corner : laid.course) {
        if (const auto point = to_map(corner, to_earth)) {
            row.line.push_back(*point);
        }
    }
    return row;
}

MapBox box_around(std::span<const TreeRow> rows, const LayingWish& wish, const ToEarth& to_earth) {
    const double metres = std::max(wish.row_distance.value_or(wish.spacing).value / 2, 1.0);
    auto low = rows.front().line.front();
    auto high = low;
    for (const auto& row : rows) {
        for (const auto& corner : row.line) {
            for (const double bearing : {225.0, 45.0}) {
                const auto out =
                    to_map({way_from(*to_earth(corner), bearing, Metres{metres * 1.5}), {}}, to_earth);
                low = {std::min(low.x, out->x), std::min(low.y, out->y), {}};
                high = {std::max(high.x, out->x), std::max(high.y, out->y), {}};
            }
        }
    }
    return {low, high};
}

}  // namespace pipward::place
