// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "pipward/math/plane_point.h"

namespace pipward::math {

/// Points that are asked for their neighbours, by GEOS's sort-tile-recursive tree (Leutenegger, Lopez &
/// Edgington 1997, ICDE 13:497). Points are told by their number in the order given, from 0. Those that are
/// no finite numbers throw std::logic_error. Not for two threads at once.
class PointTree {
  public:
    /// Takes the points over; there may be none.
    explicit PointTree(std::vector<PlanePoint> points);
    ~PointTree();
    PointTree(PointTree&&) noexcept;
    PointTree& operator=(PointTree&&) noexcept;

    /// Those that lie nearer than `metres`, by their numbers.
    std::vector<std::uint32_t> within(PlanePoint at, double metres) const;
    /// Metres from one of the points to the nearest other one, 0 where another lies on the same spot; endless
    /// where there is no other.
    double nearest_other(std::uint32_t point) const;

  private:
    struct Leaves;
    std::unique_ptr<const Leaves> leaves_;
};

}  // namespace pipward::math
