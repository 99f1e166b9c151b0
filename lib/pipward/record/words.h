// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "pipward/record/orchard.h"
#include "pipward/value/spoken.h"
#include "pipward/value/word.h"

/// The closed word lists of the book: each enum's word as stored, and its meaning for people.
/// The book's field domains, the readers and the hosts' value lists all come from these tables.
namespace pipward::record {

/// Each value of the enum once, in its order; the argument only chooses the table.
std::span<const Word<TreePurpose>> words(TreePurpose);
std::span<const Word<PlacedBy>> words(PlacedBy);            ///< as above
std::span<const Word<AccessionKind>> words(AccessionKind);  ///< as above
std::span<const Word<WeatherSource>> words(WeatherSource);  ///< as above
std::span<const Word<Store>> words(Store);                  ///< as above
std::span<const Word<BranchTask>> words(BranchTask);        ///< as above
std::span<const Word<TraitKind>> words(TraitKind);          ///< as above

}  // namespace pipward::record
