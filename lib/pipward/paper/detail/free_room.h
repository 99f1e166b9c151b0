// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <utility>
#include <vector>

#include "pipward/paper/millimetres.h"

namespace pipward::paper::detail {

/// What of a page is taken already, so that texts do not lie on one another. Its own grid of cells, because
/// boxes are taken between questions and a tree like math::PointTree is packed once.
class FreeRoom {
  public:
    bool is_free(const Box& box) const;
    void take(const Box& box);

  private:
    using Cell = std::pair<int, int>;
    template <class Visit>
    static void each_cell(const Box& box, Visit visit);

    std::map<Cell, std::vector<Box>> taken_;
};

}  // namespace pipward::paper::detail
