// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/spread.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "pipward/bloom/detail/pooling.h"

namespace pipward::bloom::detail {
namespace {

constexpr double prior_sd = 3.5;         // days, of season and own together; split as shared_luck has it
constexpr double prior_seasons = 3;      // of both, and of spare rows within seasons
constexpr double least_season_sd = 0.5;  // days; no model knows a spring to the hour

double squared(double value) {
    return value * value;
}

struct SeasonMean {
    double trust = 0;
    double mean = 0;
};

std::vector<SeasonMean> season_means(std::span<const SpreadRow> rows, int season_count) {
    std::vector<SeasonMean> means(season_count);
    for (const auto& row : rows) {
        means[row.season].trust += row.trust;
        means[row.season].mean += row.trust * row.departure;
    }
    for (auto& season : means) {
        season.mean = season.trust > 0 ? season.mean / season.trust : 0;
    }
    return means;
}

// Squares about the season's mean over degrees of freedom: one less than the rows of each season.
double own_variance(std::span<const SpreadRow> rows, const std::vector<SeasonMean>& means) {
    double squares = 0;
    double spare = 0;
    for (const auto& row : rows) {
        squares += row.trust * squared(row.departure - means[row.season].mean);
    }
    for (const auto& season : means) {
        spare += std::max(0.0, season.trust - 1);
    }
    const double prior = (1 - shared_luck) * squared(prior_sd);
    return (prior_seasons * prior + (spare > 0 ? squares : 0)) / (prior_seasons + spare);
}

// About 0 and not about their mean, for a bias is an error as well. Each season's mean holds the noise of its
// own rows, own / rows, which is taken off: the method of moments of a one-way layout.
double season_variance(const std::vector<SeasonMean>& means, double own) {
    double squares = 0;
    double seasons = 0;
    for (const auto& season : means) {
        if (season.trust > 0) {
            const double worth = std::min(1.0, season.trust);
            squares += worth * (squared(season.mean) - own / std::max(1.0, season.trust));
            seasons += worth;
        }
    }
    const double prior = shared_luck * squared(prior_sd);
    const double variance = (prior_seasons * prior + squares) / (prior_seasons + seasons);
    return std::max(squared(least_season_sd), variance);
}

}  // namespace

Spread season_and_own_spread(std::span<const SpreadRow> rows, int season_count) {
    const auto means = season_means(rows, season_count);
    const double own = own_variance(rows, means);
    const auto seasons = std::ranges::count_if(means, [](const SeasonMean& s) { return s.trust > 0; });
    return {std::sqrt(season_variance(means, own)), std::sqrt(own), static_cast<int>(seasons)};
}

}  // namespace pipward::bloom::detail
