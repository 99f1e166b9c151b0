// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_lines.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <complex>
#include <map>
#include <numbers>
#include <tuple>

#include "pipward/math/distributions.h"
#include "pipward/math/least_squares.h"
#include "pipward/math/quantile.h"
#include "pipward/math/robust.h"
#include "pipward/place/detail/row_pattern.h"

namespace pipward::place::detail {
namespace {

using std::numbers::pi;
constexpr std::size_t first_sample = 400;  // points about the middle: the bend is small there

/// The course that all rows share, and each row's own deviation from it. All in metres; a polynomial runs
/// over `scaled`, -1 to 1 from one end of the points to the other, so its coefficients are metres as well.
struct Bend {
    double middle = 0;                           // along: the points' median
    double reach = 1;                            // along: from there to the farthest point, 1 or more
    double distance = 1;                         // from row to row
    std::array<double, 4> common{};              // offset, lean, bend, twist over the reach
    std::map<int, std::array<double, 3>> own{};  // offset, lean, bend; a row without any has none
    int lowest = -1'000'000;                     // rows beyond these there are none
    int highest = 1'000'000;

    double scaled(double along) const { return (along - middle) / reach; }
    double common_at(double along) const {
        const double t = scaled(along);
        return common[0] + t * (common[1] + t * (common[2] + t * common[3]));
    }
    double line_at(int row, double along) const {
        const double t = scaled(along);
        const auto found = own.find(row);
        const double more =
            found == own.end() ? 0 : found->second[0] + t * (found->second[1] + t * found->second[2]);
        return common_at(along) + row * distance + more;
    }
    // By the common course first; a row's own deviation may make one of its neighbours the nearer.
    int nearest_row(const RowPoint& point) const {
        const auto even = std::lround((point.across - common_at(point.along)) / distance);
        const int row = std::clamp(static_cast<int>(even), lowest, highest);
        int best = row;
        for (const int other : {std::max(row - 1, lowest), std::min(row + 1, highest)}) {
            const bool nearer = std::abs(point.across - line_at(other, point.along)) <
                                std::abs(point.across - line_at(best, point.along));
            best = nearer ? other : best;
        }
        return best;
    }
};

double middle_of(std::span<const RowPoint> points, double RowPoint::*axis) {
    std::vector<double> values;
    for (const auto& point : points) {
        values.push_back(point.*axis);
    }
    return math::middle_value(std::move(values));
}

std::vector<RowPoint> from_the_middle(std::span<const RowPoint> points, double& middle, double& reach) {
    std::vector<RowPoint> sorted(points.begin(), points.end());
    middle = middle_of(points, &RowPoint::along);
    const double across = middle_of(points, &RowPoint::across);
    for (const auto& point : sorted) {
        reach = std::max(reach, std::abs(point.along - middle));
    }
    std::ranges::sort(sorted, {}, [&](const RowPoint& p) {
        return std::tuple(std::hypot(p.along - middle, p.across - across), p.along, p.across);
    });
    return sorted;
}

std::vector<double> offs_of(std::span<const RowPoint> points, const Bend& bend) {
    std::vector<double> offs;
    for (const auto& point : points) {
        offs.push_back(point.across - bend.line_at(bend.nearest_row(point), point.along));
    }
    return offs;
}

// One Gauss-Newton step, the rows of the points held. A coefficient may well change by: the offset by
// anything, the lean by 10 m over the reach, bend and twist by 6 m, the distance by 5 cm. Our own figures;
// the noise is taken for 2 cm at the least, so that exact points do not weigh without bound.
void fit_common(std::span<const RowPoint> points, Bend& bend) {
    const double scale = std::max(median_noise(offs_of(points, bend)), 0.02);
    // The row distance is known to a small part already; it may change as the first coefficient does.
    math::LeastSquares squares({1e3, 10 / scale, 6 / scale, 6 / scale, 0.05 / scale});
    for (const auto& point : points) {
        const int row = bend.nearest_row(point);
        const double t = bend.scaled(point.along);
        const double off = point.across - bend.line_at(row, point.along);
        squares.add({1, t, t * t, t * t * t, static_cast<double>(row)}, off, math::huber_weight(off, scale));
    }
    const auto change = squares.solve();
    for (std::size_t i = 0; i < 4; ++i) {
        bend.common[i] += change[i];
    }
    bend.distance += change[4];
}

// Each row's deviation from the common course, by its own points: 30 cm in each coefficient may well be.
void fit_own(std::span<const RowPoint> points, Bend& bend) {
    const double scale = std::max(median_noise(offs_of(points, bend)), 0.02);
    std::map<int, math::LeastSquares> squares;
    for (const auto& point : points) {
        const int row = bend.nearest_row(point);
        const double t = bend.scaled(point.along);
        const double value = point.across - bend.common_at(point.along) - row * bend.distance;
        const double off = point.across - bend.line_at(row, point.along);
        const double spread = 0.3 / scale;
        squares.try_emplace(row, math::LeastSquares({spread, spread, spread}))
            .first->second.add({1, t, t * t}, value, math::huber_weight(off, scale));
    }
    bend.own.clear();
    for (const auto& [row, equations] : squares) {
        const auto fitted = equations.solve();
        bend.own[row] = {fitted[0], fitted[1], fitted[2]};
    }
}

// The tails of the outer rows look like rows beyond them, with few trees: they would be counted as rows and
// draw the distance narrower. Few is less than a quarter of what the middle one of the rows has, or than 3.
void trim(std::span<const RowPoint> points, Bend& bend) {
    std::map<int, std::size_t> counts;
    for (const auto& point : points) {
        ++counts[bend.nearest_row(point)];
    }
    std::vector<std::size_t> sizes;
    for (const auto& [row, count] : counts) {
        sizes.push_back(count);
    }
    std::ranges::sort(sizes);
    const auto few = std::max<std::size_t>(sizes[sizes.size() / 2] / 4, 3);
    while (counts.size() > 1 && counts.begin()->second < few) {
        counts.erase(counts.begin());
    }
    while (counts.size() > 1 && std::prev(counts.end())->second < few) {
        counts.erase(std::prev(counts.end()));
    }
    bend.lowest = counts.begin()->first;
    bend.highest = std::prev(counts.end())->first;
}

Bend fitted(std::span<const RowPoint> points, double distance) {
    Bend bend;
    bend.distance = distance;
    const auto sorted = from_the_middle(points, bend.middle, bend.reach);
    const std::span<const RowPoint> all(sorted);
    std::vector<double> across;
    for (const auto& point : all.first(std::min(first_sample, all.size()))) {
        across.push_back(point.across);
    }
    bend.common[0] = origin_of(across, distance);
    // From the middle outwards, half as many points again each time, so that a bend is known where it is
    // small before it moves points a row on.
    for (std::size_t size = std::min(first_sample, all.size());; size = std::min(size * 3 / 2, all.size())) {
        for (int turn = 0; turn < 3; ++turn) {
            fit_common(all.first(size), bend);
        }
        if (size == all.size()) {
            break;
        }
    }
    trim(all, bend);
    for (int turn = 0; turn < 3; ++turn) {
        fit_common(all, bend);
    }
    for (int turn = 0; turn < 3; ++turn) {
        fit_own(all, bend);
    }
    return bend;
}

// The certainty is Bayes' theorem over the nearest row, two to each side and no row at all, all as likely
// beforehand but the last: normal densities across, strays evenly over a row distance.
RowOfPoint row_of(const RowPoint& point, const Bend& bend, double noise) {
    RowOfPoint result{bend.nearest_row(point)};
    result.off = point.across - bend.line_at(result.row, point.along);
    const auto off_from = [&](int other) {
        const bool exists = other >= bend.lowest && other <= bend.highest;
        return exists ? point.across - bend.line_at(other, point.along) : std::nan("");
    };
    result.before = off_from(result.row - 1);
    result.after = off_from(result.row + 1);
    double all = share_stray / bend.distance;
    const int low = std::max(result.row - 2, bend.lowest);
    for (int row = low; row <= std::min(result.row + 2, bend.highest); ++row) {
        all += math::normal_density(point.across - bend.line_at(row, point.along), noise);
    }
    result.certainty = math::normal_density(result.off, noise) / all;
    return result;
}

}  // namespace

double median_noise(std::span<const double> offs) {
    std::vector<double> sizes;
    for (const double off : offs) {
        sizes.push_back(std::abs(off));
    }
    return sizes.empty() ? 0.0 : math::deviations_per_median * math::middle_value(std::move(sizes));
}

double folded_noise(std::span<const double> offs, double period) {
    const double plain = median_noise(offs);
    if (plain < 0.12 * period) {
        return plain;
    }
    std::complex<double> sum;
    for (const double off : offs) {
        sum += std::polar(1.0, 2 * pi * off / period);
    }
    // sigma = period / (2 pi) * sqrt(-2 ln R); R is not taken for less than chance alone gives.
    const auto n = static_cast<double>(offs.size());
    const double length = std::max(std::abs(sum) / n, 1 / std::sqrt(n));
    return std::max(plain, period / (2 * pi) * std::sqrt(-2 * std::log(std::min(length, 1.0))));
}

FittedRows fit_rows(std::span<const RowPoint> points, double distance) {
    const auto bend = fitted(points, distance);
    FittedRows rows;
    rows.distance = bend.distance;
    rows.noise = std::max(folded_noise(offs_of(points, bend), bend.distance), 0.01);
    for (const auto& point : points) {
        rows.points.push_back(row_of(point, bend, rows.noise));
    }
    rows.line = [bend](int row, double along) { return bend.line_at(row, along); };
    return rows;
}

}  // namespace pipward::place::detail
