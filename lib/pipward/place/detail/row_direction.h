// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "pipward/math/plane_point.h"
#include "pipward/place/detail/near_trees.h"

/// Inside of the room: which way the rows run, place by place.
namespace pipward::place::detail {

/// Directions are of length 1 and keep one sense from place to place.
struct RowDirections {
    std::vector<math::PlanePoint> ahead;  ///< one a tree
    double sense =
        0;  ///< cosine of the mean direction against the wanted one, or north, before it was turned
    double other_bearing_deg = 0;  ///< the second best direction in the middle, 0 up to 180
    double rivalry = 0;            ///< how well trees stand in line that way, against 1 for the rows
};

/// The direction in which most trees stand in line with others, in small patches, followed from the clearest
/// patch outwards so that a bend is followed and another direction is not. Our own method: the shortest way
/// of a lattice is the way along its densest lines, and trees stand denser along a row than across. Where
/// `bearing_deg` is given the first patch is one that runs within 25 degrees of it. Nothing for too few
/// trees.
std::optional<RowDirections> find_directions(std::span<const math::PlanePoint> trees, const NearTrees& near,
                                             double step, std::optional<double> bearing_deg);

}  // namespace pipward::place::detail
