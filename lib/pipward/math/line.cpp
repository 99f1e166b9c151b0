// SPDX-License-Identifier: MIT
#include "pipward/math/line.h"

#include <algorithm>

#include "pipward/math/detail/line_shape.h"

namespace pipward::math {
namespace {

constexpr double same_place = 1e-9;  // metres
constexpr int quarter_segments = 1;  // of arcs: mitred corners and flat ends have none
constexpr double longest_mitre = 5;  // times the distance

std::vector<double> begins_of(std::span<const PlanePoint> points) {
    std::vector<double> begins{0};
    for (std::size_t i = 1; i < points.size(); ++i) {
        begins.push_back(begins.back() + length(points[i] - points[i - 1]));
    }
    return begins;
}

}  // namespace

Line::Line(std::vector<PlanePoint> points) : shape_(std::make_unique<const Shape>(std::move(points))) {}
Line::~Line() = default;
Line::Line(Line&&) noexcept = default;
Line& Line::operator=(Line&&) noexcept = default;

Line::Shape::Shape(std::vector<PlanePoint> of)
    : points(std::move(of)), begins(begins_of(points)), geometry(geos.line(points)) {}

const std::vector<PlanePoint>& Line::points() const {
    return shape_->points;
}

double Line::length() const {
    return shape_->begins.back();
}

double Line::distance(PlanePoint point) const {
    double metres = 0;
    const auto place = shape_->geos.point(point);
    const int done = GEOSDistance_r(shape_->geos.context(), shape_->geometry.get(), place.get(), &metres);
    return shape_->geos.measured(done, metres);
}

double Line::distance(const Line& other) const {
    double metres = 0;
    const int done =
        GEOSDistance_r(shape_->geos.context(), shape_->geometry.get(), other.shape_->geometry.get(), &metres);
    return shape_->geos.measured(done, metres);
}

Foot Line::foot(PlanePoint point) const {
    const auto& points = shape_->points;
    if (length() <= 0) {
        return {points.front(), 0, math::length(point - points.front()), {1, 0}};
    }
    const auto& begins = shape_->begins;
    const auto place = shape_->geos.point(point);
    const double along = GEOSProject_r(shape_->geos.context(), shape_->geometry.get(), place.get());
    // A foot at a corner belongs to the leg that ends there.
    const auto end = std::ranges::lower_bound(begins.begin() + 1, begins.end() - 1, along - same_place);
    const auto leg = static_cast<std::size_t>(end - begins.begin());
    const auto ahead = unit(points[leg] - points[leg - 1]);
    const auto at = points[leg - 1] + ahead * (along - begins[leg - 1]);
    return {at, along, math::length(point - at), ahead};
}

std::vector<PlanePoint> simplified(std::span<const PlanePoint> line, double metres) {
    if (line.size() < 3) {
        return {line.begin(), line.end()};
    }
    const detail::Geos geos;
    const auto whole = geos.line(line);
    const auto few = geos.own(GEOSSimplify_r(geos.context(), whole.get(), metres));
    return detail::points_of(geos, few.get());
}

std::vector<PlanePoint> extended(std::span<const PlanePoint> line, double metres) {
    const auto differs_from = [](PlanePoint end) { return [end](PlanePoint point) { return point != end; }; };
    const auto second = std::find_if(line.begin(), line.end(), differs_from(line.front()));
    const auto last_but_one = std::find_if(line.rbegin(), line.rend(), differs_from(line.back()));
    std::vector<PlanePoint> longer(line.begin(), line.end());
    longer.front() = line.front() + unit(line.front() - *second) * metres;
    longer.back() = line.back() + unit(line.back() - *last_but_one) * metres;
    return longer;
}

std::vector<std::vector<PlanePoint>> parts_within(std::span<const PlanePoint> line, const Box& box) {
    const detail::Geos geos;
    const auto whole = geos.line(line);
    const auto inside = geos.own(GEOSClipByRect_r(geos.context(), whole.get(), box.low.east, box.low.north,
                                                  box.high.east, box.high.north));
    std::vector<std::vector<PlanePoint>> parts;
    for (int i = 0; i < GEOSGetNumGeometries_r(geos.context(), inside.get()); ++i) {
        parts.push_back(detail::points_of(geos, GEOSGetGeometryN_r(geos.context(), inside.get(), i)));
    }
    std::erase_if(parts, [](const auto& part) { return part.size() < 2; });
    return parts;
}

// Flat ends of a longer line: those that GEOS draws square have corners that are none.
std::vector<PlanePoint> corners_around(std::span<const PlanePoint> line, double metres) {
    const detail::Geos geos;
    const auto middle = geos.line(extended(line, metres));
    const auto strip = geos.own(GEOSBufferWithStyle_r(geos.context(), middle.get(), metres, quarter_segments,
                                                      GEOSBUF_CAP_FLAT, GEOSBUF_JOIN_MITRE, longest_mitre));
    std::vector<PlanePoint> corners;
    const auto add = [&](const GEOSGeometry* ring) {
        const auto points = detail::points_of(geos, ring);
        corners.insert(corners.end(), points.begin(), points.end() - 1);  // the last repeats the first
    };
    add(GEOSGetExteriorRing_r(geos.context(), strip.get()));
    for (int hole = 0; hole < GEOSGetNumInteriorRings_r(geos.context(), strip.get()); ++hole) {
        add(GEOSGetInteriorRingN_r(geos.context(), strip.get(), hole));
    }
    return corners;
}

}  // namespace pipward::math
