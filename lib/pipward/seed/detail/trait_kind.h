// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "pipward/record/orchard.h"

namespace pipward::seed::detail {

/// On which part of the tree a trait is scored: as the book's table of traits says; else by a usual word in
/// its name ("taste" is of fruit, "mildew" of leaves; common practice, no source). Nothing where neither
/// tells it. A trait without a kind says nothing about bloom or fruit.
std::optional<TraitKind> kind_of_trait(const Orchard& orchard, std::string_view trait);

/// Whether a score of such a trait shows that the tree has bloomed.
bool shows_bloom(std::optional<TraitKind> kind);

}  // namespace pipward::seed::detail
