// SPDX-License-Identifier: MIT
#include "pipward/math/detail/geos.h"

#include <cmath>
#include <stdexcept>
#include <vector>

namespace pipward::math::detail {
namespace {

constexpr std::size_t node_capacity = 10;  // of a tree: what GEOS recommends

void keep(const char* message, void* said) {
    *static_cast<std::string*>(said) = message;
}

}  // namespace

GEOSCoordSequence* sequence_of(const Geos& geos, std::span<const PlanePoint> points) {
    static_assert(sizeof(PlanePoint) == 2 * sizeof(double));
    return GEOSCoordSeq_copyFromBuffer_r(geos.context(), &points.front().east,
                                         static_cast<unsigned>(points.size()), 0, 0);
}

Geos::Geos() : context_(GEOS_init_r()), said_(std::make_unique<std::string>()) {
    GEOSContext_setErrorMessageHandler_r(context(), keep, said_.get());
}

void Geos::fail() const {
    throw std::logic_error("plane geometry: " + *said_);
}

Geometry Geos::own(GEOSGeometry* made) const {
    Geometry geometry(made, {context()});
    if (!geometry) {
        fail();
    }
    return geometry;
}

Geometry Geos::point(PlanePoint at) const {
    return own(GEOSGeom_createPointFromXY_r(context(), at.east, at.north));
}

Geometry Geos::line(std::span<const PlanePoint> points) const {
    return points.size() == 1 ? point(points.front())
                              : own(GEOSGeom_createLineString_r(context(), sequence_of(*this, points)));
}

Geometry Geos::box(const Box& box) const {
    const PlanePoint corners[] = {box.low, box.high};
    return line(corners);
}

Tree Geos::tree() const {
    return {GEOSSTRtree_create_r(context(), node_capacity), {context()}};
}

bool Geos::yes(char answer) const {
    if (answer != 0 && answer != 1) {
        fail();
    }
    return answer == 1;
}

double Geos::measured(int done, double value) const {
    if (done != 1) {
        fail();
    }
    return value;
}

std::vector<PlanePoint> points_of(const Geos& geos, const GEOSGeometry* line) {
    const auto* sequence = GEOSGeom_getCoordSeq_r(geos.context(), line);
    unsigned size = 0;
    GEOSCoordSeq_getSize_r(geos.context(), sequence, &size);
    std::vector<PlanePoint> points(size);
    if (size > 0) {
        GEOSCoordSeq_copyToBuffer_r(geos.context(), sequence, &points.front().east, 0, 0);
    }
    return points;
}

}  // namespace pipward::math::detail
