// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/crps.h"

#include <algorithm>
#include <cmath>

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

double place_among(std::span<const double> sorted, double observed) {
    const auto equal = std::ranges::equal_range(sorted, observed);
    const auto below = static_cast<double>(equal.begin() - sorted.begin());
    return (below + static_cast<double>(equal.size()) / 2) / static_cast<double>(sorted.size());
}

}  // namespace pipward::bloom::detail
