// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/pooling.h"

#include <algorithm>
#include <cmath>

#include "pipward/math/robust.h"
#include "pipward/math/squared.h"

namespace pipward::bloom::detail {
namespace {

constexpr int rounds = 8;
// Parts of a departure's variance: all accessions', the species's beside it, the accession's own.
constexpr double luck_of_all = shared_luck;
constexpr double luck_of_species = shared_luck_in_species - shared_luck;
constexpr double luck_of_one = 1 - shared_luck_in_species;

// Species and genera differ far more than accessions of a species do, so a few noted accessions settle a
// centre.
constexpr double pull_to_genus = 0.25;
constexpr double pull_to_orchard = 0.1;

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
constexpr double least_looseness = 0.02;

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

Weights weights_of(std::span<const PoolRow> rows, const PoolShape& shape) {
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

// Luck by season and species, one a structure.
struct Luck {
    Matrix cells;
    int species = 1;

    std::vector<double>& at(int season, int of_species) { return cells[season * species + of_species]; }
    const std::vector<double>& at(int season, int of_species) const {
        return cells[season * species + of_species];
    }
};

Luck no_luck(const PoolShape& shape) {
    return {zeros(shape.seasons * shape.species_count(), shape.amounts), shape.species_count()};
}

Matrix accession_means(std::span<const PoolRow> rows, const PoolShape& shape, const Weights& weights,
                       const Luck& luck) {
    Matrix means = zeros(shape.accessions, shape.amounts);
    for (const auto& row : rows) {
        add_scaled(means[row.accession], row.amounts, row.weight);
        add_scaled(means[row.accession], luck.at(row.season, shape.species_of(row.accession)), -row.weight);
    }
    for (int a = 0; a < shape.accessions; ++a) {
        if (weights.of_accession[a] > 0) {
            scale(means[a], 1 / weights.of_accession[a]);
        }
    }
    return means;
}

// Weighted means of parts, collected by group.
struct Collected {
    Matrix sums;
    std::vector<double> worth;

    Collected(int groups, int amounts) : sums(zeros(groups, amounts)), worth(groups) {}
    void add(int group, std::span<const double> values, double share) {
        add_scaled(sums[group], values, share);
        worth[group] += share;
    }
    // The group's mean, drawn to `above` by `pull`.
    std::vector<double> drawn(int group, const std::vector<double>& above, double pull) const {
        auto mean = sums[group];
        add_scaled(mean, above, pull);
        const double total = worth[group] + pull;
        scale(mean, total > 0 ? 1 / total : 0);
        return mean;
    }
    std::vector<double> mean(int group) const {
        return drawn(group, std::vector<double>(sums[group].size()), 0);
    }
};

double share_of(double worth, double pull) {
    return worth / (worth + pull);
}

void find_centres(Pooled& pooled, const PoolShape& shape, double pull) {
    Collected species(shape.species_count(), shape.amounts);
    Collected genera(shape.genus_count(), shape.amounts);
    Collected orchard(1, shape.amounts);
    for (int a = 0; a < shape.accessions; ++a) {
        if (pooled.worth[a] > 0) {
            // What blooms far from its kind does not tell where its kind stands.
            species.add(shape.species_of(a), pooled.needs[a],
                        shape.looseness_of(a) * share_of(pooled.worth[a], pull));
        }
    }
    for (int s = 0; s < shape.species_count(); ++s) {
        if (species.worth[s] > 0) {
            genera.add(shape.genus_of(s), species.mean(s), share_of(species.worth[s], pull_to_genus));
        }
    }
    for (int g = 0; g < shape.genus_count(); ++g) {
        if (genera.worth[g] > 0) {
            orchard.add(0, genera.mean(g), share_of(genera.worth[g], pull_to_orchard));
        }
    }
    pooled.centre = orchard.mean(0);
    pooled.species_centres.clear();
    pooled.centre_of.clear();
    for (int s = 0; s < shape.species_count(); ++s) {
        const int genus = shape.genus_of(s);
        const auto above = genera.drawn(genus, pooled.centre, pull_to_orchard);
        pooled.species_centres.push_back(species.drawn(s, above, pull_to_genus));
        pooled.centre_of.push_back(species.worth[s] > 0      ? CentreOf::species
                                   : genera.worth[genus] > 0 ? CentreOf::genus
                                                             : CentreOf::orchard);
    }
}

void draw_to_centres(Pooled& pooled, const PoolShape& shape, double pull) {
    for (int a = 0; a < shape.accessions; ++a) {
        if (pooled.worth[a] <= 0) {
            pooled.needs[a].clear();
            continue;
        }
        const double kept = share_of(pooled.worth[a], pull * shape.looseness_of(a));
        scale(pooled.needs[a], kept);
        add_scaled(pooled.needs[a], pooled.species_centres[shape.species_of(a)], 1 - kept);
    }
}

// How far a season's rows of each species stand from their needs, with their weights.
struct Apart {
    Luck mean;
    std::vector<double> worth;  // by season and species
};

Apart apart_of(std::span<const PoolRow> rows, const PoolShape& shape, const Matrix& needs) {
    Apart apart{no_luck(shape), std::vector<double>(shape.seasons * shape.species_count())};
    for (const auto& row : rows) {
        const int species = shape.species_of(row.accession);
        auto& cell = apart.mean.at(row.season, species);
        add_scaled(cell, row.amounts, row.weight);
        add_scaled(cell, needs[row.accession], -row.weight);
        apart.worth[row.season * shape.species_count() + species] += row.weight;
    }
    for (std::size_t cell = 0; cell < apart.worth.size(); ++cell) {
        scale(apart.mean.cells[cell], apart.worth[cell] > 0 ? 1 / apart.worth[cell] : 0);
    }
    return apart;
}

// The expected luck of one season: first what all share, then what each species has beside it.
void find_luck(Luck& luck, const Apart& apart, int season) {
    const int first = season * luck.species;
    std::vector<double> of_all(luck.cells.front().size());
    double precision = 1 / luck_of_all;
    for (int s = 0; s < luck.species; ++s) {
        if (apart.worth[first + s] > 0) {
            const double told = 1 / (luck_of_species + luck_of_one / apart.worth[first + s]);
            add_scaled(of_all, apart.mean.at(season, s), told);
            precision += told;
        }
    }
    scale(of_all, 1 / precision);
    for (int s = 0; s < luck.species; ++s) {
        const double worth = apart.worth[first + s];
        const double kept = worth > 0 ? luck_of_species / (luck_of_species + luck_of_one / worth) : 0;
        add_scaled(luck.at(season, s), of_all, 1 - kept);
        add_scaled(luck.at(season, s), apart.mean.at(season, s), kept);
    }
}

Luck season_luck(std::span<const PoolRow> rows, const PoolShape& shape, const Weights& weights,
                 const Matrix& needs) {
    const auto apart = apart_of(rows, shape, needs);
    Luck luck = no_luck(shape);
    for (int season = 0; season < shape.seasons; ++season) {
        if (weights.tells_luck[season]) {
            find_luck(luck, apart, season);
        }
    }
    return luck;
}

int used_count(const std::vector<double>& worth) {
    return static_cast<int>(std::ranges::count_if(worth, [](double w) { return w > 0; }));
}

// Squares over degrees of freedom: as many as rows, less one for each accession and season, more one for the
// mean that both share.
double within_variance(std::span<const PoolRow> rows, const PoolShape& shape, const Pooled& free) {
    const auto weights = weights_of(rows, shape);
    const auto luck = season_luck(rows, shape, weights, free.needs);
    double squares = 0;
    for (const auto& row : rows) {
        const double expected =
            free.needs[row.accession][0] + luck.at(row.season, shape.species_of(row.accession))[0];
        squares += row.weight * math::squared(row.amounts[0] - expected);
    }
    const double fitted = used_count(weights.of_accession) + used_count(weights.of_season) - 1;
    const double spare = std::max(0.0, static_cast<double>(rows.size()) - fitted);
    return (prior_within_worth * math::squared(prior_within_sd) + (spare > 0 ? squares : 0)) /
           (prior_within_worth + spare);
}

// The squares of the means hold the noise of each mean as well, which is taken off; what is left is not
// negative.
double between_variance(const Pooled& free, const PoolShape& shape, double within) {
    double squares = 0;
    double noise = 0;
    std::vector<bool> noted(shape.species_count());
    for (int a = 0; a < shape.accessions; ++a) {
        if (free.worth[a] > 0) {
            const int species = shape.species_of(a);
            squares += math::squared(free.needs[a][0] - free.species_centres[species][0]);
            noise += within / free.worth[a];
            noted[species] = true;
        }
    }
    const auto used = static_cast<double>(used_count(free.worth));
    const double spare = used - static_cast<double>(std::ranges::count(noted, true));
    const double seen = used > 0 ? std::max(0.0, squares - noise * spare / used) : 0;
    return (prior_between_worth * math::squared(prior_between_sd) + seen) / (prior_between_worth + spare);
}

// Normal about its kind as far as cultivars are; a low-chill one among others may stand weeks off.
std::vector<double> looseness_of_all(const Pooled& free, const PoolShape& shape, double within,
                                     double between) {
    std::vector<double> looseness(shape.accessions, 1.0);
    for (int a = 0; a < shape.accessions; ++a) {
        if (free.worth[a] > 0) {
            const double apart = free.needs[a][0] - free.species_centres[shape.species_of(a)][0];
            const double usual = std::sqrt(between + within / free.worth[a]);
            looseness[a] = std::max(least_looseness, math::slip_weight(apart / usual));
        }
    }
    return looseness;
}

}  // namespace

double effective_number(double observations) {
    return observations / (1 + std::max(0.0, observations - 1) * shared_luck);
}

int PoolShape::species_count() const {
    return species.empty() ? 1 : 1 + *std::ranges::max_element(species);
}

int PoolShape::genus_count() const {
    return genus.empty() ? 1 : 1 + *std::ranges::max_element(genus);
}

Pooled pool_needs(std::span<const PoolRow> rows, const PoolShape& shape, double pull) {
    const auto weights = weights_of(rows, shape);
    Luck luck = no_luck(shape);
    Pooled pooled;
    pooled.worth = weights.of_accession;
    for (int round = 0; round < rounds; ++round) {
        pooled.needs = accession_means(rows, shape, weights, luck);
        find_centres(pooled, shape, pull);
        draw_to_centres(pooled, shape, pull);
        luck = season_luck(rows, shape, weights, pooled.needs);
    }
    return pooled;
}

PoolStrength pool_strength(std::span<const PoolRow> rows, const PoolShape& shape) {
    const auto free = pool_needs(rows, shape, 0);
    const double within = within_variance(rows, shape, free);
    const double between = between_variance(free, shape, within);
    return {std::sqrt(within), std::sqrt(between), std::clamp(within / between, weakest_pull, strongest_pull),
            looseness_of_all(free, shape, within, between)};
}

}  // namespace pipward::bloom::detail
