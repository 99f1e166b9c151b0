// SPDX-License-Identifier: MIT
#include "pipward/place/planting_walk.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <tuple>

namespace pipward::place {
namespace {

/// "2" before "10", and both before "north".
struct ShownRow {
    int number = 0;
    std::string text;

    auto operator<=>(const ShownRow&) const = default;
};

ShownRow name_of(const std::string& row) {
    int number = 0;
    const auto read = std::from_chars(row.data(), row.data() + row.size(), number);
    return read.ec == std::errc{} ? ShownRow{number, row} : ShownRow{std::numeric_limits<int>::max(), row};
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

std::vector<RowPosition> keep_apart(std::vector<RowPosition> positions, std::span<const TreeRow> rows,
                                    Metres apart) {
    std::map<std::pair<std::string, std::string>, double> spacing;
    for (const auto& row : rows) {
        spacing.emplace(std::pair(row.block, row.name), row.spacing.value_or(Metres{}).value);
    }
    std::map<std::pair<std::string, std::string>, std::set<int>> used;
    for (const auto& position : positions) {
        if (position.state != PositionState::vacant) {
            used[{position.block, position.row}].insert(position.position);
        }
    }
    std::ranges::stable_sort(positions, {}, &RowPosition::position);
    std::erase_if(positions, [&](const RowPosition& position) {
        if (position.state != PositionState::vacant) {
            return false;
        }
        const std::pair row(position.block, position.row);
        auto& taken = used[row];
        // A millimetre is no distance: spacings are often written rounded.
        const bool near = std::ranges::any_of(taken, [&](int other) {
            return std::abs(other - position.position) * spacing[row] < apart.value - 0.001;
        });
        if (!near) {
            taken.insert(position.position);
        }
        return near && spacing[row] > 0;
    });
    return positions;
}

}  // namespace pipward::place
