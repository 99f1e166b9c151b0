// SPDX-License-Identifier: MIT
#include "pipward/place/row_position.h"

#include <fmt/format.h>

#include <map>
#include <set>

#include "pipward/place/address.h"
#include "pipward/place/row_layout.h"
#include "pipward/record/presence.h"

namespace pipward::place {
namespace {

struct SpotInRow {
    std::string block;
    std::string row;
    int position = 0;

    auto operator<=>(const SpotInRow&) const = default;
};
using Standing = std::map<SpotInRow, const Tree*>;

// Where one tree stands and another is to follow it, the one that stands counts.
Standing standing_trees(const Orchard& orchard, Day as_of) {
    Standing standing;
    for (const auto& tree : orchard.trees) {
        if (!tree.block || !tree.row || !tree.position || removed_by(tree, as_of)) {
            continue;
        }
        auto& place = standing[{*tree.block, *tree.row, *tree.position}];
        if (place == nullptr || (!planted_by(*place, as_of) && planted_by(tree, as_of))) {
            place = &tree;
        }
    }
    return standing;
}

Finding about(const Tree& tree, Sentence message, Sentence remedy) {
    return {Level::warning,
            "tree",
            tree.label,
            "position",
            tree.position ? std::to_string(*tree.position) : "",
            std::move(message),
            std::move(remedy)};
}

struct LookedAt {
    Day as_of;
    const ToEarth& to_earth;
};

void occupy(RowPosition& position, const Tree& tree, const TreeRow& row, const LookedAt& from,
            Findings& findings) {
    position.state = planted_by(tree, from.as_of) ? PositionState::taken : PositionState::reserved;
    position.tree = tree.label;
    const auto here = from.to_earth(position.at);
    const auto there = tree.at ? from.to_earth(*tree.at) : std::nullopt;
    if (!here || !there) {
        return;
    }
    position.off = way_between(*here, *there).distance;
    if (position.off->value > row.spacing->value / 2) {
        findings.push_back(
            about(tree,
                  say("On the map it stands {:.1f} m from its position in block {}, row {}.",
                      position.off->value, row.block, row.name),
                  say("Check the number of its position, its location on the map, and the row's line.")));
    }
}

void tell_trees_without_position(const Orchard& orchard,
                                 const std::set<std::pair<std::string, std::string>>& laid,
                                 const Standing& standing, const std::set<SpotInRow>& seen,
                                 Findings& findings) {
    for (const auto& tree : orchard.trees) {
        if (!tree.block || !tree.row || !tree.position || !laid.contains({*tree.block, *tree.row})) {
            continue;
        }
        const SpotInRow spot{*tree.block, *tree.row, *tree.position};
        if (const auto found = standing.find(spot);
            found != standing.end() && found->second == &tree && !seen.contains(spot)) {
            findings.push_back(about(
                tree, say("Row {} of block {} has no such position.", *tree.row, *tree.block),
                say("Correct the number, the row's first position or its spacing, or draw the row longer.")));
        }
    }
}

}  // namespace

std::string_view to_text(PositionState state) {
    switch (state) {
        case PositionState::taken:
            return "taken";
        case PositionState::reserved:
            return "reserved";
        case PositionState::vacant:
            break;
    }
    return "vacant";
}

std::vector<RowPosition> row_positions(const Orchard& orchard, Day as_of, Findings& findings) {
    const ToEarth to_earth(orchard.crs);
    const auto standing = standing_trees(orchard, as_of);
    std::vector<RowPosition> positions;
    std::set<std::pair<std::string, std::string>> laid;
    std::set<SpotInRow> seen;
    for (const auto& row : orchard.rows) {
        int number = row.first_position;
        for (const auto& place : positions_on(row, to_earth)) {
            const auto at = to_map(place, to_earth);
            RowPosition position{row.block, row.name, number++, PositionState::vacant, {}, {}, {}};
            if (!at) {
                continue;
            }
            position.at = *at;
            const SpotInRow spot{row.block, row.name, position.position};
            if (const auto tree = standing.find(spot); tree != standing.end()) {
                occupy(position, *tree->second, row, {as_of, to_earth}, findings);
            }
            laid.insert({row.block, row.name});
            seen.insert(spot);
            positions.push_back(std::move(position));
        }
    }
    tell_trees_without_position(orchard, laid, standing, seen, findings);
    return positions;
}

Sentence address_of_position(const RowPosition& position, std::span<const TreeRow> rows) {
    Tree there;
    there.block = position.block;
    there.row = position.row;
    there.position = position.position;
    return address_of(there, rows);
}

}  // namespace pipward::place
