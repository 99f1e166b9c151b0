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

/// The trees of one row that have a place, from one end to the other: by position where every one of them has
/// one, else along the row. Removed trees stand in it too.
struct TreeLine {
    RowName name;                      ///< of the row
    std::vector<std::uint32_t> trees;  ///< into Orchard::trees
    std::vector<math::PlanePoint> at;  ///< one a tree
};

/// By block and row. `only` leaves out all rows but those; every row where it is null.
std::vector<TreeLine> tree_lines(const Orchard& orchard, const MetrePlane& plane,
                                 const std::set<RowName>* only = nullptr);

/// The row of a tree; nothing where it is in none.
std::optional<RowName> row_name(const Tree& tree);

}  // namespace pipward::place
