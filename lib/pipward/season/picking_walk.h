// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "pipward/place/sheet_walk.h"
#include "pipward/seed/harvest.h"

/// The tagged branches with fruit, as one comes to them.
namespace pipward::season {

/// The days that a sheet is for, both included.
struct SheetDays {
    Day from;
    Day last;
};

struct Harvest {
    std::optional<int> order{};  ///< in the walk, from 1; nothing for fruit that is not to be harvested yet
    seed::TagToHarvest tag;
    const Tree* tree = nullptr;  ///< null where the orchard has no tree of that label
    Sentence address{};
    Sentence state{};                ///< "pick now", "let hang until 2025-10-20"
    bool now = false;                ///< may be harvested by the last of the days
    std::optional<double> walked{};  ///< metres
};

std::vector<Harvest> pickings_of(const std::vector<seed::TagToHarvest>& tags, const SheetDays& days);

/// Labels of the trees at which something may be harvested.
std::set<std::string> trees_to_pick(const std::vector<Harvest>& harvests);

/// In the order of the walk to these trees; then what must hang on, in the order given. Points into the
/// orchard.
void put_in_walking_order(std::vector<Harvest>& harvests, const place::SheetWalk& walk,
                          const Orchard& orchard);

}  // namespace pipward::season
