// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/seed/lot_course.h"

/// What became of each cross, step by step, as far as the book tells up to a day.
namespace pipward::seed {

/// How far a cross has come, step by step.
enum class SeedStep {
    pollinated,         ///< flowers pollinated
    fruits,             ///< fruit harvested
    sound_seed,         ///< full seeds found
    in_stratification,  ///< seeds stratified
    germinated,         ///< seeds that germinated
    planted,            ///< seedlings with a tree
    alive,              ///< seedlings of which a tree stands
};

/// A count that may not have been made, and that may be of a part only.
struct StepCount {
    std::optional<int> count;  ///< unknown where nobody counted, never zero for that
    bool whole = true;         ///< false where some tags, fruits or lots were not counted: there are more

    /// One more count was made; from then on it is known.
    void add(int more) { count = count.value_or(0) + more; }
};

/// One cross and its counts up to the day. Points into the orchard.
struct CrossTally {
    const CrossGoal* goal = nullptr;       ///< never null
    StepCount flowers;                     ///< of a first pass
    StepCount fruits;                      ///< harvested from its tags
    StepCount sound_seed;                  ///< found in the fruit; else the seed of its lots
    StepCount in_stratification;           ///< seed of the lots that are or were in stratification
    StepCount germinated;                  ///< of all its lots
    StepCount planted;                     ///< seedling trees of the cross, gone ones too
    StepCount alive;                       ///< of them still standing
    std::vector<const Pollination*> tags;  ///< rows of a first pass, in the order of the book
    std::vector<Day> harvested;            ///< days on which fruit was harvested, rising
    std::vector<LotCourse> lots;           ///< those that were there by the day, in the order of the book
    int seed_in_lots = 0;                  ///< seeds with which these lots began

    /// The count of a step.
    StepCount at(SeedStep step) const;
};

/// Of every cross that the book has, in its order.
std::vector<CrossTally> tally_crosses(const Orchard& orchard, Day as_of);

/// Seedlings that germinated and have no numbered position.
int seedlings_without_place(const CrossTally& tally);
/// Those of them that were withdrawn from their lots, potted as a rule.
int withdrawn_without_place(const CrossTally& tally);

/// The step at which a cross is known to have come to nothing: the first whose whole count is zero.
std::optional<SeedStep> failed_at(const CrossTally& tally);

}  // namespace pipward::seed
