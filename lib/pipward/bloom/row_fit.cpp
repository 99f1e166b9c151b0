// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/row_fit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <set>

#include "pipward/bloom/detail/spread.h"
#include "pipward/math/quantile.h"
#include "pipward/math/robust.h"
#include "pipward/math/squared.h"

namespace pipward::bloom::detail {
namespace {

// A structure weighs exp(-loss / (2 sigma^2) - penalty / 2), its posterior chance were errors normal
// (Bayesian model averaging: Hoeting, Madigan, Raftery & Volinsky 1999, Stat. Sci. 14:382, from memory).
// Sigma was chosen with open series in view, as the penalties were (docs/method.md, section 5).
constexpr double weight_sigma = 5;     // days; blunter than the residuals are, as few springs are seen
constexpr double loss_bend = 8;        // days: as unlikely_days of model_findings.h
constexpr double least_weight = 1e-5;  // of a structure, against the heaviest
constexpr int trust_rounds = 4;        // one with full trust in all, then three by what the fit before left
// A row that its own weight pulls harder than this would have its departure blown up more than fourfold.
constexpr double largest_leverage = 0.75;
// The usual departure of one accession beside the season's luck, before any note. Our own figures, by
// judgement.
constexpr double prior_scale = 3.0;  // days, worth three notes
constexpr double prior_scale_worth = 3;
constexpr double smallest_scale = 1.5;          // days
constexpr double usual_season_departure = 3.0;  // days
constexpr double drift_stands_still = 0.7;      // before a note was made
// What a model misses of a changing climate goes on changing, either way: half a day a decade is a third of
// what bloom itself moves by. By judgement.
constexpr std::array drift_trends{YearlyTrend{-0.05, 0.25}, YearlyTrend{0, 0.5}, YearlyTrend{0.05, 0.25}};

struct Work {
    const FitTable& table;
    RowFit fit;
    std::vector<std::vector<double>> residuals;  // by row, one a structure
    std::vector<double> averaged;                // by row

    const FitRow& row(std::size_t i) const { return table.rows[fit.rows[i]]; }
    std::size_t count() const { return fit.rows.size(); }
    double row_weight(std::size_t i) const { return row(i).weight * fit.trust[i]; }
    PoolShape shape(int amounts) const {
        return {static_cast<int>(table.accessions.size()),
                static_cast<int>(table.seasons.size()),
                amounts,
                table.species_of,
                table.genus_of,
                fit.strength.looseness};
    }
};

std::vector<PoolRow> amount_rows(const Work& work) {
    std::vector<PoolRow> rows;
    for (std::size_t i = 0; i < work.count(); ++i) {
        const auto& row = work.row(i);
        rows.push_back({row.accession, row.season, work.row_weight(i), row.amounts});
    }
    return rows;
}

std::vector<PoolRow> day_rows(const Work& work) {
    auto rows = amount_rows(work);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].amounts = {&work.row(i).observed, 1};
    }
    return rows;
}

void fit_needs(Work& work) {
    const int structures = static_cast<int>(structures_of(work.table.method).size());
    work.fit.strength.looseness.clear();
    work.fit.strength = pool_strength(day_rows(work), work.shape(1));
    work.fit.pooled = pool_needs(amount_rows(work), work.shape(structures), work.fit.strength.pull);
}

void fit_residuals(Work& work) {
    work.residuals.resize(work.count());
    for (std::size_t i = 0; i < work.count(); ++i) {
        const auto& row = work.row(i);
        const auto& need = work.fit.pooled.needs[row.accession];
        work.residuals[i].resize(need.size());
        for (std::size_t j = 0; j < need.size(); ++j) {
            work.residuals[i][j] = day_of((*row.runs)[j], need[j]) - row.observed;
        }
    }
}

// Squared error of each structure: within a season averaged over its rows, then counted as many times as the
// rows are worth together.
std::vector<double> structure_losses(const Work& work) {
    const std::size_t structures = structures_of(work.table.method).size();
    std::vector<double> season_weight(work.table.seasons.size());
    for (std::size_t i = 0; i < work.count(); ++i) {
        season_weight[work.row(i).season] += work.row_weight(i);
    }
    std::vector<double> losses(structures);
    for (std::size_t i = 0; i < work.count(); ++i) {
        const double total = season_weight[work.row(i).season];
        const double share = effective_number(total) * work.row_weight(i) / total;
        for (std::size_t j = 0; j < structures; ++j) {
            losses[j] += share * math::huber_loss(work.residuals[i][j], loss_bend);
        }
    }
    return losses;
}

