// SPDX-License-Identifier: MIT
#include "pipward/place/detail/alley.h"

#include <algorithm>

namespace pipward::place::detail {

Sentence alley_words(std::span<const TreeLine> lines, const Barriers& barriers, std::uint32_t barrier,
                     math::PlanePoint tree, math::PlanePoint stand) {
    const auto line = barriers.all[barrier].line;
    const auto facing = rows_facing(barriers, line, stand, tree + unit(stand - tree) * widest_alley);
    const auto nearest = std::ranges::min_element(
        facing, {}, [&](auto other) { return barriers.courses.line(other).distance(tree); });
    const auto& own = lines[line].name;
    if (nearest == facing.end()) {
        return say("outside of row {}", own.second);
    }
    const auto& other = lines[barriers.all[*nearest].line].name;
    return other.first == own.first
               ? say("between rows {} and {}", own.second, other.second)
               : say("between row {} and row {} of block {}", own.second, other.second, other.first);
}

}  // namespace pipward::place::detail
