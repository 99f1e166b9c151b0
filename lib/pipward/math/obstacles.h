// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <vector>

#include "pipward/math/plane_point.h"

namespace pipward::math {

/// A straight piece of something that one keeps clear of.
struct Obstacle {
    PlanePoint a;          ///< one end
    PlanePoint b;          ///< the other; may be the same point
    double clearance = 0;  ///< metres
};

/// Obstacles that very many straight ways are held against. Not for two threads at once.
class Obstacles {
  public:
    /// Takes the obstacles over; there may be none.
    explicit Obstacles(std::vector<Obstacle> obstacles);
    ~Obstacles();
    Obstacles(Obstacles&&) noexcept;

    /// Whether the straight way from `a` to `b` comes nearer to one of them than its clearance. Fastest where
    /// ways that are asked for one after the other lie near each other.
    bool bar(PlanePoint a, PlanePoint b);

  private:
    struct Leaves;
    std::unique_ptr<Leaves> leaves_;
};

}  // namespace pipward::math
