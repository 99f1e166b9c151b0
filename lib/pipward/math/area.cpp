// SPDX-License-Identifier: MIT
#include "pipward/math/area.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <string_view>

#include "pipward/math/detail/geos.h"

namespace pipward::math {
namespace {

using Ring = std::vector<PlanePoint>;

bool is_finite(const Ring& ring) {
    return std::ranges::all_of(
        ring, [](PlanePoint point) { return std::isfinite(point.east) && std::isfinite(point.north); });
}

std::optional<FaultyOutline> fault_of_ring(const Ring& ring) {
    if (!is_finite(ring)) {
        return FaultyOutline{OutlineFault::no_number, {}};
    }
    if (ring.size() < 4) {  // fewer make no ring for GEOS
        return FaultyOutline{OutlineFault::too_few_corners, ring.empty() ? PlanePoint{} : ring.front()};
    }
    return ring.front() == ring.back() ? std::nullopt
                                       : std::optional{FaultyOutline{OutlineFault::open, ring.back()}};
}

detail::Geometry polygon(const detail::Geos& geos, const Outline& outline) {
    const auto ring_of = [&](const Ring& ring) {
        return geos.own(GEOSGeom_createLinearRing_r(geos.context(), detail::sequence_of(geos, ring)));
    };
    std::vector<detail::Geometry> holes;
    for (const auto& hole : outline.holes) {
        holes.push_back(ring_of(hole));
    }
    std::vector<GEOSGeometry*> given;
    std::ranges::transform(holes, std::back_inserter(given), [](auto& hole) { return hole.release(); });
    auto ring = ring_of(outline.ring);
    return geos.own(GEOSGeom_createPolygon_r(geos.context(), ring.release(), given.data(),
                                             static_cast<unsigned>(given.size())));
}

// The words of GEOS's validator (TopologyValidationError), which have no numbers in its C interface.
OutlineFault fault_named(std::string_view words) {
    if (words.starts_with("Too few")) {
        return OutlineFault::too_few_corners;
    }
    if (words.starts_with("Hole") || words.starts_with("Holes") || words.starts_with("Nested")) {
        return OutlineFault::outside_hole;
    }
    return words.starts_with("Interior") ? OutlineFault::in_parts : OutlineFault::crosses_itself;
}

}  // namespace

std::optional<FaultyOutline> fault_of(const Outline& outline) {
    if (const auto fault = fault_of_ring(outline.ring)) {
        return fault;
    }
    for (const auto& hole : outline.holes) {
        if (const auto fault = fault_of_ring(hole)) {
            return fault;
        }
    }
    const detail::Geos geos;
    const auto drawn = polygon(geos, outline);
    char* words = nullptr;
    GEOSGeometry* where = nullptr;
    const char valid = GEOSisValidDetail_r(geos.context(), drawn.get(), 0, &words, &where);
    const std::unique_ptr<char, detail::Closer<GEOSFree_r>> reason(words, {geos.context()});
    const detail::Geometry place(where, {geos.context()});
    if (geos.yes(valid)) {
        return std::nullopt;
    }
    const auto at = place ? detail::points_of(geos, place.get()) : Ring{};
    return FaultyOutline{fault_named(reason ? reason.get() : ""),
                         at.empty() ? outline.ring.front() : at.front()};
}

}  // namespace pipward::math
