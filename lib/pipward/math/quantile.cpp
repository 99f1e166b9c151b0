// SPDX-License-Identifier: MIT
#include "pipward/math/quantile.h"

#include <numeric>

namespace pipward::math {

double mean(std::span<const double> values) {
    return values.empty()
               ? 0.0
               : std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

double median(std::vector<double> values) {
    if (values.empty()) {
        return 0;
    }
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return values.size() % 2 == 1 ? *middle : (*std::max_element(values.begin(), middle) + *middle) / 2;
}

double sample_quantile(std::vector<double>& values, double chance) {
    const double at = chance * static_cast<double>(values.size()) - 0.5;
    const double inside = std::clamp(at, 0.0, static_cast<double>(values.size() - 1));
    const auto below = values.begin() + static_cast<std::ptrdiff_t>(inside);
    std::ranges::nth_element(values, below);
    if (below + 1 == values.end()) {
        return *below;
    }
    const double above = *std::min_element(below + 1, values.end());
    return *below + (inside - std::floor(inside)) * (above - *below);
}

}  // namespace pipward::math
