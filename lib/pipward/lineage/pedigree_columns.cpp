// SPDX-License-Identifier: MIT
#include "pipward/lineage/detail/pedigree_columns.h"

#include <algorithm>
#include <map>

namespace pipward::lineage::detail {
namespace {

void join(PedigreeColumns& columns, int younger, int older) {
    columns.items[younger].older.push_back(older);
    columns.items[older].younger.push_back(younger);
}

void add_link(PedigreeColumns& columns, const PedigreeView& view, const BoxLink& link,
              const PedigreeSpace& space) {
    auto& lanes = columns.lanes.emplace_back();
    int last = link.child;
    for (int column = view.columns[link.child] + 1; column < view.columns[link.parent]; ++column) {
        const auto lane = static_cast<int>(columns.items.size());
        columns.items.push_back({.column = column, .height = space.lane, .is_lane = true});
        columns.columns[column].push_back(lane);
        lanes.push_back(lane);
        join(columns, last, lane);
        last = lane;
    }
    join(columns, last, link.parent);
}

// The first item of a link right of the child, which is a lane where the parent stands farther away.
int first_item(const PedigreeColumns& columns, const PedigreeView& view, std::size_t link) {
    return columns.lanes[link].empty() ? view.links[link].parent : columns.lanes[link].front();
}

void add_orders(const PedigreeView& view, PedigreeColumns& columns) {
    struct ParentLinks {
        int seed = -1;
        int pollen = -1;
    };
    std::map<int, ParentLinks> of_child;
    for (std::size_t i = 0; i < view.links.size(); ++i) {
        auto& [seed, pollen] = of_child[view.links[i].child];
        seed = view.links[i].role == PedigreeRole::seed ? static_cast<int>(i) : seed;
        pollen = view.links[i].role == PedigreeRole::pollen ? static_cast<int>(i) : pollen;
    }
    for (const auto& [child, links] : of_child) {
        const auto [seed, pollen] = links;
        if (seed < 0 || pollen < 0 || view.links[seed].parent == view.links[pollen].parent) {
            continue;
        }
        const int above = view.links[seed].parent;
        const int below = view.links[pollen].parent;
        if (view.columns[above] == view.columns[below]) {
            columns.items[above].below.push_back(below);
        } else {
            const int lane_above = first_item(columns, view, static_cast<std::size_t>(seed));
            columns.items[lane_above].below.push_back(
                first_item(columns, view, static_cast<std::size_t>(pollen)));
        }
    }
}

}  // namespace

PedigreeColumns pedigree_columns(const PedigreeView& view, const std::vector<double>& heights,
                                 const PedigreeSpace& space) {
    PedigreeColumns columns;
    columns.columns.resize(static_cast<std::size_t>(view.column_count));
    for (std::size_t i = 0; i < view.boxes.size(); ++i) {
        columns.items.push_back({.column = view.columns[i], .height = heights[i]});
        columns.columns[view.columns[i]].push_back(static_cast<int>(i));
    }
    for (const auto& link : view.links) {
        add_link(columns, view, link, space);
    }
    add_orders(view, columns);
    return columns;
}

double gap_between(const ColumnItem& above, const ColumnItem& below, const PedigreeSpace& space) {
    return above.is_lane && below.is_lane ? 0.0 : space.between_boxes;
}

double column_height(const PedigreeColumns& columns, const std::vector<int>& column,
                     const PedigreeSpace& space) {
    double height = 0;
    for (std::size_t i = 0; i < column.size(); ++i) {
        const auto& item = columns.items[column[i]];
        height += item.height + (i > 0 ? gap_between(columns.items[column[i - 1]], item, space) : 0);
    }
    return height;
}

}  // namespace pipward::lineage::detail
