// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "pipward/place/earth.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

namespace pipward {

/// Places that the book has already: its trees, rows and stations. At most some hundreds of them, spread.
std::vector<MapPoint> places_in(const Orchard& orchard);

/// What is wrong with where `points` lie, in the system `crs`, told under `field`: an error where they are
/// nowhere on the earth, where the numbers look like degrees but the system counts metres, or where they lie
/// far from the book's places and would lie among them with their two numbers exchanged; a warning where
/// they merely lie far away. `known` are the book's places on the earth.
std::optional<Finding> check_whereabouts(std::span<const MapPoint> points, const std::string& crs,
                                         std::span<const LonLat> known, const std::string& field);

}  // namespace pipward
