// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/plan.h"

namespace pipward::operation {

/// A task at a tree, as season-plan left it in the book.
struct KeptTask {
    std::string tree;  ///< its label
    Sentence work;     ///< "pollinate 26-01": what and for which cross, or whose pollen
    std::optional<cross::Urgency> urgency;
    std::optional<Day> from;
    std::optional<Day> to;
};

/// The tasks of the plan that the book holds, those at the flowers before those for pollen; tasks without a
/// tree are left out. Nothing where the book holds no plan.
std::optional<std::vector<KeptTask>> kept_tasks(const std::string& location);

}  // namespace pipward::operation
