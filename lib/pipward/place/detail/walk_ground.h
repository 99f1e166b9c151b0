// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <span>
#include <vector>

#include "pipward/place/detail/visit_order.h"
#include "pipward/place/row_barrier.h"

/// The ground between rows as a graph of the straight ways that no row crosses: along the alleys, across
/// them, and round the ends of rows along the headlands. Shortest paths in it are the shortest walks (Lozano-
/// Pérez & Wesley 1979, Commun. ACM 22:560).
namespace pipward::place::detail {

class WalkGround {
  public:
    /// `places` are points one wants to walk between.
    WalkGround(std::vector<math::PlanePoint> places, std::span<const Barrier> barriers);
    ~WalkGround();
    WalkGround(WalkGround&&) noexcept;

    /// Between every two places, along the shortest walks; endless where none leads there. `tell` is called
    /// with the share done; it may throw to stop the work.
    PlaceDistances distances(const std::function<void(double)>& tell = {}) const;

    /// The corners of the shortest walk, both ends included; the straight way where none leads there.
    std::vector<math::PlanePoint> walk(std::uint32_t from, std::uint32_t to) const;

    /// Whether a place lies in the open, and not in a row.
    bool is_open(std::uint32_t place) const;

  private:
    struct Graph;
    std::unique_ptr<const Graph> graph_;
};

}  // namespace pipward::place::detail
