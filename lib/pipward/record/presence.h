// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/spoken.h"

/// When a tree is there: the one rule for plans, walks, sheets, maps and checks. A book is always asked of
/// one day, so a removal that is entered beforehand changes nothing until it comes.
namespace pipward::record {

/// Whether the tree was planted on or before the day; one without a day of planting always was.
bool planted_by(const Tree& tree, Day day);

/// Whether the tree was removed on or before the day; one without a day of removal never is.
bool removed_by(const Tree& tree, Day day);

/// Whether the tree stands on the day: from the day of planting on, up to the day before `removed_on`, which
/// is the first day on which it no longer does.
bool stands_on(const Tree& tree, Day day);

/// Whether a lot of pollen is in hand on the day: from the day on which it was collected up to the day before
/// the one on which it was used up.
bool in_hand(const PollenLot& lot, Day day);

/// The store in which a lot is on the day: that of its latest move by then, else its first.
Store store_on(const PollenLot& lot, const std::vector<PollenMove>& moves, Day day);

/// Which round on the same flowers each of them is, in their order: as it says, else one after those of its
/// tag on earlier days.
std::vector<int> passes_of(const std::vector<Pollination>& works);

/// Whether there is any day on which both stand.
bool stand_together(const Tree& one, const Tree& other);

}  // namespace pipward::record
