// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/spread.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "pipward/bloom/detail/pooling.h"
#include "pipward/math/squared.h"

namespace pipward::bloom::detail {
namespace {

constexpr double prior_sd = 3.5;         // days, of season and own together; split as shared_luck has it
constexpr double prior_seasons = 3;      // of both, and of spare rows within seasons
constexpr double least_season_sd = 0.5;  // days; no model knows a spring to the hour
constexpr double own_prior_rows = 8;     // what an accession's own spread is believed before it shows

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

// Squares of an accession's departures beside its season's, as they would be were the mean known.
struct Squares {
    double sum = 0;
    double worth = 0;
};

std::vector<Squares> own_squares(std::span<const SpreadRow> rows, const std::vector<SeasonMean>& means,
                                 int accession_count) {
    std::vector<Squares> own(accession_count);
    for (const auto& row : rows) {
        const auto& season = means[row.season];
        if (season.trust > 1) {
            const double told = 1 - 1 / season.trust;
            own[row.accession].sum += row.trust * math::squared(row.departure - season.mean);
            own[row.accession].worth += row.trust * told;
        }
    }
    return own;
}

// About 0 and not about their mean, for a bias is an error as well. Each season's mean holds the noise of its
// own rows, own / rows, which is taken off: the method of moments of a one-way layout.
double season_variance(const std::vector<SeasonMean>& means, double own) {
    double squares = 0;
    double seasons = 0;
    for (const auto& season : means) {
        if (season.trust > 0) {
            const double worth = std::min(1.0, season.trust);
            squares += worth * (math::squared(season.mean) - own / std::max(1.0, season.trust));
            seasons += worth;
        }
    }
    const double prior = shared_luck * math::squared(prior_sd);
    const double variance = (prior_seasons * prior + squares) / (prior_seasons + seasons);
    return std::max(math::squared(least_season_sd), variance);
}

double whole_variance(const std::vector<SeasonMean>& means) {
    double squares = prior_seasons * math::squared(prior_sd);
    double seasons = prior_seasons;
    for (const auto& season : means) {
        squares += std::min(1.0, season.trust) * math::squared(season.mean);
        seasons += std::min(1.0, season.trust);
    }
    return squares / seasons;
}

}  // namespace

Spread season_and_own_spread(std::span<const SpreadRow> rows, int season_count, int accession_count) {
    const auto means = season_means(rows, season_count);
    const auto own = own_squares(rows, means, accession_count);
    Squares all{prior_seasons * (1 - shared_luck) * math::squared(prior_sd), prior_seasons};
    double told = 0;
    for (const auto& [sum, worth] : own) {
        all.sum += sum;
        all.worth += worth;
        told += worth;
    }
    const double whole = whole_variance(means);
    const double own_variance = told > 0 ? all.sum / all.worth : (1 - shared_luck) * whole;
    const double shared = told > 0 ? season_variance(means, own_variance) : shared_luck * whole;

    Spread spread{std::sqrt(shared), std::sqrt(own_variance), {}, 0};
    for (const auto& [sum, worth] : own) {
        spread.own_sd_of.push_back(
            std::sqrt((own_prior_rows * own_variance + sum) / (own_prior_rows + worth)));
    }
    const auto noted = std::ranges::count_if(means, [](const SeasonMean& s) { return s.trust > 0; });
    spread.seasons = static_cast<int>(noted);
    return spread;
}

}  // namespace pipward::bloom::detail
