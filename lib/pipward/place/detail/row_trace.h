// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/place/detail/row_curve.h"
#include "pipward/place/detail/row_direction.h"

/// Inside of the room: rows followed from tree to tree, whatever their bends and distances.
namespace pipward::place::detail {

struct TracedRow {
    std::vector<std::size_t> trees{};  ///< in their order along the row
    RowCurve curve;
};

/// Why rows that were traced do not lie side by side.
enum class TraceTrouble {
    none,
    no_rows,   ///< fewer than three trees in line anywhere
    in_parts,  ///< rows that stand beside none of the others
    crossed    ///< rows that run into one another, or lie twice beside the same one
};

struct RowTrace {
    std::vector<TracedRow> rows{};  ///< each to the right of the one before
    std::vector<double> gaps{};     ///< metres from each row to the next: one fewer
    std::vector<int> row_of{};      ///< of each tree; -1 for none
    TraceTrouble trouble = TraceTrouble::none;
};

/// Each tree is moved across the rows to where trees are densest (mean shift along a ridge: Ozertem &
/// Erdogmus 2011, J. Mach. Learn. Res. 12:1249); those that come to lie in line make a row; the rows are put
/// in order by which stands next to which. `step` is about the distance of trees in a row.
RowTrace trace_rows(std::span<const math::PlanePoint> trees, const NearTrees& near,
                    const RowDirections& directions, double step);

}  // namespace pipward::place::detail
