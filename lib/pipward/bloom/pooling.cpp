// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/pooling.h"

#include <algorithm>
#include <cmath>

namespace pipward::bloom::detail {
namespace {

constexpr int rounds = 8;
// Variance of an accession's own departure over that of the season's luck.
constexpr double luck_pull = (1 - shared_luck) / shared_luck;

// What is believed before any note: a need is drawn to the centre by m = 2, the value that short records
// asked for (2.5 squared over 1.77 squared is 2). The belief in the spread within is worth five notes, that
// in the spread between four accessions. Our own figures, by judgement.
constexpr double prior_within_sd = 2.5;    // days
constexpr double prior_between_sd = 1.77;  // days
constexpr double prior_within_worth = 5;
constexpr double prior_between_worth = 4;
// However many notes there are: some pull stays, and none takes more than four good notes to overcome by
// half.
constexpr double weakest_pull = 0.1;
constexpr double strongest_pull = 4.0;

using Matrix = std::vector<std::vector<double>>;

Matrix zeros(int rows, int columns) {
    Matrix matrix(static_cast<std::size_t>(rows));
    for (auto& row : matrix) {
        row.assign(static_cast<std::size_t>(columns), 0.0);
    }
    return matrix;
}

void add_scaled(std::vector<double>& into, std::span<const double> values, double factor) {
    for (std::size_t i = 0; i < into.size(); ++i) {
        into[i] += factor * values[i];
    }
}

void scale(std::vector<double>& values, double factor) {
    for (double& value : values) {
        value *= factor;
    }
}

// Sums of weights by accession and season, and which seasons tell of luck.
struct Weights {
    std::vector<double> of_accession;
    std::vector<double> of_season;
    std::vector<bool> tells_luck;
};

Weights weights_of(std::span<const PoolRow> rows, PoolShape shape) {
    Weights weights{std::vector<double>(shape.accessions), std::vector<double>(shape.seasons),
                    std::vector<bool>(shape.seasons)};
    std::vector<int> first_seen(shape.seasons, -1);
    for (const auto& row : rows) {
        weights.of_accession[row.accession] += row.weight;
        weights.of_season[row.season] += row.weight;
        int& seen = first_seen[row.season];
        if (seen >= 0 && seen != row.accession) {
            weights.tells_luck[row.season] = true;
        }
        seen = seen < 0 ? row.accession : seen;
    }
    return weights;
}

Matrix accession_means(std::span<const PoolRow> rows, PoolShape shape, const Weights& weights,
                       const Matrix& luck) {
    Matrix means = zeros(shape.accessions, shape.amounts);
    for (const auto& row : rows) {
        add_scaled(means[row.accession], row.amounts, row.weight);
        add_scaled(means[row.accession], luck[row.season], -row.weight);
    }
    for (int a = 0; a < shape.accessions; ++a) {
        if (weights.of_accession[a] > 0) {
            scale(means[a], 1 / weights.of_accession[a]);
        }
    }
    return means;
}

// An accession counts by how much of its mean is kept: many notes of one cannot rule the orchard's mean.
std::vector<double> centre_of(const Matrix& means, const std::vector<double>& worth, double pull,
                              int amounts) {
    std::vector<double> centre(amounts);
    double total = 0;
    for (std::size_t a = 0; a < means.size(); ++a) {
        if (worth[a] > 0) {
            const double share = worth[a] / (worth[a] + pull);
            add_scaled(centre, means[a], share);
            total += share;
        }
    }
    scale(centre, total > 0 ? 1 / total : 0);
    return centre;
}

void draw_to_centre(Matrix& means, const std::vector<double>& centre, const std::vector<double>& worth,
                    double pull) {
    for (std::size_t a = 0; a < means.size(); ++a) {
        if (worth[a] <= 0) {
            means[a].clear();
            continue;
        }
        const double kept = worth[a] / (worth[a] + pull);
        scale(means[a], kept);
        add_scaled(means[a], centre, 1 - kept);
    }
}

// The mean departure of a season, drawn to zero as by luck_pull more notes that departed by nothing.
Matrix season_luck(std::span<const PoolRow> rows, PoolShape shape, const Weights& weights,
                   const Matrix& needs) {
    Matrix luck = zeros(shape.seasons, shape.amounts);
    for (const auto& row : rows) {
        if (weights.tells_luck[row.season]) {
            const double factor = row.weight / (weights.of_season[row.season] + luck_pull);
            add_scaled(luck[row.season], row.amounts, factor);
            add_scaled(luck[row.season], needs[row.accession], -factor);
        }
    }
    return luck;
}

double squared(double value) {
    return value * value;
}

int used_count(const std::vector<double>& worth) {
    return static_cast<int>(std::ranges::count_if(worth, [](double w) { return w > 0; }));
}

// Squares over degrees of freedom: as many as rows, less one for each accession and season, more one for the
// mean that both share.
double within_variance(std::span<const PoolRow> rows, PoolShape shape, const Pooled& free) {
    const auto weights = weights_of(rows, shape);
    const auto luck = season_luck(rows, shape, weights, free.needs);
    double squares = 0;
    for (const auto& row : rows) {
        squares += row.weight * squared(row.amounts[0] - free.needs[row.accession][0] - luck[row.season][0]);
    }
    const double fitted = used_count(weights.of_accession) + used_count(weights.of_season) - 1;
    const double spare = std::max(0.0, static_cast<double>(rows.size()) - fitted);
    return (prior_within_worth * squared(prior_within_sd) + (spare > 0 ? squares : 0)) /
           (prior_within_worth + spare);
}

// The squares of the means hold the noise of each mean as well, which is taken off; what is left is not
// negative.
double between_variance(const Pooled& free, double within) {
    double squares = 0;
    double noise = 0;
    for (std::size_t a = 0; a < free.needs.size(); ++a) {
        if (free.worth[a] > 0) {
            squares += squared(free.needs[a][0] - free.centre[0]);
            noise += within / free.worth[a];
        }
    }
    const int used = used_count(free.worth);
    const double spare = std::max(0, used - 1);
    const double seen = used > 0 ? std::max(0.0, squares - noise * spare / used) : 0;
    return (prior_between_worth * squared(prior_between_sd) + seen) / (prior_between_worth + spare);
}

}  // namespace

double effective_number(double observations) {
    return observations / (1 + std::max(0.0, observations - 1) * shared_luck);
}

Pooled pool_needs(std::span<const PoolRow> rows, PoolShape shape, double pull) {
    const auto weights = weights_of(rows, shape);
    Matrix luck = zeros(shape.seasons, shape.amounts);
    Pooled pooled;
    pooled.worth = weights.of_accession;
    for (int round = 0; round < rounds; ++round) {
        pooled.needs = accession_means(rows, shape, weights, luck);
        pooled.centre = centre_of(pooled.needs, pooled.worth, pull, shape.amounts);
        draw_to_centre(pooled.needs, pooled.centre, pooled.worth, pull);
        luck = season_luck(rows, shape, weights, pooled.needs);
    }
    return pooled;
}

PoolStrength pool_strength(std::span<const PoolRow> rows, PoolShape shape) {
    const auto free = pool_needs(rows, shape, 0);
    const double within = within_variance(rows, shape, free);
    const double between = between_variance(free, within);
    return {std::sqrt(within), std::sqrt(between),
            std::clamp(within / between, weakest_pull, strongest_pull)};
}

}  // namespace pipward::bloom::detail