void keep_best_only(std::vector<double>& weights, const std::vector<double>& losses) {
    const auto best = std::ranges::min_element(losses) - losses.begin();
    std::ranges::fill(weights, 0.0);
    weights[best] = 1;
}

void weigh_all(std::vector<double>& weights, const std::vector<double>& losses,
               std::span<const Structure> structures) {
    for (std::size_t j = 0; j < weights.size(); ++j) {
        weights[j] = -losses[j] / (2 * math::squared(weight_sigma)) - structures[j].penalty / 2;
    }
    const double heaviest = *std::ranges::max_element(weights);
    for (double& weight : weights) {
        weight = std::exp(weight - heaviest);
        weight = weight < least_weight ? 0 : weight;
    }
    const double total = std::accumulate(weights.begin(), weights.end(), 0.0);
    for (double& weight : weights) {
        weight /= total;
    }
}

void fit_weights(Work& work) {
    const auto structures = structures_of(work.table.method);
    const auto losses = structure_losses(work);
    work.fit.weights.resize(structures.size());
    if (work.table.method == BloomMethod::averaged) {
        weigh_all(work.fit.weights, losses, structures);
    } else {
        keep_best_only(work.fit.weights, losses);
    }
}

// How much a row's own weight pulls its forecast day: through its accession's mean, and through the centre. A
// residual over 1 - leverage is the one that the row would have were it left out of a linear fit (Allen 1974,
// Technometrics 16:125, from memory); ours is linear in the amounts and nearly so in days.
double leverage(const Work& work, std::size_t i, double total) {
    const double own = work.row_weight(i);
    const double worth = work.fit.pooled.worth[work.row(i).accession];
    const double pull = work.fit.strength.pull * work.fit.strength.looseness[work.row(i).accession];
    return std::min(largest_leverage, own / (worth + pull) * (1 + pull / total));
}

void fit_departures(Work& work) {
    double total = 0;
    for (std::size_t i = 0; i < work.count(); ++i) {
        total += work.row_weight(i);
    }
    work.fit.departures.resize(work.count());
    for (std::size_t i = 0; i < work.count(); ++i) {
        const double averaged = std::inner_product(work.residuals[i].begin(), work.residuals[i].end(),
                                                   work.fit.weights.begin(), 0.0);
        work.fit.departures[i] = averaged / (1 - leverage(work, i, total));
    }
}

void fit_luck(Work& work) {
    std::vector<std::vector<double>> of_season(work.table.seasons.size());
    for (std::size_t i = 0; i < work.count(); ++i) {
        of_season[work.row(i).season].push_back(work.fit.departures[i]);
    }
    constexpr std::size_t fewest = 3;  // of two one cannot say which is the odd one
    std::vector<double> medians;
    for (auto& season : of_season) {
        medians.push_back(season.size() < fewest ? 0 : math::median(std::move(season)));
    }
    work.fit.luck.resize(work.count());
    for (std::size_t i = 0; i < work.count(); ++i) {
        work.fit.luck[i] = medians[work.row(i).season];
    }
}

// Departures beside the season's luck and the accession's own: notes of one variety that agree are its truth,
// however far it stands from its kind.
std::vector<double> apart_from_own(const Work& work) {
    constexpr std::size_t fewest = 3;
    std::vector<std::vector<double>> of_accession(work.table.accessions.size());
    for (std::size_t i = 0; i < work.count(); ++i) {
        of_accession[work.row(i).accession].push_back(work.fit.departures[i] - work.fit.luck[i]);
    }
    std::vector<double> own;
    for (const auto& departures : of_accession) {
        own.push_back(departures.size() < fewest ? 0 : math::median(departures));
    }
    std::vector<double> apart(work.count());
    for (std::size_t i = 0; i < work.count(); ++i) {
        apart[i] = work.fit.departures[i] - work.fit.luck[i] - own[work.row(i).accession];
    }
    return apart;
}

