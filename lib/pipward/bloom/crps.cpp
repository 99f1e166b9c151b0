// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/crps.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "pipward/math/distributions.h"

namespace pipward::bloom::detail {

double crps_of_sample(std::span<const double> sorted, double observed) {
    // mean |x - y| less half the mean |x - x'|, the latter from the order of the values.
    const auto n = static_cast<double>(sorted.size());
    double apart = 0;
    double between = 0;
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        apart += std::abs(sorted[i] - observed);
        between += (2 * static_cast<double>(i) + 1 - n) * sorted[i];
    }
    return apart / n - between / (n * n);
}

double crps_of_normal(double mean, double sd, double observed) {
    const double z = (observed - mean) / sd;
    const double density = math::normal_density(z, 1);
    return sd * (z * (2 * math::normal_below(z) - 1) + 2 * density - std::numbers::inv_sqrtpi);
}

double place_among(std::span<const double> sorted, double observed) {
    const auto equal = std::ranges::equal_range(sorted, observed);
    const auto below = static_cast<double>(equal.begin() - sorted.begin());
    return (below + static_cast<double>(equal.size()) / 2) / static_cast<double>(sorted.size());
}

}  // namespace pipward::bloom::detail
