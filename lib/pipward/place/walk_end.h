// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/place/named_place.h"
#include "pipward/place/walk.h"

namespace pipward::place {

/// Where a walk begins or ends: a tree's label, or latitude and longitude. Nothing where none was named; an
/// error finding where it cannot be found.
std::optional<WalkEnd> walk_end(const Orchard& orchard, const NamedPlace& named, Findings& findings);

}  // namespace pipward::place
