// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "pipward/record/orchard.h"
#include "pipward/value/spoken.h"
#include "pipward/value/word.h"

/// The closed word lists of the book: each enum's word as stored, and its meaning for people.
/// The book's field domains, the readers and the hosts' pick lists all come from these tables.
namespace pipward::record {

std::span<const Word<TreePurpose>> words(TreePurpose);
std::span<const Word<PlacedBy>> words(PlacedBy);
std::span<const Word<AccessionKind>> words(AccessionKind);
std::span<const Word<WeatherSource>> words(WeatherSource);
std::span<const Word<Store>> words(Store);

}  // namespace pipward::record
