// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "pipward/lineage/ancestor_shares.h"

/// A line in sentences.
namespace pipward::lineage {

/// So many founders are named; of further ones only the number is told.
inline constexpr std::size_t most_founders_named = 5;

/// Who the subject descends from and what it is expected to have of the founders, what is of unknown parents,
/// and how many descend from it. `shares` are the subject's ancestor_shares().
Sentence pedigree_summary(const PedigreeGraph& graph, int subject, const std::vector<AncestorShare>& shares,
                      std::size_t descendants);

/// What to know of an ancestor's share: a sport or clone, by a blend, a parent unknown, without a record.
/// Empty where nothing.
Sentence share_note(const PedigreeGraph& graph, const AncestorShare& share);

}  // namespace pipward::lineage
