// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/value/finding.h"

class OGRPolygon;

/// Inside of the room: whether a drawn area encloses ground.
namespace pipward::book::detail {

/// What is wrong with the outline of an area whose coordinates are finite: a warning, its value the place
/// where it shows, in the layer's coordinates; table, row and field are the caller's. Nothing where it is
/// sound.
std::optional<Finding> check_outline(const OGRPolygon& area);

}  // namespace pipward::book::detail
