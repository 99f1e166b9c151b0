// SPDX-License-Identifier: MIT
#include "pipward/book/detail/check_outline.h"

#include <fmt/format.h>
#include <ogr_geometry.h>

#include "pipward/math/area.h"

namespace pipward::book::detail {
namespace {

std::vector<math::PlanePoint> corners_of(const OGRLinearRing& ring) {
    std::vector<math::PlanePoint> corners;
    for (const auto& point : ring) {
        corners.push_back({point.getX(), point.getY()});
    }
    return corners;
}

math::Outline outline_of(const OGRPolygon& area) {
    math::Outline outline{corners_of(*area.getExteriorRing())};
    for (int hole = 0; hole < area.getNumInteriorRings(); ++hole) {
        outline.holes.push_back(corners_of(*area.getInteriorRing(hole)));
    }
    return outline;
}

Sentence words_of(math::OutlineFault fault) {
    switch (fault) {
        case math::OutlineFault::open:
            return say("The outline does not end where it begins.");
        case math::OutlineFault::too_few_corners:
            return say("The outline has fewer than three corners.");
        case math::OutlineFault::no_number:
            return say("The geometry has a coordinate that is no finite number.");
        case math::OutlineFault::outside_hole:
            return say("A hole lies outside of the outline, or in another hole.");
        case math::OutlineFault::in_parts:
            return say("A hole touches the outline so that the area falls apart.");
        case math::OutlineFault::crosses_itself:
            break;
    }
    return say("The outline crosses or touches itself.");
}

}  // namespace

std::optional<Finding> check_outline(const OGRPolygon& area) {
    const auto faulty = math::fault_of(outline_of(area));
    if (!faulty) {
        return std::nullopt;
    }
    // Ten digits: a millimetre in metres, a centimetre in degrees.
    return Finding{Level::warning,
                   {},
                   {},
                   {},
                   fmt::format("{:.10g} {:.10g}", faulty->at.east, faulty->at.north),
                   words_of(faulty->fault),
                   say("Move its corners on the map, or draw it again.")};
}

}  // namespace pipward::book::detail
