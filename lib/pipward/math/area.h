// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/math/plane_point.h"

/// Outlines of drawn areas on the plane, by GEOS.
namespace pipward::math {

/// Rings by their corners, of which the last repeats the first.
struct Outline {
    std::vector<PlanePoint> ring;                  ///< the outside; at least four points, either way round
    std::vector<std::vector<PlanePoint>> holes{};  ///< inside of it, each as `ring`
};

/// Why an outline encloses no area that one could assume (OGC 06-103r4, Simple Feature Access, 6.1.11).
enum class OutlineFault {
    open,             ///< a ring does not end where it begins
    too_few_corners,  ///< a ring has fewer than three that differ
    no_number,        ///< a coordinate is no finite number
    crosses_itself,   ///< or touches itself along a stretch
    outside_hole,     ///< a hole lies outside of the outline, or in another hole
    in_parts,         ///< rings touch so that the inside falls apart
};

/// The first fault that was found in an outline.
struct FaultyOutline {
    OutlineFault fault = OutlineFault::crosses_itself;  ///< what is wrong
    PlanePoint at;                                      ///< where it shows; of no meaning for no_number
};

/// What is wrong with an outline; nothing where it is sound.
std::optional<FaultyOutline> fault_of(const Outline& outline);

}  // namespace pipward::math
