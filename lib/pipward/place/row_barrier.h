// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "pipward/place/tree_line.h"

/// Rows as what they are to somebody on foot: in the way.
namespace pipward::place {

struct BarrierRules {
    Metres beside{1.0};  ///< how far from the trunks one walks and works; less where rows stand closer
    Metres gap{0.0};     ///< a stretch without trees, not even removed ones, longer than this can be walked
                         ///< through; 0 where rows are wired and never can
};

/// A stretch of a row that cannot be walked through: straight pieces from corner to corner.
struct Barrier {
    std::uint32_t line = 0;          ///< into the lines it was made of
    std::vector<PlanePoint> course;  ///< one point for a single tree
    PlanePoint direction{1, 0};      ///< of a single tree
    double beside = 1;               ///< metres: the nearest one walks
};

struct Piece {
    PlanePoint a;
    PlanePoint b;
    double beside = 1;
};

std::vector<Barrier> row_barriers(std::span<const TreeLine> lines, const BarrierRules& rules);

/// The straight pieces of a barrier, at least one.
std::vector<Piece> pieces_of(const Barrier& barrier);

/// Where a walk round the barrier turns: beyond both ends and on both sides of each corner.
std::vector<PlanePoint> turning_points(const Barrier& barrier);

/// Where one stands to work the tree: to the left and to the right of the row as its positions count.
struct Sides {
    PlanePoint left;
    PlanePoint right;
};
Sides sides_of(const Barrier& barrier, PlanePoint tree);

/// The least distance between two straight pieces, 0 where they cross.
double distance_between(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d);
double distance_to(PlanePoint point, PlanePoint a, PlanePoint b);

}  // namespace pipward::place
