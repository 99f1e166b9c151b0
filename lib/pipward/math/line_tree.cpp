// SPDX-License-Identifier: MIT
#include "pipward/math/line_tree.h"

#include <algorithm>
#include <utility>

#include "pipward/math/detail/line_shape.h"

namespace pipward::math {
namespace {

using Numbers = std::vector<std::uint32_t>;

}  // namespace

struct LineTree::Leaves {
    detail::Geos geos;
    std::vector<Line> lines;
    detail::Tree tree = geos.tree();

    explicit Leaves(std::vector<Line> of) : lines(std::move(of)) {
        for (auto& line : lines) {
            GEOSSTRtree_insert_r(geos.context(), tree.get(), line.shape_->geometry.get(), &line);
        }
    }

    std::vector<const Line*> in(const Box& box) const {
        std::vector<const Line*> found;
        const auto keep = [](void* item, void* into) {
            static_cast<std::vector<const Line*>*>(into)->push_back(static_cast<const Line*>(item));
        };
        const auto wanted = geos.box(box);
        GEOSSTRtree_query_r(geos.context(), tree.get(), wanted.get(), keep, &found);
        return found;
    }
};

LineTree::LineTree(std::vector<Line> lines) : leaves_(std::make_unique<const Leaves>(std::move(lines))) {}
LineTree::~LineTree() = default;
LineTree::LineTree(LineTree&&) noexcept = default;
LineTree& LineTree::operator=(LineTree&&) noexcept = default;

const Line& LineTree::line(std::uint32_t number) const {
    return leaves_->lines[number];
}

Numbers LineTree::within(const Line& other, double metres) const {
    const PlanePoint reach{metres, metres};
    const auto box = box_around(other.points());
    Numbers numbers;
    for (const auto* line : leaves_->in({box.low - reach, box.high + reach})) {
        if (line->distance(other) < metres) {
            numbers.push_back(static_cast<std::uint32_t>(line - leaves_->lines.data()));
        }
    }
    std::ranges::sort(numbers);
    return numbers;
}

}  // namespace pipward::math
