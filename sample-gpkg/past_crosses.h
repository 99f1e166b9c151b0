// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/orchard.h"
#include "true_bloom.h"

/// What became of the crosses of past springs, from the tag to the seedling, counted at every step.
namespace pipward::larkfold {

struct PastCrosses {
    std::vector<Pollination> pollinations;
    std::vector<Fruit> fruits;
    std::vector<SeedLot> seed_lots;
    std::vector<GerminationCount> germination_counts;
    std::vector<SeedWithdrawal> seed_withdrawals;
};

/// Nothing is counted that lies after the demonstration day.
PastCrosses past_crosses(const std::vector<Tree>& trees, TrueBloom& bloom);

}  // namespace pipward::larkfold
