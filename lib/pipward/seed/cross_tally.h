// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/seed/lot_course.h"

/// What became of each cross, step by step, as far as the book tells up to a day.
namespace pipward::seed {

enum class SeedStep { worked, fruits, sound_seed, in_cold, sprouted, planted, alive };

/// A count that may not have been made, and that may be of a part only.
struct StepCount {
    std::optional<int> count;  ///< unknown where nobody counted, never zero for that
    bool whole = true;         ///< false where some tags, fruits or lots were not counted: there are more

    void add(int more) { count = count.value_or(0) + more; }
};

struct CrossTally {
    const CrossGoal* goal = nullptr;
    StepCount flowers;  ///< of a first pass
    StepCount fruits;
    StepCount sound_seed;  ///< found in the fruit; else the seed of its lots
    StepCount in_cold;     ///< seed of the lots that are or were in the cold
    StepCount sprouted;
    StepCount planted;  ///< seedling trees of the cross, gone ones too
    StepCount alive;    ///< of them still standing
    std::vector<const Pollination*> tags;
    std::vector<Day> picked;  ///< days on which fruit was picked, rising
    std::vector<LotCourse> lots;
    int seed_in_lots = 0;

    StepCount at(SeedStep step) const;
};

/// Of every cross that the book has, in its order.
std::vector<CrossTally> tally_crosses(const Orchard& orchard, Day as_of);

/// The step at which a cross is known to have come to nothing: the first whose whole count is zero.
std::optional<SeedStep> failed_at(const CrossTally& tally);

}  // namespace pipward::seed
