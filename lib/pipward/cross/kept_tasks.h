// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/plan.h"
#include "pipward/record/table.h"

/// The tasks of a plan as it was kept in a book, read back from its result tables.
namespace pipward::cross {

/// A task at a tree.
struct KeptTask {
    std::string tree;  ///< its label
    Sentence work;     ///< "pollinate 26-01": what and for which cross, or whose pollen
    std::optional<Urgency> urgency;
    std::optional<Day> from;
    std::optional<Day> to;
};

/// Of a table of tasks ("field_task", "pollen_task"), in its order; tasks without a tree are left out, and
/// what its columns do not tell is unknown.
std::vector<KeptTask> kept_tasks(const Table& tasks);

/// What is to be done at each tree, by its label, in the order of the tasks; only what is of that urgency and
/// can be done on that day, where these are given.
std::map<std::string, Sentence> works_at_trees(const std::vector<KeptTask>& tasks,
                                               const std::optional<Day>& day,
                                               const std::optional<Urgency>& urgency);

}  // namespace pipward::cross
