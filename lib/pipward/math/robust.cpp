// SPDX-License-Identifier: MIT
#include "pipward/math/robust.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "pipward/math/quantile.h"

namespace pipward::math {

double robust_sd(std::span<const double> values) {
    std::vector<double> distances;
    distances.reserve(values.size());
    for (const double value : values) {
        distances.push_back(std::abs(value));
    }
    return deviations_per_median * median(std::move(distances));
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

double huber_weight(double residual, double deviation) {
    const double bend = 1.5 * deviation;
    return std::abs(residual) <= bend ? 1.0 : bend / std::abs(residual);
}

}  // namespace pipward::math
