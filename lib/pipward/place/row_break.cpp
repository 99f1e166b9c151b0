// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_break.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>

namespace pipward::place::detail {
namespace {

using std::numbers::pi;
using Phasor = std::complex<double>;

constexpr std::size_t side = 8;  // trees to each side
constexpr std::size_t least_side = 5;
constexpr double farthest = 16;  // spacings: no tree farther off tells
constexpr double stride = 1.5;   // spacings from try to try
constexpr int rows_beside = 3;   // rows
constexpr double standard_errors = 3.5;
constexpr double alone = 1.5;  // as many times as far must one row show a break that those beside do not

/// What one row says of one place: the phase of what follows against what comes before.
struct Turn {
    double along = 0;
    Phasor cross{};    // product of both sides' sums, one turned back
    double noise = 0;  // variance of its imaginary part
};

Phasor sum_of(std::span<const double> along, double spacing) {
    Phasor sum;
    for (const double one : along) {
        sum += std::polar(1.0, 2 * pi * one / spacing);
    }
    return sum;
}

Turn turn_at(const SpacedRow& row, double at) {
    const auto next = static_cast<std::size_t>(std::ranges::upper_bound(row.along, at) - row.along.begin());
    auto low = next - std::min(next, side);
    auto high = std::min(next + side, row.along.size());
    while (low < next && at - row.along[low] > farthest * row.spacing) {
        ++low;
    }
    while (high > next && row.along[high - 1] - at > farthest * row.spacing) {
        --high;
    }
    Turn turn{at};
    if (next - low < least_side || high - next < least_side) {
        return turn;
    }
    const auto before = sum_of(row.along.subspan(low, next - low), row.spacing);
    const auto after = sum_of(row.along.subspan(next, high - next), row.spacing);
    const auto m = static_cast<double>(next - low);
    const auto n = static_cast<double>(high - next);
    turn.cross = std::conj(before) * after;
    turn.noise = (m * std::norm(after) + n * std::norm(before)) / 2;
    return turn;
}

std::vector<Turn> turns_of(const SpacedRow& row) {
    std::vector<Turn> turns;
    if (row.along.empty()) {
        return turns;
    }
    for (double at = row.along.front(); at < row.along.back(); at += stride * row.spacing) {
        turns.push_back(turn_at(row, at));
    }
    return turns;
}

Turn pooled(std::span<const SpacedRow> rows, const std::vector<std::vector<Turn>>& turns, int row,
            std::size_t at) {
    const auto& own = rows[static_cast<std::size_t>(row)];
    const auto place = own.curve->at(turns[static_cast<std::size_t>(row)][at].along);
    Turn sum{turns[static_cast<std::size_t>(row)][at].along};
    for (int other = std::max(row - rows_beside, 0);
         other <= std::min(row + rows_beside, static_cast<int>(rows.size()) - 1); ++other) {
        const auto& theirs = turns[static_cast<std::size_t>(other)];
        const auto& line = rows[static_cast<std::size_t>(other)];
        if (theirs.empty()) {
            continue;
        }
        const double along = line.curve->foot(place).along - theirs.front().along;
        const auto nearest = std::lround(along / (stride * line.spacing));
        if (nearest >= 0 && nearest < std::ssize(theirs)) {
            sum.cross += theirs[static_cast<std::size_t>(nearest)].cross;
            sum.noise += theirs[static_cast<std::size_t>(nearest)].noise;
        }
    }
    return sum;
}

/// Positions.
double size_of(const Turn& turn) {
    return std::abs(std::arg(turn.cross)) / (2 * pi);
}

bool is_break(const Turn& turn, double jump, double errors) {
    const double size = std::abs(turn.cross);
    const double error = size > 0 ? std::sqrt(turn.noise) / size / (2 * pi) : 1;
    return size_of(turn) > std::max(jump, errors * error);
}

/// The widest gap between trees in there, or its beginning.
double place_of(const SpacedRow& row, double from, double to) {
    double widest = 2.2 * row.spacing;
    double place = from;
    for (std::size_t i = 1; i < row.along.size(); ++i) {
        const double gap = row.along[i] - row.along[i - 1];
        if (row.along[i] >= from && row.along[i - 1] <= to && gap > widest) {
            widest = gap;
            place = row.along[i - 1] + gap / 2;
        }
    }
    return place;
}

}  // namespace

std::vector<std::vector<double>> find_breaks(std::span<const SpacedRow> rows, double jump) {
    std::vector<std::vector<Turn>> turns;
    for (const auto& row : rows) {
        turns.push_back(turns_of(row));
    }
    std::vector<std::vector<double>> breaks(rows.size());
    for (std::size_t row = 0; row < rows.size(); ++row) {
        double from = -1;
        for (std::size_t i = 0; i <= turns[row].size(); ++i) {
            const bool here =
                i < turns[row].size() &&
                (is_break(turns[row][i], alone * jump, alone * standard_errors) ||
                 is_break(pooled(rows, turns, static_cast<int>(row), i), jump, standard_errors));
            if (here && from < 0) {
                from = turns[row][i].along;
            } else if (!here && from >= 0) {
                breaks[row].push_back(
                    place_of(rows[row], from - stride * rows[row].spacing, turns[row][i - 1].along));
                from = -1;
            }
        }
    }
    return breaks;
}

}  // namespace pipward::place::detail
