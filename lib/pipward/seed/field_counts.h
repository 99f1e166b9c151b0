// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <utility>

#include "pipward/lineage/s_field.h"
#include "pipward/record/orchard.h"

namespace pipward::seed {

/// Seed parent, pollen parent as in the goal.
using PairOfParents = std::pair<std::string, std::string>;

/// What the worked crosses of the book gave up to a day, crosses of the same parents together. Only crosses
/// with every tag's fruit counted. A fruit counts that held sound seed, where seed was counted; of a pear
/// without a count of its seed nothing is known, for pears set fruit without any.
std::map<PairOfParents, lineage::CrossCount> field_counts(const Orchard& orchard, Day as_of);

}  // namespace pipward::seed
