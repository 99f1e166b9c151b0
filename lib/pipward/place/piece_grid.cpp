// SPDX-License-Identifier: MIT
#include "pipward/place/piece_grid.h"

#include <algorithm>
#include <cmath>

namespace pipward::place {
namespace {

constexpr double closest_share = 0.6;  // of the distance at which one turns

bool is_blocked_by(const Piece& piece, PlanePoint a, PlanePoint b) {
    return distance_between(a, b, piece.a, piece.b) < closest_share * piece.beside;
}

}  // namespace

PieceGrid::PieceGrid(std::vector<Piece> pieces) : pieces_(std::move(pieces)) {
    if (pieces_.empty()) {
        return;
    }
    corner_ = pieces_.front().a;
    PlanePoint high = corner_;
    for (const auto& piece : pieces_) {
        for (const auto& end : {piece.a, piece.b}) {
            corner_ = {std::min(corner_.east, end.east - piece.beside),
                       std::min(corner_.north, end.north - piece.beside)};
            high = {std::max(high.east, end.east + piece.beside),
                    std::max(high.north, end.north + piece.beside)};
        }
    }
    const double longest = std::max(high.east - corner_.east, high.north - corner_.north);
    constexpr double usual = 4.0;
    constexpr double most_cells = 1000.0;
    size_ = std::max(usual, longest / most_cells);
    columns_ = static_cast<int>((high.east - corner_.east) / size_) + 1;
    lines_ = static_cast<int>((high.north - corner_.north) / size_) + 1;
    cells_.resize(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(lines_));
    for (std::uint32_t piece = 0; piece < pieces_.size(); ++piece) {
        enter(piece);
    }
}

PieceGrid::Cell PieceGrid::cell_of(PlanePoint point) const {
    const auto at = point - corner_;
    // Far outside of the grid any cell outside will do.
    const auto cell = [](double share) { return static_cast<int>(std::floor(std::clamp(share, -1e8, 1e8))); };
    return {cell(at.east / size_), cell(at.north / size_)};
}

bool PieceGrid::is_inside(Cell cell) const {
    return cell.column >= 0 && cell.column < columns_ && cell.line >= 0 && cell.line < lines_;
}

void PieceGrid::enter(std::uint32_t number) {
    const auto& piece = pieces_[number];
    const double reach = piece.beside + size_ * 0.7072;  // half of a cell's diagonal
    const PlanePoint margin{piece.beside, piece.beside};
    const PlanePoint low{std::min(piece.a.east, piece.b.east), std::min(piece.a.north, piece.b.north)};
    const PlanePoint high{std::max(piece.a.east, piece.b.east), std::max(piece.a.north, piece.b.north)};
    const auto first = cell_of(low - margin);
    const auto last = cell_of(high + margin);
    for (int line = std::max(0, first.line); line <= std::min(lines_ - 1, last.line); ++line) {
        for (int column = std::max(0, first.column); column <= std::min(columns_ - 1, last.column);
             ++column) {
            const PlanePoint middle = corner_ + PlanePoint{(column + 0.5) * size_, (line + 0.5) * size_};
            if (distance_to(middle, piece.a, piece.b) <= reach) {
                cells_[static_cast<std::size_t>(line) * columns_ + column].push_back(number);
            }
        }
    }
}

bool PieceGrid::blocks_in(Cell cell, PlanePoint a, PlanePoint b) const {
    if (!is_inside(cell)) {
        return false;
    }
    return std::ranges::any_of(cells_[static_cast<std::size_t>(cell.line) * columns_ + cell.column],
                               [&](auto piece) { return is_blocked_by(pieces_[piece], a, b); });
}

// From cell to cell along the way (Amanatides & Woo 1987, Eurographics 87:3).
bool PieceGrid::blocks(PlanePoint a, PlanePoint b) const {
    auto cell = cell_of(a);
    const auto last = cell_of(b);
    const auto way = b - a;
    const int right = way.east > 0 ? 1 : -1;
    const int up = way.north > 0 ? 1 : -1;
    const auto until = [&](double start, double speed, int at, int step) {
        const double border = (at + (step > 0 ? 1 : 0)) * size_;
        return speed == 0 ? HUGE_VAL : (border - start) / speed;
    };
    int left = std::abs(last.column - cell.column) + std::abs(last.line - cell.line);
    while (!blocks_in(cell, a, b)) {
        if (left-- == 0) {
            return false;
        }
        const double next_column = until(a.east - corner_.east, way.east, cell.column, right);
        const double next_line = until(a.north - corner_.north, way.north, cell.line, up);
        if (cell.line == last.line || (cell.column != last.column && next_column < next_line)) {
            cell.column += right;
        } else {
            cell.line += up;
        }
    }
    return true;
}

}  // namespace pipward::place
