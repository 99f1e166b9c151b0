// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "pipward/math/plane_point.h"

/// Inside of the room: which trees stand near each tree.
namespace pipward::place::detail {

class NearTrees {
  public:
    /// Of each tree, those nearer than `metres`.
    NearTrees(std::span<const math::PlanePoint> trees, double metres);

    /// In no order; without the tree itself.
    std::span<const std::uint32_t> of(std::size_t tree) const {
        return std::span(near_).subspan(begin_[tree], begin_[tree + 1] - begin_[tree]);
    }

  private:
    std::vector<std::uint32_t> near_;
    std::vector<std::size_t> begin_;
};

/// Metres: about the distance of trees in a row, by the nearest neighbours of all; 0 for fewer than two.
double usual_step(std::span<const math::PlanePoint> trees);

}  // namespace pipward::place::detail
