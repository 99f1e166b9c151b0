// SPDX-License-Identifier: MIT
#include "pipward/season/picking_walk.h"

#include <algorithm>

#include "pipward/place/address.h"
#include "pipward/record/orchard_index.h"

namespace pipward::season {
namespace {

Sentence state_of(const seed::TagToPick& tag, const SheetDays& days) {
    if (tag.days.to < days.from) {
        return say("late: pick at once what still hangs");
    }
    if (tag.days.from <= days.from) {
        return say("pick now");
    }
    return tag.days.from <= days.last ? say("pick from {} on", to_iso(tag.days.from))
                                      : say("let hang until {}", to_iso(tag.days.from));
}

}  // namespace

std::vector<Picking> pickings_of(const std::vector<seed::TagToPick>& tags, const SheetDays& days) {
    std::vector<Picking> pickings;
    for (const auto& tag : tags) {
        auto& picking = pickings.emplace_back();
        picking.tag = tag;
        picking.state = state_of(tag, days);
        picking.now = tag.days.from <= days.last;
    }
    return pickings;
}

std::set<std::string> trees_to_pick(const std::vector<Picking>& pickings) {
    std::set<std::string> trees;
    for (const auto& picking : pickings) {
        if (picking.now) {
            trees.insert(picking.tag.work->tree);
        }
    }
    return trees;
}

void put_in_walking_order(std::vector<Picking>& pickings, const place::SheetWalk& walk,
                          const Orchard& orchard) {
    const OrchardIndex book(orchard);
    for (auto& picking : pickings) {
        picking.tree = book.tree(picking.tag.work->tree);
        if (picking.tree != nullptr) {
            picking.address = place::address_of(*picking.tree, orchard.rows);
        }
        const auto stop = std::ranges::find(walk.stops, picking.tree, &place::SheetWalk::Stop::tree);
        if (picking.now && stop != walk.stops.end()) {
            picking.order = static_cast<int>(stop - walk.stops.begin()) + 1;
            picking.walked = stop->walked;
        }
    }
    std::ranges::stable_sort(pickings, [](const Picking& a, const Picking& b) {
        return std::pair{!a.order, a.order} < std::pair{!b.order, b.order};
    });
}

}  // namespace pipward::season
