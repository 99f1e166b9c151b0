// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/seed/ripeness.h"

/// Which tagged branches still bear crossed fruit, and when each may be harvested for its seed.
namespace pipward::seed {

/// Between these days a tree's full bloom lies.
struct FullBloomSpan {
    Day early;  ///< P10 of a forecast, or as the notes tell it
    Day late;   ///< P90, not before `early`
};

/// What a season's forecast and notes tell of a tree, by its label; nothing where they tell nothing.
using FullBloomOf = std::function<std::optional<FullBloomSpan>(const std::string& tree)>;

/// Flowers are pollinated about so many days before or after full bloom. Common practice, no source.
inline constexpr int days_around_full_bloom = 3;

/// Longer than this after its flowers were worked no crossed fruit hangs. Common practice, no source.
inline constexpr int longest_hanging_days = 270;

/// Seed that ripens before this many days from full bloom is of an early cultivar: its fruit is ripe before
/// the embryo is full-size (90 to 110 days: Tukey; Janick et al. 1996, from memory). From the later day on
/// the fruit hangs into stratification. Limits of the groups: common practice, no source.
inline constexpr int early_group_days = 110;
inline constexpr int late_group_days = 145;  ///< days, as above

/// A tagged branch with its fruit to come.
struct TagToHarvest {
    const Pollination* work = nullptr;  ///< the last work on the tag; never null
    const CrossGoal* goal = nullptr;    ///< null where the book does not have the cross
    FullBloomSpan bloom{};              ///< full bloom of its tree
    bool bloom_by_work = false;  ///< full bloom is calculated from the day on which the flowers were worked
    HarvestDays days;            ///< when its fruit may be harvested for seed

    /// Whether its fruit is ripe to eat before its seed is; false where the accession's own days are not
    /// known.
    bool is_early() const { return !days.usual && days.ripe_days < early_group_days; }
    /// Whether its fruit hangs into stratification until its seed is ripe.
    bool hangs_late() const { return days.ripe_days >= late_group_days; }
};

/// The tags that waiting_tags() tells, by first day, then tag. Where a tree's full bloom is told less sharply than the day of the work tells it, that day
/// counts.
std::vector<TagToHarvest> tags_to_harvest(const Orchard& orchard, Day as_of, const FullBloomOf& bloom_of);

/// What to mind at the fruit; empty where nothing.
Sentence harvest_caution(const TagToHarvest& tag);

}  // namespace pipward::seed
