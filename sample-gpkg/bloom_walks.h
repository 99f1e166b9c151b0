// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/orchard.h"
#include "true_bloom.h"

/// What two observers wrote down on their walks through the blooming orchard.
namespace pipward::larkfold {

/// Walks every three to five days of each bloom, the lower block as "walk A", the upper as "walk B". Most
/// trees are passed by; a stage is read wrong by 4 degree-days (one standard deviation). One date is typed a
/// month late on purpose: the only note of Tansy Lane in 2021.
std::vector<BloomObservation> bloom_observations(const std::vector<Tree>& trees, TrueBloom& bloom);

}  // namespace pipward::larkfold