void fit_trust(Work& work) {
    fit_luck(work);
    const auto apart = apart_from_own(work);
    const auto n = static_cast<double>(work.count());
    const double seen = math::robust_sd(apart);
    work.fit.scale = std::sqrt((prior_scale_worth * math::squared(prior_scale) + n * math::squared(seen)) /
                               (prior_scale_worth + n));
    work.fit.scale = std::max(smallest_scale, work.fit.scale);
    for (std::size_t i = 0; i < work.count(); ++i) {
        work.fit.trust[i] = math::student_weight(apart[i] / work.fit.scale);
    }
}

// Late and early springs must widen the windows, slips of the pen must not.
double spread_trust(const Work& work, std::size_t i) {
    return math::slip_weight(work.fit.apart[i] / work.fit.scale);
}

// With the weather known a method's own error may drift over the years: gauges are moved, trees grow old,
// other eyes take the notes. Plain means do without: what drifts with them is the climate.
void fit_drift(Work& work) {
    if (work.table.method != BloomMethod::averaged) {
        return;
    }
    std::vector<double> sums(work.table.seasons.size());
    std::vector<double> trust(work.table.seasons.size());
    for (std::size_t i = 0; i < work.count(); ++i) {
        sums[work.row(i).season] += spread_trust(work, i) * work.fit.departures[i];
        trust[work.row(i).season] += spread_trust(work, i);
    }
    std::vector<YearValue> means;
    for (std::size_t season = 0; season < sums.size(); ++season) {
        if (trust[season] > 0) {
            means.push_back({work.table.seasons[season].year, sums[season] / trust[season]});
        }
    }
    work.fit.drift =
        WanderingLevel(std::move(means), usual_season_departure, drift_stands_still, drift_trends);
}

double drift_in(const RowFit& fitted, Season season) {
    return fitted.drift.at(season.year).mean;
}

void fit_spread(Work& work) {
    const int species = static_cast<int>(work.table.species.size());
    std::vector<SpreadRow> rows;
    std::set<int> seasons;
    for (std::size_t i = 0; i < work.count(); ++i) {
        const auto& row = work.row(i);
        const double drift = drift_in(work.fit, work.table.seasons[row.season]);
        rows.push_back({row.season * species + work.table.species_of[row.accession], row.accession,
                        work.fit.departures[i] - drift, spread_trust(work, i)});
        seasons.insert(row.season);
    }
    const auto spread = season_and_own_spread(rows, static_cast<int>(work.table.seasons.size()) * species,
                                              static_cast<int>(work.table.accessions.size()));
    work.fit.season_sd_days = spread.season_sd;
    work.fit.own_sd_days = spread.own_sd;
    work.fit.own_sd_of = spread.own_sd_of;
    work.fit.seasons = static_cast<int>(seasons.size());
}

}  // namespace

RowFit fit_rows(const FitTable& table, std::vector<int> rows) {
    Work work{table, {}, {}, {}};
    work.fit.rows = std::move(rows);
    work.fit.trust.assign(work.count(), 1.0);
    for (int round = 0; round < trust_rounds; ++round) {
        if (round > 0) {
            fit_trust(work);
        }
        fit_needs(work);
        fit_residuals(work);
        fit_weights(work);
        fit_departures(work);
    }
    fit_luck(work);
    work.fit.apart = apart_from_own(work);
    fit_drift(work);
    fit_spread(work);
    return std::move(work.fit);
}

double weighted_day(std::span<const double> weights, std::span<const double> amounts,
                    std::span<const StructureRun> runs) {
    double day = 0;
    for (std::size_t j = 0; j < weights.size(); ++j) {
        if (weights[j] > 0) {
            day += weights[j] * day_of(runs[j], amounts[j]);
        }
    }
    return day;
}

double forecast_day(const RowFit& fitted, int accession, std::span<const StructureRun> runs, Season season) {
    return weighted_day(fitted.weights, fitted.pooled.needs[accession], runs) - drift_in(fitted, season);
}

double need_sd_days(const RowFit& fitted, double worth) {
    const double own = math::squared(fitted.own_sd_days) / (worth + fitted.strength.pull);
    const double luck = math::squared(fitted.season_sd_days) / std::max(1, fitted.seasons);
    return std::sqrt(own + luck);
}

}  // namespace pipward::bloom::detail
