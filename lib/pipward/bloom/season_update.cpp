// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/season_update.h"
#include "pipward/math/robust.h"

#include <algorithm>
#include <cmath>

namespace pipward::bloom::detail {
namespace {

// However many notes stand on one accession, they are one observer's in one spring.
constexpr double least_noting_sd = 0.7;  // days; as in observation.cpp

double squared(double value) {
    return value * value;
}

struct Observed {
    double departure = 0;
    double noting = 0;  // variance
    double own = 0;     // variance
};

std::map<std::string, Observed> by_accession(std::span<const ObservationDeparture> observations,
                                             double season_sd) {
    std::map<std::string, Observed> observed;
    std::map<std::string, double> precision;
    for (const auto& observation : observations) {
        const double expected =
            std::sqrt(squared(season_sd) + squared(observation.own_sd) + squared(observation.noting_sd));
        const double weight =
            math::slip_weight(observation.departure / expected) / squared(observation.noting_sd);
        observed[observation.accession].departure += weight * observation.departure;
        observed[observation.accession].own = squared(observation.own_sd);
        precision[observation.accession] += weight;
    }
    for (auto& [name, told] : observed) {
        told.departure /= precision[name];
        told.noting = std::max(squared(least_noting_sd), 1 / precision[name]);
    }
    return observed;
}

// What a note says beyond the season's luck is the accession's own by own / (own + noting) and slip of the
// eye by the rest. The luck's own doubt reaches the day by what is not kept; own and noting leave own x
// noting / sum.
Moved moved(const Observed& told, double luck, double luck_sd) {
    const double kept = told.own / (told.own + told.noting);
    return {luck + kept * (told.departure - luck), (1 - kept) * luck_sd, std::sqrt(kept * told.noting)};
}

}  // namespace

Moved SeasonUpdate::of(const std::string& accession, double own_sd) const {
    const auto found = observed.find(accession);
    return found == observed.end() ? Moved{luck, luck_sd, own_sd} : found->second;
}

// Each accession tells of the season with the variance of its own departure and noting together; the season's
// own spread stands for one more that told 0. Means by inverse variance.
SeasonUpdate update_season(std::span<const ObservationDeparture> observations, double season_sd) {
    const auto told = by_accession(observations, season_sd);
    double precision = 1 / squared(season_sd);
    double sum = 0;
    for (const auto& [name, one] : told) {
        precision += 1 / (one.own + one.noting);
        sum += one.departure / (one.own + one.noting);
    }
    SeasonUpdate update;
    update.luck = sum / precision;
    update.luck_sd = 1 / std::sqrt(precision);
    for (const auto& [name, one] : told) {
        update.observed.emplace(name, moved(one, update.luck, update.luck_sd));
    }
    return update;
}

}  // namespace pipward::bloom::detail
