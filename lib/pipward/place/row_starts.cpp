// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_starts.h"

#include <algorithm>
#include <cmath>

#include "pipward/math/least_squares.h"

namespace pipward::place::detail {
namespace {

constexpr double at_the_edge = 0.25;    // spacings
constexpr double steepest = 2;          // metres along a metre across: about 63 degrees
constexpr std::size_t most_tried = 60;  // rows, evenly spread

/// A line across the block: metres along at so many metres across.
struct Edge {
    double offset = 0;    // metres along, at 0 across
    double slope = 0;     // metres along a metre across
    double score = -1e9;  // see score_of(); higher is better
    double at(double across) const { return offset + slope * across; }
};

/// Metres along: where the row's first tree stands.
double first_of(const RowStart& row) {
    return row.origin + row.step * row.first;
}

/// In spacings; negative before the edge.
double beyond(const RowStart& row, const Edge& edge) {
    return (first_of(row) - edge.at(row.across)) / row.step;
}

/// A row that begins at the edge counts up to 1, one that begins behind it (its first trees are missing) 0,
/// one that begins more than half a spacing before it -2, for no row may. Our own weights.
double score_of(std::span<const RowStart> rows, const Edge& edge) {
    double score = 0;
    for (const auto& row : rows) {
        const double off = beyond(row, edge);
        score += std::abs(off) <= at_the_edge ? 1 - off * off : off < -0.5 ? -2 : 0;
    }
    return score;
}

Edge through(const RowStart& a, const RowStart& b) {
    const double slope = (first_of(b) - first_of(a)) / (b.across - a.across);
    return {first_of(a) - slope * a.across, slope};
}

Edge best_edge(std::span<const RowStart> rows) {
    Edge best;
    const auto stride = rows.size() / most_tried + 1;
    for (std::size_t i = 0; i < rows.size(); i += stride) {
        for (std::size_t j = i + stride; j < rows.size(); j += stride) {
            auto edge = through(rows[i], rows[j]);
            if (std::abs(edge.slope) > steepest) {
                continue;
            }
            edge.score = score_of(rows, edge);
            best = edge.score > best.score ? edge : best;
        }
    }
    return best;
}

Edge refined(std::span<const RowStart> rows, const Edge& edge) {
    math::LeastSquares squares({1e3, 1e3});
    for (const auto& row : rows) {
        if (std::abs(beyond(row, edge)) <= at_the_edge) {
            squares.add({1, row.across}, first_of(row), 1);
        }
    }
    const auto line = squares.solve();
    return {line[0], line[1], edge.score};
}

/// That a number is right which is `off` spacings from whole, 0 to 0.5, against the next nearest whole
/// number: both as likely beforehand, errors normal with `spread` spacings.
double chance(double off, double spread) {
    const double other = 1 - std::abs(off);
    return 1 / (1 + std::exp((off * off - other * other) / (2 * spread * spread)));
}

}  // namespace

bool find_edge(std::vector<RowStart>& rows) {
    if (rows.size() < 3) {
        return false;
    }
    auto edge = best_edge(rows);
    const auto agreed = std::ranges::count_if(
        rows, [&](const RowStart& row) { return std::abs(beyond(row, edge)) <= at_the_edge; });
    if (agreed < 3 || 2 * agreed < static_cast<std::ptrdiff_t>(rows.size())) {
        return false;
    }
    edge = refined(rows, edge);
    for (auto& row : rows) {
        const double number = (edge.at(row.across) - row.origin) / row.step;
        row.number = static_cast<int>(std::lround(number));
        const double off = number - row.number;
        // Half as much again as the origin's own doubt, and 0.08 spacings for an uneven edge: our own
        // figures.
        const double spread = std::hypot(1.5 * row.uncertainty / row.step, 0.08);
        row.certainty = row.number > row.first ? 0.0 : chance(off, spread);
    }
    return true;
}

}  // namespace pipward::place::detail
