// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "pipward/math/line.h"

namespace pipward::math {

/// Lines that are asked which of them lie near, by GEOS's sort-tile-recursive tree (as PointTree). Lines are
/// told by their number in the order given, from 0. Not for two threads at once.
class LineTree {
  public:
    /// Takes the lines over; there may be none.
    explicit LineTree(std::vector<Line> lines = {});
    ~LineTree();
    LineTree(LineTree&&) noexcept;
    LineTree& operator=(LineTree&&) noexcept;

    /// The line of a number that is less than how many were given; not checked.
    const Line& line(std::uint32_t number) const;
    /// Those that come nearer to `other` than `metres`, by their numbers.
    std::vector<std::uint32_t> within(const Line& other, double metres) const;

  private:
    struct Leaves;
    std::unique_ptr<const Leaves> leaves_;
};

}  // namespace pipward::math
