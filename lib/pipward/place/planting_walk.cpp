// SPDX-License-Identifier: MIT
#include "pipward/place/planting_walk.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <tuple>

namespace pipward {
namespace {

/// "2" before "10", and both before "north".
struct RowName {
    int number = 0;
    std::string text;

    auto operator<=>(const RowName&) const = default;
};

RowName name_of(const std::string& row) {
    int number = 0;
    const auto read = std::from_chars(row.data(), row.data() + row.size(), number);
    return read.ec == std::errc{} ? RowName{number, row} : RowName{std::numeric_limits<int>::max(), row};
}

double apart(const MapPoint& a, const MapPoint& b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

using Iterator = std::vector<RowPosition>::iterator;

Iterator end_of_row(Iterator from, Iterator end) {
    return std::find_if(from, end, [&](const RowPosition& position) {
        return position.block != from->block || position.row != from->row;
    });
}

}  // namespace

std::vector<RowPosition> in_planting_order(std::vector<RowPosition> positions) {
    std::erase_if(positions, [](const RowPosition& p) { return p.state != PositionState::vacant; });
    std::ranges::stable_sort(
        positions, {}, [](const RowPosition& p) { return std::tuple(p.block, name_of(p.row), p.position); });
    std::optional<MapPoint> last;
    for (auto row = positions.begin(); row != positions.end();) {
        const auto end = end_of_row(row, positions.end());
        if (last && apart(*last, (end - 1)->at) < apart(*last, row->at)) {
            std::reverse(row, end);
        }
        last = (end - 1)->at;
        row = end;
    }
    return positions;
}

}  // namespace pipward
