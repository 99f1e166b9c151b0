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

struct Noted {
    double departure = 0;
    double noting = 0;  // variance
    double own = 0;     // variance
};

std::map<std::string, Noted> by_accession(std::span<const NoteDeparture> notes, double season_sd) {
    std::map<std::string, Noted> noted;
    std::map<std::string, double> precision;
    for (const auto& note : notes) {
        const double expected =
            std::sqrt(squared(season_sd) + squared(note.own_sd) + squared(note.noting_sd));
        const double weight = math::slip_weight(note.departure / expected) / squared(note.noting_sd);
        noted[note.accession].departure += weight * note.departure;
        noted[note.accession].own = squared(note.own_sd);
        precision[note.accession] += weight;
    }
    for (auto& [name, told] : noted) {
        told.departure /= precision[name];
        told.noting = std::max(squared(least_noting_sd), 1 / precision[name]);
    }
    return noted;
}

// What a note says beyond the season's luck is the accession's own by own / (own + noting) and slip of the
// eye by the rest. The luck's own doubt reaches the day by what is not kept; own and noting leave own x
// noting / sum.
Moved moved(const Noted& told, double luck, double luck_sd) {
    const double kept = told.own / (told.own + told.noting);
    return {luck + kept * (told.departure - luck), (1 - kept) * luck_sd, std::sqrt(kept * told.noting)};
}

}  // namespace

Moved SeasonUpdate::of(const std::string& accession, double own_sd) const {
    const auto found = noted.find(accession);
    return found == noted.end() ? Moved{luck, luck_sd, own_sd} : found->second;
}

// Each accession tells of the season with the variance of its own departure and noting together; the season's
// own spread stands for one more that told 0. Means by inverse variance.
SeasonUpdate update_season(std::span<const NoteDeparture> notes, double season_sd) {
    const auto told = by_accession(notes, season_sd);
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
        update.noted.emplace(name, moved(one, update.luck, update.luck_sd));
    }
    return update;
}

}  // namespace pipward::bloom::detail
