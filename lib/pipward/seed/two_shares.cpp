// SPDX-License-Identifier: MIT
#include "pipward/seed/two_shares.h"

#include <algorithm>
#include <boost/math/distributions/hypergeometric.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <numeric>

namespace pipward::seed {

double fisher_exact(HitsOf a, HitsOf b) {
    if (a.of == 0 || b.of == 0) {
        return 1;
    }
    const auto whole = [](int number) { return static_cast<unsigned>(number); };
    const int hits = a.hits + b.hits;
    const boost::math::hypergeometric outcomes(whole(hits), whole(a.of), whole(a.of + b.of));
    // Outcomes equally likely as the seen one differ from it in the last bits.
    const double seen = boost::math::pdf(outcomes, whole(a.hits)) * (1 + 1e-9);
    double p = 0;
    for (int of_a = std::max(0, hits - b.of); of_a <= std::min(hits, a.of); ++of_a) {
        const double likely = boost::math::pdf(outcomes, whole(of_a));
        p += likely <= seen ? likely : 0;
    }
    return std::min(p, 1.0);
}

double smallest_possible_p(int a, int b) {
    return fisher_exact({a, a}, {0, b});
}

int seeds_to_settle(double share, double other, double alpha, double power) {
    const boost::math::normal curve;
    const double z_alpha = boost::math::quantile(curve, 1 - alpha / 2);
    const double z_power = boost::math::quantile(curve, power);
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

}  // namespace pipward::seed
