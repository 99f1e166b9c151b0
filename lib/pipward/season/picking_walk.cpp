// SPDX-License-Identifier: MIT
#include "pipward/season/picking_walk.h"

#include <algorithm>

#include "pipward/place/address.h"
#include "pipward/record/orchard_index.h"

namespace pipward::season {
namespace {

Sentence state_of(const seed::TagToHarvest& tag, const SheetDays& days) {
    if (tag.days.to < days.from) {
        return say("late: harvest what is left at once");
    }
    if (tag.days.from <= days.from) {
        return say("harvest now");
    }
    return tag.days.from <= days.last ? say("harvest from {} on", to_iso(tag.days.from))
                                      : say("harvest not before {}", to_iso(tag.days.from));
}

}  // namespace

std::vector<Harvest> pickings_of(const std::vector<seed::TagToHarvest>& tags, const SheetDays& days) {
    std::vector<Harvest> harvests;
    for (const auto& tag : tags) {
        auto& harvest = harvests.emplace_back();
        harvest.tag = tag;
        harvest.state = state_of(tag, days);
        harvest.now = tag.days.from <= days.last;
    }
    return harvests;
}

std::set<std::string> trees_to_pick(const std::vector<Harvest>& harvests) {
    std::set<std::string> trees;
    for (const auto& harvest : harvests) {
        if (harvest.now) {
            trees.insert(harvest.tag.work->tree);
        }
    }
    return trees;
}

void put_in_walking_order(std::vector<Harvest>& harvests, const place::SheetWalk& walk,
                          const Orchard& orchard) {
    const OrchardIndex book(orchard);
    for (auto& harvest : harvests) {
        harvest.tree = book.tree(harvest.tag.work->tree);
        if (harvest.tree != nullptr) {
            harvest.address = place::address_of(*harvest.tree, orchard.rows);
        }
        const auto stop = std::ranges::find(walk.stops, harvest.tree, &place::SheetWalk::Stop::tree);
        if (harvest.now && stop != walk.stops.end()) {
            harvest.order = static_cast<int>(stop - walk.stops.begin()) + 1;
            harvest.walked = stop->walked;
        }
    }
    std::ranges::stable_sort(harvests, [](const Harvest& a, const Harvest& b) {
        return std::pair{!a.order, a.order} < std::pair{!b.order, b.order};
    });
}

}  // namespace pipward::season
