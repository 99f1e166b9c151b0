// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/cross/detail/goal_plan.h"

namespace pipward::cross::detail {

/// Pollen of one donor that is collected at one tree in one go, or a branch of it that is cut, for all
/// crosses that it serves. What it decides (days, store, germination at use, amounts) stands in the rows of
/// these crosses too.
struct Collection {
    PollenWork work = PollenWork::collect;  ///< collect or cut
    std::string donor;                      ///< an accession
    Season season_of_use;                   ///< the plan's, or the next
    const Tree* tree = nullptr;             ///< never null
    bool early_tree = false;                ///< it blooms before the tree that stands for the donor
    Day from;                               ///< first day to do it
    Day to;                                 ///< last day to do it
    bool by_median = false;                 ///< `to` is a median
    bool insurance = true;                  ///< for second ways only
    std::optional<Day> balloon_from;        ///< the tree's likely balloon days
    std::optional<Day> balloon_to;          ///< likewise
    Store store = Store::refrigerator;      ///< until use
    Day keep_until;                         ///< the last day of use over the crosses
    int flowers = 0;                        ///< to be collected
    Milligrams mass;                        ///< raw pollen expected
    std::vector<std::string> crosses;       ///< codes, sorted, each once
};

/// What the followed ways ask to be collected or cut, put together as far as the pollen of one tree can serve
/// several crosses. Each way's row is given the days, store and amounts of its collection.
std::vector<Collection> collections_of(const Bench& bench, std::vector<GoalPlan>& goals);

}  // namespace pipward::cross::detail
