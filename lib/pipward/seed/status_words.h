// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/seed/next_work.h"

/// Where a cross stands, in words.
namespace pipward::seed {

/// "no fruit set": at which step it came to nothing.
Sentence failed_words(SeedStep step);
/// "wash the seed"; empty for nothing.
Sentence work_words(SeedWork work);
/// "12", "12 or more" where not all were counted; empty where nobody counted.
Sentence count_words(const StepCount& step);
/// "30 % (18 to 45)": what became `hits` of `of`, with the 95 % interval (Wilson); empty where either was not
/// counted whole.
Sentence share_words(const StepCount& of, const StepCount& hits);

/// Sound seeds a fruit; nothing where either was not counted whole.
std::optional<double> seeds_per_fruit(const CrossTally& tally);

}  // namespace pipward::seed
