// SPDX-License-Identifier: MIT
#include "pipward/season/work_walk.h"

#include "pipward/place/address.h"

namespace pipward::season {

std::vector<FieldWorkItem> work_until(std::vector<FieldWorkItem> items, Day last) {
    std::erase_if(items, [&](const FieldWorkItem& item) { return item.from && *item.from > last; });
    return items;
}

std::set<std::string> trees_of(const std::vector<FieldWorkItem>& items) {
    std::set<std::string> trees;
    for (const auto& item : items) {
        trees.insert(item.tree);
    }
    return trees;
}

std::vector<WorkStop> in_walking_order(const std::vector<FieldWorkItem>& items, const place::SheetWalk& walk,
                                       const Orchard& orchard) {
    std::vector<WorkStop> works;
    const auto add = [&](const FieldWorkItem& item, const place::SheetWalk::Stop& stop) {
        works.push_back({static_cast<int>(works.size()) + 1, item, stop,
                         stop.tree == nullptr ? Sentence{} : place::address_of(*stop.tree, orchard.rows)});
    };
    std::set<std::string> visited;
    for (const auto& stop : walk.stops) {
        visited.insert(stop.tree->label);
        for (const auto& item : items) {
            if (item.tree == stop.tree->label) {
                add(item, stop);
            }
        }
    }
    for (const auto& item : items) {
        if (item.tree.empty() || !visited.contains(item.tree)) {
            add(item, {});
        }
    }
    return works;
}

}  // namespace pipward::season
