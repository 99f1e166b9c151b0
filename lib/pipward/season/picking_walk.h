// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "pipward/place/sheet_walk.h"
#include "pipward/seed/picking.h"

/// The tagged branches with fruit, as one comes to them.
namespace pipward::season {

/// The days that a sheet is for, both included.
struct SheetDays {
    Day from;
    Day last;
};

struct Picking {
    std::optional<int> order{};  ///< in the walk, from 1; nothing for fruit that is not to be picked yet
    seed::TagToPick tag;
    const Tree* tree = nullptr;  ///< null where the orchard has no tree of that label
    Sentence address{};
    Sentence state{};                ///< "pick now", "let hang until 2025-10-20"
    bool now = false;                ///< may be picked by the last of the days
    std::optional<double> walked{};  ///< metres
};

std::vector<Picking> pickings_of(const std::vector<seed::TagToPick>& tags, const SheetDays& days);

/// Labels of the trees at which something may be picked.
std::set<std::string> trees_to_pick(const std::vector<Picking>& pickings);

/// In the order of the walk to these trees; then what must hang on, in the order given. Points into the
/// orchard.
void put_in_walking_order(std::vector<Picking>& pickings, const place::SheetWalk& walk,
                          const Orchard& orchard);

}  // namespace pipward::season
