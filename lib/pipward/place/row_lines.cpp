// SPDX-License-Identifier: MIT
#include "pipward/place/row_lines.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <map>
#include <numeric>
#include <tuple>

#include "pipward/place/least_squares.h"

namespace pipward::place {
namespace {

constexpr double pi = 3.14159265358979323846;
constexpr std::size_t first_sample = 400;

/// The course that all rows share, and each row's own deviation from it.
struct Bend {
    double middle = 0;
    double reach = 1;
    double distance = 1;
    std::array<double, 4> common{};  // offset, lean, bend, twist over the reach
    std::map<int, std::array<double, 3>> own{};
    int lowest = -1'000'000;
    int highest = 1'000'000;

    double scaled(double x) const { return (x - middle) / reach; }
    double common_at(double x) const {
        const double t = scaled(x);
        return common[0] + t * (common[1] + t * (common[2] + t * common[3]));
    }
    double line_at(int row, double x) const {
        const double t = scaled(x);
        const auto found = own.find(row);
        const double more =
            found == own.end() ? 0 : found->second[0] + t * (found->second[1] + t * found->second[2]);
        return common_at(x) + row * distance + more;
    }
    int nearest_row(const PlanePoint& point) const {
        const auto even = std::lround((point.y - common_at(point.x)) / distance);
        const int row = std::clamp(static_cast<int>(even), lowest, highest);
        int best = row;
        for (const int other : {std::max(row - 1, lowest), std::min(row + 1, highest)}) {
            const bool nearer =
                std::abs(point.y - line_at(other, point.x)) < std::abs(point.y - line_at(best, point.x));
            best = nearer ? other : best;
        }
        return best;
    }
};

std::vector<PlanePoint> from_the_middle(std::span<const PlanePoint> points, double& middle, double& reach) {
    std::vector<PlanePoint> sorted(points.begin(), points.end());
    const auto half = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
    std::ranges::nth_element(sorted, half, {}, &PlanePoint::x);
    middle = half->x;
    std::ranges::nth_element(sorted, half, {}, &PlanePoint::y);
    const double y = half->y;
    for (const auto& point : sorted) {
        reach = std::max(reach, std::abs(point.x - middle));
    }
    std::ranges::sort(sorted, {}, [&](const PlanePoint& p) {
        return std::tuple(std::hypot(p.x - middle, p.y - y), p.x, p.y);
    });
    return sorted;
}

std::vector<double> offs_of(std::span<const PlanePoint> points, const Bend& bend) {
    std::vector<double> offs;
    for (const auto& point : points) {
        offs.push_back(point.y - bend.line_at(bend.nearest_row(point), point.x));
    }
    return offs;
}

void fit_common(std::span<const PlanePoint> points, Bend& bend) {
    const double scale = std::max(median_noise(offs_of(points, bend)), 0.02);
    // The row distance is known to a small part already; it may change as the first coefficient does.
    LeastSquares<5> squares({1e3, 10 / scale, 6 / scale, 6 / scale, 0.05 / scale});
    for (const auto& point : points) {
        const int row = bend.nearest_row(point);
        const double t = bend.scaled(point.x);
        const double off = point.y - bend.line_at(row, point.x);
        squares.add({1, t, t * t, t * t * t, static_cast<double>(row)}, off, huber(off, scale));
    }
    const auto change = squares.solve();
    for (std::size_t i = 0; i < 4; ++i) {
        bend.common[i] += change[i];
    }
    bend.distance += change[4];
}

void fit_own(std::span<const PlanePoint> points, Bend& bend) {
    const double scale = std::max(median_noise(offs_of(points, bend)), 0.02);
    std::map<int, LeastSquares<3>> squares;
    for (const auto& point : points) {
        const int row = bend.nearest_row(point);
        const double t = bend.scaled(point.x);
        const double value = point.y - bend.common_at(point.x) - row * bend.distance;
        const double off = point.y - bend.line_at(row, point.x);
        const double spread = 0.3 / scale;
        squares.try_emplace(row, LeastSquares<3>({spread, spread, spread}))
            .first->second.add({1, t, t * t}, value, huber(off, scale));
    }
    bend.own.clear();
    for (const auto& [row, equations] : squares) {
        bend.own[row] = equations.solve();
    }
}

// The tails of the outer rows look like rows beyond them, with few trees: they would be counted as rows and
// draw the distance narrower.
void trim(std::span<const PlanePoint> points, Bend& bend) {
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

Bend fitted(std::span<const PlanePoint> points, double distance) {
    Bend bend;
    bend.distance = distance;
    const auto sorted = from_the_middle(points, bend.middle, bend.reach);
    const std::span<const PlanePoint> all(sorted);
    std::vector<double> across;
    for (const auto& point : all.first(std::min(first_sample, all.size()))) {
        across.push_back(point.y);
    }
    bend.common[0] = origin_of(across, distance);
    // From the middle outwards, so that a bend is known where it is small before it moves points a row on.
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

RowOfPoint row_of(const PlanePoint& point, const Bend& bend, double noise) {
    RowOfPoint result{bend.nearest_row(point)};
    result.off = point.y - bend.line_at(result.row, point.x);
    const auto off_from = [&](int other) {
        const bool exists = other >= bend.lowest && other <= bend.highest;
        return exists ? point.y - bend.line_at(other, point.x) : std::nan("");
    };
    result.before = off_from(result.row - 1);
    result.after = off_from(result.row + 1);
    double all = share_stray / bend.distance;
    const int low = std::max(result.row - 2, bend.lowest);
    for (int row = low; row <= std::min(result.row + 2, bend.highest); ++row) {
        all += bell(point.y - bend.line_at(row, point.x), noise);
    }
    result.certainty = bell(result.off, noise) / all;
    return result;
}

}  // namespace

double median_noise(std::span<const double> offs) {
    std::vector<double> sizes;
    for (const double off : offs) {
        sizes.push_back(std::abs(off));
    }
    if (sizes.empty()) {
        return 0;
    }
    const auto half = sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2);
    std::ranges::nth_element(sizes, half);
    return 1.4826 * *half;
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
    const auto n = static_cast<double>(offs.size());
    const double length = std::max(std::abs(sum) / n, 1 / std::sqrt(n));
    return std::max(plain, period / (2 * pi) * std::sqrt(-2 * std::log(std::min(length, 1.0))));
}

FittedRows fit_rows(std::span<const PlanePoint> points, double distance) {
    const auto bend = fitted(points, distance);
    FittedRows rows;
    rows.distance = bend.distance;
    rows.noise = std::max(folded_noise(offs_of(points, bend), bend.distance), 0.01);
    for (const auto& point : points) {
        rows.points.push_back(row_of(point, bend, rows.noise));
    }
    rows.line = [bend](int row, double x) { return bend.line_at(row, x); };
    return rows;
}

}  // namespace pipward::place
