// SPDX-License-Identifier: MIT
#include <array>
#include <cmath>

#include "pipward/bloom/forecast.h"

namespace pipward::bloom {
namespace {

constexpr int node_count = 9;

// Quantile of Student's t with 4 degrees of freedom, in closed form (Shaw 2006, J. Comput. Finance 9(4):37;
// from memory).
double student4_quantile(double probability) {
    const double alpha = 4 * probability * (1 - probability);
    const double root = std::sqrt(alpha);
    const double ratio = std::cos(std::acos(root) / 3) / root;
    return std::copysign(2 * std::sqrt(ratio - 1), probability - 0.5);
}

// The middle of each of equally likely slices, stretched to standard deviation 1.
std::array<double, node_count> make_nodes() {
    std::array<double, node_count> nodes{};
    double squares = 0;
    for (int i = 0; i < node_count; ++i) {
        const bool middle = 2 * i + 1 == node_count;
        nodes[i] = middle ? 0 : student4_quantile((i + 0.5) / node_count);
        squares += nodes[i] * nodes[i];
    }
    for (double& node : nodes) {
        node /= std::sqrt(squares / node_count);
    }
    return nodes;
}

}  // namespace

std::span<const double> residual_nodes() {
    static const auto nodes = make_nodes();
    return nodes;
}

}  // namespace pipward::bloom
