// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/season_update.h"

#include <algorithm>
#include <cmath>

#include "pipward/bloom/detail/pooling.h"
#include "pipward/math/robust.h"
#include "pipward/math/squared.h"

namespace pipward::bloom::detail {
namespace {

// However many notes stand on one accession, they are one observer's in one spring.
constexpr double least_noting_sd = 0.7;  // days; as in observation.cpp

// So much of the season's variance all species share.
constexpr double shared_by_species = shared_luck / shared_luck_in_species;

struct Observed {
    std::string species;
    double departure = 0;
    double noting = 0;  // variance
    double own = 0;     // variance
};

std::map<std::string, Observed> by_accession(std::span<const ObservationDeparture> observations,
                                             double season_sd) {
    std::map<std::string, Observed> observed;
    std::map<std::string, double> precision;
    for (const auto& observation : observations) {
        const double expected = std::sqrt(math::squared(season_sd) + math::squared(observation.own_sd) +
                                          math::squared(observation.noting_sd));
        const double weight =
            math::slip_weight(observation.departure / expected) / math::squared(observation.noting_sd);
        observed[observation.accession].departure += weight * observation.departure;
        observed[observation.accession].own = math::squared(observation.own_sd);
        observed[observation.accession].species = observation.species;
        precision[observation.accession] += weight;
    }
    for (auto& [name, told] : observed) {
        told.departure /= precision[name];
        told.noting = std::max(math::squared(least_noting_sd), 1 / precision[name]);
    }
    return observed;
}

// A mean of independent tellings, each with its precision.
struct Telling {
    double sum = 0;
    double precision = 0;

    void add(double value, double with_precision) {
        sum += value * with_precision;
        precision += with_precision;
    }
    double mean() const { return precision > 0 ? sum / precision : 0; }
};

std::map<std::string, Telling> by_species(const std::map<std::string, Observed>& observed) {
    std::map<std::string, Telling> told;
    for (const auto& [name, one] : observed) {
        told[one.species].add(one.departure, 1 / (one.own + one.noting));
    }
    return told;
}

// What the season does to `species`: by its own notes, and by those of the others through what all share.
SpeciesLuck luck_of(const std::map<std::string, Telling>& told, const std::string& species, double season) {
    const double shared = shared_by_species * season;
    const double apart = season - shared;
    Telling all{0, 1 / shared};
    for (const auto& [name, telling] : told) {
        if (name != species) {
            all.add(telling.mean(), 1 / (apart + 1 / telling.precision));
        }
    }
    Telling here;
    here.add(all.mean(), 1 / (apart + 1 / all.precision));
    if (const auto own = told.find(species); own != told.end()) {
        here.add(own->second.mean(), own->second.precision);
    }
    return {here.mean(), 1 / std::sqrt(here.precision)};
}

// What a note says beyond the season's luck is the accession's own by own / (own + noting) and slip of the
// eye by the rest. The luck's own doubt reaches the day by what is not kept; own and noting leave own x
// noting / sum.
Moved moved(const Observed& told, const SpeciesLuck& species) {
    const double kept = told.own / (told.own + told.noting);
    return {species.luck + kept * (told.departure - species.luck), (1 - kept) * species.luck_sd,
            std::sqrt(kept * told.noting)};
}

}  // namespace

Moved SeasonUpdate::of(const std::string& accession, const std::string& of_species, double own_sd) const {
    if (const auto found = observed.find(accession); found != observed.end()) {
        return found->second;
    }
    const auto found = species.find(of_species);
    const auto& luck = found == species.end() ? others : found->second;
    return {luck.luck, luck.luck_sd, own_sd};
}

// Each accession tells of the season with the variance of its own departure and noting together; the season's
// own spread stands for one more that told 0. Means by inverse variance.
SeasonUpdate update_season(std::span<const ObservationDeparture> observations, double season_sd) {
    const auto observed = by_accession(observations, season_sd);
    const auto told = by_species(observed);
    SeasonUpdate update;
    update.others = luck_of(told, "\n", math::squared(season_sd));  // no species is called so
    for (const auto& [name, telling] : told) {
        update.species.emplace(name, luck_of(told, name, math::squared(season_sd)));
    }
    for (const auto& [name, one] : observed) {
        update.observed.emplace(name, moved(one, update.species.at(one.species)));
    }
    return update;
}

}  // namespace pipward::bloom::detail
