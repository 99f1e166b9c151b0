// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

#include "pipward/paper/field_plan.h"
#include "pipward/paper/gps_files.h"
#include "pipward/place/metre_plane.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// From the book's trees to a map's and a receiver's.
namespace pipward::paper {

/// The trees (into Orchard::trees; each has a place, at least one) and their rows on a plane in metres: rows
/// as drawn, else as their trees stand. Trees that do not stand on `as_of` are marked as removed.
FieldMap map_of(const Orchard& orchard, std::span<const std::uint32_t> trees, Day as_of);

/// Those of the trees that stand on `as_of` as waypoints: label, address and accession. Trees whose place is
/// not of the earth are told as one warning.
std::vector<Waypoint> waypoints_of(const Orchard& orchard, std::span<const std::uint32_t> trees, Day as_of,
                                   Findings& findings);

/// The same in the order of a walk along the alleys. `tell` hears the share that is done and may throw.
/// Throws Error (input) for more trees than a walk can have.
std::vector<Waypoint> route_of(const Orchard& orchard, std::span<const std::uint32_t> trees, Day as_of,
                               const std::function<void(double share)>& tell, Findings& findings);

}  // namespace pipward::paper
