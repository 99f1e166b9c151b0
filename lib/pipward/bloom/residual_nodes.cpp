// SPDX-License-Identifier: MIT
#include <array>
#include <cmath>

#include "pipward/bloom/forecast.h"
#include "pipward/math/distributions.h"

namespace pipward::bloom {
namespace {

constexpr int node_count =
    9;  // odd, so that one is the middle; its square times the members are a window's days
constexpr double freedom = 4;  // as math::student_weight, which the fit trusts notes by

// The middle of each of equally likely slices, stretched to standard deviation 1.
std::array<double, node_count> make_nodes() {
    std::array<double, node_count> nodes{};
    double squares = 0;
    for (int i = 0; i < node_count; ++i) {
        const bool middle = 2 * i + 1 == node_count;
        nodes[i] = middle ? 0 : math::student_quantile((i + 0.5) / node_count, freedom);
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
