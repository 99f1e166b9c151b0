// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/flowers_needed.h"

#include <algorithm>
#include <cmath>

#include "pipward/math/distributions.h"

namespace pipward::cross::detail {
namespace {

constexpr double surest = 0.9999;  // certainty itself would need endlessly many flowers

double squared(double value) {
    return value * value;
}

// A fruit's seeds vary, each seed may fail, and the flower may set no fruit at all: the second moment of the
// seedlings of a fruit (variance of a sum of a random number of chances, and its mean squared), times the
// chance of a fruit, less the mean of all squared.
double variance_per_flower(const FlowerFate& fate) {
    const double g = fate.seed_to_seedling;
    const double mu = fate.seeds_per_fruit;
    const double of_a_fruit = squared(g) * fate.seeds_per_fruit_variance + g * (1 - g) * mu + squared(g * mu);
    return std::max(0.0, fate.fruit_set * of_a_fruit - squared(seedlings_per_flower(fate)));
}

}  // namespace

double seedlings_per_flower(const FlowerFate& fate) {
    return fate.fruit_set * fate.seeds_per_fruit * fate.seed_to_seedling;
}

int flowers_needed(int wanted, const FlowerFate& fate, double confidence) {
    const double mean = seedlings_per_flower(fate);
    if (wanted <= 0) {
        return 0;
    }
    if (!(mean > 0)) {
        return -1;
    }
    const double z = math::normal_quantile(std::clamp(confidence, 0.5, surest));
    const double variance = variance_per_flower(fate);
    // n m - z sqrt(n v) = wanted, solved for sqrt(n).
    const double root =
        (z * std::sqrt(variance) + std::sqrt(squared(z) * variance + 4 * mean * wanted)) / (2 * mean);
    const double flowers = std::ceil(squared(root) - 1e-9);
    return static_cast<int>(std::min(flowers, 1e9));
}

// The chance of too few falls with every plant more: doubled until it is small enough, then halved between.
int plants_needed(int wanted, double frequency, double confidence) {
    int too_few = wanted - 1;
    int enough = std::max(1, wanted);
    while (math::binomial_fewer(wanted, enough, frequency) > 1 - confidence) {
        too_few = enough;
        enough *= 2;
    }
    while (enough - too_few > 1) {
        const int middle = too_few + (enough - too_few) / 2;
        (math::binomial_fewer(wanted, middle, frequency) > 1 - confidence ? too_few : enough) = middle;
    }
    return enough;
}

}  // namespace pipward::cross::detail
