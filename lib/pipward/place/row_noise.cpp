// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_noise.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>
#include <vector>

#include "pipward/math/distributions.h"
#include "pipward/math/quantile.h"
#include "pipward/math/robust.h"

namespace pipward::place::detail {

using std::numbers::pi;

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

double heavy_tails(std::span<const double> offs, double sd) {
    const auto far = std::ranges::count_if(offs, [sd](double off) { return std::abs(off) > 3 * sd; });
    const auto all = static_cast<double>(std::max<std::size_t>(offs.size(), 1));
    // 0.27 % of normal values lie so far off, and 32 % of those whose error is three times as great.
    const double share = (static_cast<double>(far) / all - 0.006) / 0.32;
    return std::clamp(share, 0.0, 0.2);
}

double error_density(double off, double sd, double tails) {
    const double near = math::normal_density(off, sd);
    return tails > 0 ? (1 - tails) * near + tails * math::normal_density(off, 3 * sd) : near;
}

}  // namespace pipward::place::detail
