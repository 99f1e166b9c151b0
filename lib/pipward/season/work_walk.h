// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>
#include <vector>

#include "pipward/place/sheet_walk.h"
#include "pipward/season/field_work.h"

/// Work as one comes to it.
namespace pipward::season {

struct WorkStop {
    int order = 0;  ///< from 1
    FieldWorkItem item;
    place::SheetWalk::Stop stop{};  ///< no tree: on the bench, or at a tree that the walk does not come to
    Sentence address{};             ///< of the tree; empty on the bench
};

/// What can be begun by a day, and what has no first day.
std::vector<FieldWorkItem> work_until(std::vector<FieldWorkItem> items, Day last);

/// Labels of the trees of the work; an empty one stands for work on the bench.
std::set<std::string> trees_of(const std::vector<FieldWorkItem>& items);

/// Tree by tree in the order of the walk, then the rest in the order given. Points into the walk's orchard.
std::vector<WorkStop> in_walking_order(const std::vector<FieldWorkItem>& items, const place::SheetWalk& walk,
                                       const Orchard& orchard);

}  // namespace pipward::season
