// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "pipward/math/line_tree.h"
#include "pipward/place/tree_line.h"

/// Rows as what they are to somebody on foot: in the way.
namespace pipward::place {

/// What keeps somebody on foot on their side of a row.
struct BarrierRules {
    Metres beside{1.0};  ///< how far from the trunks one walks and works; less where rows stand closer
    Metres gap{0.0};     ///< a stretch without trees, not even removed ones, longer than this can be walked
                         ///< through; 0 where rows are wired and never can
};

/// A stretch of a row that cannot be walked through: straight from corner to corner.
struct Barrier {
    std::uint32_t line = 0;                ///< into the lines it was made of
    std::vector<math::PlanePoint> course;  ///< at least two points; a single tree's is a hair along its row
    double beside = 1;                     ///< metres: the nearest one walks
    bool bars = true;  ///< false: drawn, without trees, and one may walk through; it only bounds an alley
};

/// All barriers, and a tree of their courses in the same order.
struct Barriers {
    double beside = 1;         ///< metres: what one keeps where there is room
    std::vector<Barrier> all;  ///< by line, then along it
    math::LineTree courses;    ///< by the same numbers
};

/// Trees stand a little off their row's line: bends of less than half of what one keeps beside are left out.
Barriers row_barriers(std::span<const TreeLine> lines, const BarrierRules& rules);

/// Where one stands to work the tree: to the left and to the right of the row as its positions count.
struct Sides {
    math::PlanePoint left;  ///< on the plane of the barriers, in metres
    math::PlanePoint right;
};
/// On each side Barrier::beside off the foot of the tree on its row; in an alley narrower than
/// `narrow_alley` times what one keeps beside the trunks in its middle, from which both rows are worked.
/// `barrier` is a place in Barriers::all.
Sides sides_of(const Barriers& barriers, std::uint32_t barrier, math::PlanePoint tree);

/// The barriers of other rows than `line` that face one across an alley: they begin within 2 m of the
/// straight line from `from` to `to`, because rows side by side need not begin on one line (common practice,
/// no source).
std::vector<std::uint32_t> rows_facing(const Barriers& barriers, std::uint32_t line, math::PlanePoint from,
                                       math::PlanePoint to);

/// In times of BarrierRules::beside: 3.5 m where one keeps 1 m, both rows within an arm and a step (common
/// practice, no source).
inline constexpr double narrow_alley = 3.5;

/// Metres: a row farther away is not across an alley but across a lane or a field (common practice, no
/// source).
inline constexpr double widest_alley = 12.0;

}  // namespace pipward::place
