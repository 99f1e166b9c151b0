// SPDX-License-Identifier: MIT
#include "pipward/bloom/robust.h"

#include <algorithm>
#include <cmath>

namespace pipward::bloom {

double median_of(std::vector<double> values) {
    if (values.empty()) {
        return 0;
    }
    std::ranges::sort(values);
    const std::size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

double robust_sd(std::span<const double> values) {
    std::vector<double> distances;
    distances.reserve(values.size());
    for (const double value : values) {
        distances.push_back(std::abs(value));
    }
    return 1.4826 * median_of(std::move(distances));
}

double student_weight(double standardised) {
    constexpr double freedom = 4;
    return std::min(1.0, (freedom + 1) / (freedom + standardised * standardised));
}

double slip_weight(double standardised) {
    const double excess = std::max(1.0, std::abs(standardised) / unlikely_deviations);
    return 1 / (excess * excess * excess * excess);
}

double huber_loss(double residual, double bend) {
    const double size = std::abs(residual);
    return size <= bend ? size * size : bend * (2 * size - bend);
}

}  // namespace pipward::bloom
