// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/orchard.h"
#include "true_bloom.h"

/// The crosses that were made, those that are wanted, and the pollen in store.
namespace pipward::larkfold {

std::vector<CrossGoal> cross_goals();

struct PollenStore {
    std::vector<PollenLot> lots;
    std::vector<PollenTest> tests;
};
/// Collected at the balloon stage of the donor's true bloom.
PollenStore pollen_store(TrueBloom& bloom);

}  // namespace pipward::larkfold
