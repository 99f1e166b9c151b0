// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/free_room.h"

#include <algorithm>
#include <cmath>

namespace pipward::paper::detail {
namespace {

constexpr Millimetres cell_side{10};

int cell_of(Millimetres place) {
    return static_cast<int>(std::floor(place / cell_side));
}

}  // namespace

template <class Visit>
void FreeRoom::each_cell(const Box& box, Visit visit) {
    for (int x = cell_of(box.left); x <= cell_of(box.right()); ++x) {
        for (int y = cell_of(box.top); y <= cell_of(box.bottom()); ++y) {
            visit(Cell{x, y});
        }
    }
}

bool FreeRoom::is_free(const Box& box) const {
    bool is_free = true;
    each_cell(box, [&](const Cell& cell) {
        const auto found = taken_.find(cell);
        is_free =
            is_free && (found == taken_.end() || std::ranges::none_of(found->second, [&](const Box& other) {
                            return overlap(box, other);
                        }));
    });
    return is_free;
}

void FreeRoom::take(const Box& box) {
    each_cell(box, [&](const Cell& cell) { taken_[cell].push_back(box); });
}

}  // namespace pipward::paper::detail
