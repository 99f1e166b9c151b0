// SPDX-License-Identifier: MIT
#include "pipward/math/shares.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "pipward/math/distributions.h"

namespace pipward::math {

ShareInterval wilson_interval(int hits, int of, double confidence) {
    if (of <= 0) {
        return {};
    }
    const double z = normal_quantile((1 + confidence) / 2);
    const double n = of;
    const double share = hits / n;
    const double middle = share + z * z / (2 * n);
    const double half = z * std::sqrt(share * (1 - share) / n + z * z / (4 * n * n));
    const double whole = 1 + z * z / n;
    return {std::max(0.0, (middle - half) / whole), std::min(1.0, (middle + half) / whole)};
}

double fisher_exact(HitsOf a, HitsOf b) {
    if (a.of == 0 || b.of == 0) {
        return 1;
    }
    const int hits = a.hits + b.hits;
    const auto chance_of = [&](int of_a) { return hypergeometric(of_a, hits, a.of, a.of + b.of); };
    // Outcomes equally likely as the seen one differ from it in the last bits.
    const double seen = chance_of(a.hits) * (1 + 1e-9);
    double p = 0;
    for (int of_a = std::max(0, hits - b.of); of_a <= std::min(hits, a.of); ++of_a) {
        const double likely = chance_of(of_a);
        p += likely <= seen ? likely : 0;
    }
    return std::min(p, 1.0);
}

double smallest_possible_p(int a, int b) {
    return fisher_exact({a, a}, {0, b});
}

int number_to_settle(double share, double other, double alpha, double power) {
    const double z_alpha = normal_quantile(1 - alpha / 2);
    const double z_power = normal_quantile(power);
    const double middle = (share + other) / 2;
    const double alike = std::sqrt(2 * middle * (1 - middle));
    const double apart = std::sqrt(share * (1 - share) + other * (1 - other));
    const double root = (z_alpha * alike + z_power * apart) / (share - other);
    return static_cast<int>(std::ceil(root * root));
}

std::vector<double> holm_adjusted(std::span<const double> p) {
    std::vector<std::size_t> order(p.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return p[i]; });
    std::vector<double> adjusted(p.size());
    double so_far = 0;
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        so_far = std::max(so_far, std::min(1.0, p[order[rank]] * static_cast<double>(p.size() - rank)));
        adjusted[order[rank]] = so_far;
    }
    return adjusted;
}

}  // namespace pipward::math
