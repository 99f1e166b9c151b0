// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "pipward/place/metre_plane.h"

namespace pipward::place {

/// A block's name and a row's.
using RowName = std::pair<std::string, std::string>;

/// The trees of one row that have a place, from one end to the other: by position; those without one where
/// they lengthen the way from tree to tree least; along the row where fewer than half have one. Removed trees
/// stand in it too.
struct TreeLine {
    RowName name;                      ///< of the row
    std::vector<std::uint32_t> trees;  ///< into Orchard::trees
    std::vector<math::PlanePoint> at;  ///< one a tree
    std::vector<math::PlanePoint>
        line;  ///< the row's: without trees that have no position and stand beside it
};

/// By block and row. `only` leaves out all rows but those; every row where it is null.
std::vector<TreeLine> tree_lines(const Orchard& orchard, const MetrePlane& plane,
                                 const std::set<RowName>* only = nullptr);

/// Rows that are drawn and have no tree with a place, by the line that they were drawn with: of those
/// named by `only` again.
std::vector<TreeLine> drawn_lines(const Orchard& orchard, const MetrePlane& plane,
                                  const std::set<RowName>* only = nullptr);

/// The row of a tree; nothing where it is in none.
std::optional<RowName> row_name(const Tree& tree);

}  // namespace pipward::place
