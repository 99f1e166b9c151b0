// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "pipward/place/row_barrier.h"

namespace pipward::place {

/// Inside of the room: the pieces of rows by where they lie, to see quickly whether one stands in the way.
class PieceGrid {
  public:
    explicit PieceGrid(std::vector<Piece> pieces);

    /// Whether the straight way comes too near to a row. One may walk a little closer than one turns, since
    /// the course of a row leaves small bends out and what touches in theory must not be lost to rounding.
    bool blocks(PlanePoint a, PlanePoint b) const;

  private:
    struct Cell {
        int column = 0;
        int line = 0;
    };
    Cell cell_of(PlanePoint point) const;
    bool is_inside(Cell cell) const;
    void enter(std::uint32_t piece);
    bool blocks_in(Cell cell, PlanePoint a, PlanePoint b) const;

    std::vector<Piece> pieces_;
    PlanePoint corner_;
    double size_ = 1;  // metres of a cell's side
    int columns_ = 0;
    int lines_ = 0;
    std::vector<std::vector<std::uint32_t>> cells_;
};

}  // namespace pipward::place
