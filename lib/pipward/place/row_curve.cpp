// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_curve.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "pipward/math/least_squares.h"
#include "pipward/math/robust.h"
#include "pipward/place/detail/row_noise.h"

namespace pipward::place::detail {
namespace {

using math::PlanePoint;

struct Basis {
    std::size_t first = 0;
    std::array<double, 4> value{};
    std::array<double, 4> slope{};  // a knot's interval
};

/// The four cubic B-splines that are not 0 at `u` intervals from the first knot.
Basis basis_at(double u, std::size_t intervals) {
    const double cell = std::clamp(std::floor(u), 0.0, static_cast<double>(intervals) - 1);
    const double t = u - cell;
    const double s = 1 - t;
    return {static_cast<std::size_t>(cell),
            {s * s * s / 6, (3 * t * t * t - 6 * t * t + 4) / 6, (-3 * t * t * t + 3 * t * t + 3 * t + 1) / 6,
             t * t * t / 6},
            {-s * s / 2, (9 * t * t - 12 * t) / 6, (-9 * t * t + 6 * t + 3) / 6, t * t / 2}};
}

}  // namespace

RowCurve::RowCurve(std::span<const PlanePoint> trees, PlanePoint ahead, double knot)
    : origin_(trees.front()), ahead_(ahead), left_(left_of(ahead)) {
    low_ = 1e300;
    high_ = -1e300;
    for (const auto& tree : trees) {
        const double x = dot(tree - origin_, ahead_);
        low_ = std::min(low_, x);
        high_ = std::max(high_, x);
    }
    fit(trees, knot);
    measure();
}

void RowCurve::fit(std::span<const PlanePoint> trees, double knot) {
    const double length = std::max(high_ - low_, 1e-6);
    const auto most = std::max<std::size_t>(trees.size() / 4, 1);
    const auto intervals = std::clamp<std::size_t>(static_cast<std::size_t>(length / knot), 1, most);
    width_ = length / static_cast<double>(intervals);
    height_.assign(intervals + 3, 0.0);
    std::vector<double> sizes(trees.size(), 1.0);
    double scale = 1;
    for (int turn = 0; turn < 4; ++turn) {
        math::LeastSquares squares(std::vector<double>(height_.size(), 1e4));
        std::vector<double> terms(height_.size());
        const auto add = [&](const Basis& basis, const std::array<double, 4>& factors, double value,
                             double weight) {
            std::ranges::fill(terms, 0.0);
            for (std::size_t k = 0; k < 4; ++k) {
                terms[basis.first + k] = factors[k];
            }
            squares.add(terms, value, weight);
        };
        std::vector<double> offs;
        for (const auto& tree : trees) {
            const auto way = tree - origin_;
            const double x = dot(way, ahead_);
            const double y = dot(way, left_);
            const double off = y - height(x).value;
            offs.push_back(off);
            add(basis_at((x - low_) / width_, intervals), basis_at((x - low_) / width_, intervals).value, y,
                turn == 0 ? 1.0 : math::huber_weight(off, scale));
        }
        // A gentle pull to straight: few trees do not bend a row.
        for (std::size_t k = 0; k + 2 < height_.size(); ++k) {
            std::ranges::fill(terms, 0.0);
            terms[k] = 1;
            terms[k + 1] = -2;
            terms[k + 2] = 1;
            squares.add(terms, 0, 0.02);
        }
        height_ = squares.solve();
        offs.clear();
        for (const auto& tree : trees) {
            const auto way = tree - origin_;
            offs.push_back(dot(way, left_) - height(dot(way, ahead_)).value);
        }
        scale = std::max(median_noise(offs), 0.02);
    }
}

RowCurve::Height RowCurve::height(double x) const {
    const double inside = std::clamp(x, low_, high_);
    const auto intervals = height_.size() - 3;
    const auto basis = basis_at((inside - low_) / width_, intervals);
    Height result;
    for (std::size_t k = 0; k < 4; ++k) {
        result.value += basis.value[k] * height_[basis.first + k];
        result.slope += basis.slope[k] * height_[basis.first + k] / width_;
    }
    result.value += (x - inside) * result.slope;
    return result;
}

void RowCurve::measure() {
    const auto steps = static_cast<std::size_t>(std::ceil((high_ - low_) / 0.5)) + 1;
    table_step_ = std::max((high_ - low_) / static_cast<double>(steps), 1e-9);
    table_ = {0.0};
    for (std::size_t i = 1; i <= steps; ++i) {
        const double x = low_ + (static_cast<double>(i) - 0.5) * table_step_;
        table_.push_back(table_.back() + table_step_ * std::hypot(1.0, height(x).slope));
    }
}

double RowCurve::along_of(double x) const {
    if (x <= low_) {
        return (x - low_) * std::hypot(1.0, height(low_).slope);
    }
    if (x >= high_) {
        return table_.back() + (x - high_) * std::hypot(1.0, height(high_).slope);
    }
    const double at = (x - low_) / table_step_;
    const auto i = std::min(static_cast<std::size_t>(at), table_.size() - 2);
    return table_[i] + (at - static_cast<double>(i)) * (table_[i + 1] - table_[i]);
}

double RowCurve::x_of(double along) const {
    if (along <= 0) {
        return low_ + along / std::hypot(1.0, height(low_).slope);
    }
    if (along >= table_.back()) {
        return high_ + (along - table_.back()) / std::hypot(1.0, height(high_).slope);
    }
    const auto next = std::ranges::upper_bound(table_, along) - table_.begin();
    const auto i = static_cast<std::size_t>(next - 1);
    return low_ + table_step_ * (static_cast<double>(i) + (along - table_[i]) / (table_[i + 1] - table_[i]));
}

RowFoot RowCurve::foot(PlanePoint point) const {
    const auto way = point - origin_;
    const double x = dot(way, ahead_);
    const double y = dot(way, left_);
    double foot = x;
    for (int turn = 0; turn < 3; ++turn) {
        const auto here = height(foot);
        foot += ((x - foot) + (y - here.value) * here.slope) / (1 + here.slope * here.slope);
    }
    const auto here = height(foot);
    const double size = std::hypot(x - foot, y - here.value);
    const double left = (y - here.value) - (x - foot) * here.slope;
    return {along_of(foot), left > 0 ? -size : size};
}

PlanePoint RowCurve::at(double along) const {
    const double x = x_of(along);
    return origin_ + ahead_ * x + left_ * height(x).value;
}

}  // namespace pipward::place::detail
