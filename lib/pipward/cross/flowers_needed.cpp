// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/flowers_needed.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "pipward/math/distributions.h"
#include "pipward/math/squared.h"

namespace pipward::cross::detail {
namespace {

constexpr double most_flowers = 1e9;
constexpr double surest = 0.9999;  // certainty itself would need endlessly many flowers

// A fruit's seeds vary, each seed may fail, and the flower may set no fruit at all: the second moment of the
// seedlings of a fruit (variance of a sum of a random number of chances, and its mean squared), times the
// chance of a fruit, less the mean of all squared.
double variance_per_flower(const FlowerFate& fate) {
    const double g = fate.seed_to_seedling;
    const double mu = fate.seeds_per_fruit;
    const double of_a_fruit =
        math::squared(g) * fate.seeds_per_fruit_variance + g * (1 - g) * mu + math::squared(g * mu);
    return std::max(0.0, fate.fruit_set * of_a_fruit - math::squared(seedlings_per_flower(fate)));
}

// n m - z sqrt(n v) = wanted, solved for sqrt(n).
int flowers_of_one_set(int wanted, const FlowerFate& fate, double sure) {
    const double mean = seedlings_per_flower(fate);
    const double variance = variance_per_flower(fate);
    const double z = math::normal_quantile(sure);
    const double root =
        (z * std::sqrt(variance) + std::sqrt(math::squared(z) * variance + 4 * mean * wanted)) / (2 * mean);
    return static_cast<int>(std::min(std::ceil(math::squared(root) - 1e-9), most_flowers));
}

struct PerFlower {
    double mean = 0;
    double variance = 0;
};

// What a flower gives in equally likely crosses: the set is a quantile of the beta distribution of this mean
// and standard deviation.
std::vector<PerFlower> sets_of(FlowerFate fate) {
    constexpr int crosses = 400;
    const double mean = fate.fruit_set;
    const double most = 0.98 * std::sqrt(mean * (1 - mean));  // a beta distribution spreads no wider
    const double sd = std::min(fate.fruit_set_sd, most);
    const double size = mean * (1 - mean) / math::squared(sd) - 1;
    std::vector<PerFlower> all;
    for (int i = 0; i < crosses; ++i) {
        fate.fruit_set = math::beta_quantile((i + 0.5) / crosses, mean * size, (1 - mean) * size);
        all.push_back({seedlings_per_flower(fate), variance_per_flower(fate)});
    }
    return all;
}

double chance_of_too_few(int wanted, double flowers, const std::vector<PerFlower>& crosses) {
    double sum = 0;
    for (const auto& cross : crosses) {
        const double sd = std::sqrt(flowers * cross.variance);
        const double short_of = wanted - flowers * cross.mean;
        sum += sd > 0 ? math::normal_below(short_of / sd) : short_of > 0 ? 1 : 0;
    }
    return sum / static_cast<double>(crosses.size());
}

// The chance of too few falls with every flower more: doubled until it is small enough, then halved between.
int flowers_of_many_sets(int wanted, const std::vector<PerFlower>& crosses, double sure) {
    const auto enough = [&](double flowers) {
        return chance_of_too_few(wanted, flowers, crosses) <= 1 - sure;
    };
    double too_few = 0;
    double flowers = std::max(1, wanted);
    while (flowers < most_flowers && !enough(flowers)) {
        too_few = flowers;
        flowers *= 2;
    }
    while (flowers - too_few > 1) {
        const double middle = std::floor((too_few + flowers) / 2);
        (enough(middle) ? flowers : too_few) = middle;
    }
    return static_cast<int>(std::min(flowers, most_flowers));
}

}  // namespace

double seedlings_per_flower(const FlowerFate& fate) {
    return fate.fruit_set * fate.seeds_per_fruit * fate.seed_to_seedling;
}

int flowers_needed(int wanted, const FlowerFate& fate, double confidence) {
    if (wanted <= 0) {
        return 0;
    }
    if (!(seedlings_per_flower(fate) > 0)) {
        return -1;
    }
    const double sure = std::clamp(confidence, 0.5, surest);
    if (!(fate.fruit_set_sd > 0)) {
        return flowers_of_one_set(wanted, fate, sure);
    }
    return flowers_of_many_sets(wanted, sets_of(fate), sure);
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
