// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

namespace pipward::place {

/// What a position holds on a day.
enum class PositionState {
    vacant,   ///< nothing
    taken,    ///< a tree that stands
    reserved  ///< nothing yet: its tree is planted later
};

/// "vacant", "taken" or "reserved".
std::string_view to_text(PositionState state);

/// A numbered place in a row, and what stands there.
struct RowPosition {
    std::string block;                            ///< its name
    std::string row;                              ///< its name
    int position = 0;                             ///< its number, the row's first position or more
    PositionState state = PositionState::vacant;  ///< on the day asked
    std::string tree;                             ///< its label; empty where vacant
    std::optional<Metres> off{};  ///< how far the tree's point on the map lies from the position
    MapPoint at;                  ///< on the row's line, in the book's system
};

/// Every position of every row of the book that has a line and a spacing, row by row. Taken is a position at
/// which a tree stands on `as_of`, reserved one whose tree is planted later. Trees that their row has no
/// position for, or that stand more than half a spacing away from it, are told.
std::vector<RowPosition> row_positions(const Orchard& orchard, Day as_of, Findings& findings);

/// A numbered place in words, as address_of() says a tree's.
Sentence address_of_position(const RowPosition& position, std::span<const TreeRow> rows);

}  // namespace pipward::place
