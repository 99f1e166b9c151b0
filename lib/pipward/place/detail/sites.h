// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/place/earth.h"

/// Where on the earth the trees of a book stand, in groups.
namespace pipward::place::detail {

/// A group of points, each near another of it.
struct Site {
    LonLat centre;  ///< of one of its cells
    int trees = 0;
};

struct Sites {
    std::vector<Site> sites;
    std::vector<int> site_of;  ///< by point; -1 where it lies nowhere
};

/// Points in cells of about `metres` that touch, corners included, are of one site: points nearer than that
/// always are, those farther than three times that never by themselves. All of a small orchard cost a single
/// look at the earth.
Sites sites_of(std::span<const MapPoint> points, const ToEarth& to_earth, double metres);

}  // namespace pipward::place::detail
