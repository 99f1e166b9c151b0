// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "pipward/paper/field_plan.h"
#include "pipward/paper/gps_files.h"
#include "pipward/place/metre_plane.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// From the book's trees to a map's and a receiver's.
namespace pipward::operation {

/// The trees (into Orchard::trees; each has a place, at least one) and their rows on a plane in metres: rows
/// as drawn, else as their trees stand.
paper::FieldMap map_of(const Orchard& orchard, std::span<const std::uint32_t> trees);

/// Standing trees as waypoints: label, address and accession. Trees whose place is not of the earth are told
/// as one warning.
std::vector<paper::Waypoint> waypoints_of(const Orchard& orchard, std::span<const std::uint32_t> trees,
                                          Findings& findings);

}  // namespace pipward::operation
