// SPDX-License-Identifier: MIT
#include "pipward/cross/normal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pipward::cross {

double normal_below(double z) {
    return std::erfc(-z / std::numbers::sqrt2) / 2;
}

double normal_quantile(double chance) {
    const double wanted = std::clamp(chance, 0.0001, 0.9999);
    double low = -4;
    double high = 4;
    while (high - low > 1e-12) {
        const double middle = (low + high) / 2;
        (normal_below(middle) < wanted ? low : high) = middle;
    }
    return (low + high) / 2;
}

std::optional<int> quantile(std::vector<int> values, double chance) {
    if (values.empty()) {
        return std::nullopt;
    }
    const double rank = std::ceil(chance * static_cast<double>(values.size()) - 1e-9) - 1;
    const auto last = static_cast<double>(values.size() - 1);
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(std::clamp(rank, 0.0, last));
    std::ranges::nth_element(values, at);
    return *at;
}

}  // namespace pipward::cross
