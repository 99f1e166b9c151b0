// SPDX-License-Identifier: MIT
#include "pipward/math/point_tree.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "pipward/math/detail/geos.h"

namespace pipward::math {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

struct Search {
    const PlanePoint* first = nullptr;
    PlanePoint at;
    double metres = 0;
    std::vector<std::uint32_t> found{};
};

void keep_if_near(void* item, void* data) {
    auto& search = *static_cast<Search*>(data);
    const auto* point = static_cast<const PlanePoint*>(item);
    if (length(*point - search.at) < search.metres) {
        search.found.push_back(static_cast<std::uint32_t>(point - search.first));
    }
}

int distance_of_others(const void* one, const void* other, double* metres, void*) {
    *metres = one == other
                  ? endless
                  : length(*static_cast<const PlanePoint*>(one) - *static_cast<const PlanePoint*>(other));
    return 1;
}

}  // namespace

struct PointTree::Leaves {
    detail::Geos geos;
    std::vector<PlanePoint> points;
    std::vector<detail::Geometry> places;
    detail::Tree tree = geos.tree();

    explicit Leaves(std::vector<PlanePoint> of) : points(std::move(of)) {
        places.reserve(points.size());
        for (auto& point : points) {
            places.push_back(geos.point(point));
            GEOSSTRtree_insert_r(geos.context(), tree.get(), places.back().get(), &point);
        }
    }
};

PointTree::PointTree(std::vector<PlanePoint> points)
    : leaves_(std::make_unique<const Leaves>(std::move(points))) {}
PointTree::~PointTree() = default;
PointTree::PointTree(PointTree&&) noexcept = default;
PointTree& PointTree::operator=(PointTree&&) noexcept = default;

std::vector<std::uint32_t> PointTree::within(PlanePoint at, double metres) const {
    const auto& leaves = *leaves_;
    const PlanePoint reach{metres, metres};
    Search search{leaves.points.data(), at, metres};
    const auto box = leaves.geos.box({at - reach, at + reach});
    GEOSSTRtree_query_r(leaves.geos.context(), leaves.tree.get(), box.get(), keep_if_near, &search);
    std::ranges::sort(search.found);
    return std::move(search.found);
}

double PointTree::nearest_other(std::uint32_t number) const {
    const auto& leaves = *leaves_;
    const auto& point = leaves.points[number];
    const auto* other = static_cast<const PlanePoint*>(
        GEOSSTRtree_nearest_generic_r(leaves.geos.context(), leaves.tree.get(), &point,
                                      leaves.places[number].get(), distance_of_others, nullptr));
    return other == nullptr || other == &point ? endless : length(*other - point);
}

}  // namespace pipward::math
