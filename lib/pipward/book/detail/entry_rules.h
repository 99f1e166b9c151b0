// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Inside of the room: rules for one new row that the checks of a whole book do not know, one file a subject.
/// Each takes the book without the row, and the row. Rows of the book that are entries themselves, not yet
/// written, have numbers below zero.
namespace pipward::book::detail {

void judge(const BloomObservation& observed, const Orchard& orchard, Findings& findings);
void judge(const Pollination& work, const Orchard& orchard, Findings& findings);
void judge(const BranchWork& work, const Orchard& orchard, Findings& findings);
void judge(const Fruit& harvested, const Orchard& orchard, Findings& findings);
void judge(const SeedLot& lot, const Orchard& orchard, Findings& findings);
void judge(const GerminationCount& count, const Orchard& orchard, Findings& findings);
void judge(const TraitScore& score, const Orchard& orchard, Findings& findings);

/// How findings name a row that has no name of its own and no number yet.
inline constexpr const char* new_row = "new entry";

}  // namespace pipward::book::detail
