// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/place/tree_line.h"

namespace pipward::place::detail {

/// Inside of the room: a place in a row, with or without a tree.
struct RowStand {
    std::optional<std::uint32_t> tree;  ///< the standing one before one that does not
    bool stands = false;
    std::optional<int> position;
    math::PlanePoint at;
};

/// Inside of the room: the places of a row in their order; positions that no tree has between two that have
/// one lie evenly between them. A tree stands by the day asked.
std::vector<RowStand> stands_of(const TreeLine& line, const Orchard& orchard, Day as_of);

}  // namespace pipward::place::detail
