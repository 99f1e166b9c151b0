// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/orchard.h"

/// The seedlings of earlier crosses that stand in the upper block, and what was thought of their fruit.
namespace pipward::larkfold {

/// Seedlings whose accessions are not among parents().
std::vector<Accession> seedling_accessions();
/// Rows 4 and 5 of the upper block: the seedlings, and two trees that nobody has a record of.
std::vector<Tree> seedling_trees();
std::vector<TraitScore> seedling_scores(const std::vector<Tree>& trees);

}  // namespace pipward::larkfold
