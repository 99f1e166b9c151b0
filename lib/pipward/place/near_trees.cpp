// SPDX-License-Identifier: MIT
#include "pipward/place/detail/near_trees.h"

#include "pipward/math/point_tree.h"
#include "pipward/math/quantile.h"

namespace pipward::place::detail {

NearTrees::NearTrees(std::span<const math::PlanePoint> trees, double metres) {
    const math::PointTree tree({trees.begin(), trees.end()});
    begin_.push_back(0);
    for (std::size_t i = 0; i < trees.size(); ++i) {
        for (const auto other : tree.within(trees[i], metres)) {
            if (other != i) {
                near_.push_back(other);
            }
        }
        begin_.push_back(near_.size());
    }
}

double usual_step(std::span<const math::PlanePoint> trees) {
    if (trees.size() < 2) {
        return 0;
    }
    const math::PointTree tree({trees.begin(), trees.end()});
    std::vector<double> nearest;
    for (std::uint32_t i = 0; i < trees.size(); ++i) {
        nearest.push_back(tree.nearest_other(i));
    }
    return math::middle_value(std::move(nearest));
}

}  // namespace pipward::place::detail
