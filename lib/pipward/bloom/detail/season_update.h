// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>
#include <vector>

/// What this spring's own observations say of this spring: the season's luck, shared by all, and each noted
/// accession's own departure.
namespace pipward::bloom::detail {

/// One note of this spring, held against what was forecast without it.
struct ObservationDeparture {
    std::string accession;  ///< its name
    double departure = 0;   ///< days: full bloom told by the note less forecast
    double noting_sd = 1;   ///< days
    double own_sd = 1;      ///< days: the accession's spread beside the season's
    std::string species{};  ///< its botanical name; empty where the book does not tell it
};

/// How one accession's day moves and what spread is left to it.
struct Moved {
    double by = 0;         ///< days
    double season_sd = 0;  ///< days: what is left of the spread shared with the orchard
    double own_sd = 0;     ///< days: what is left of its own
};

/// What the season does to a species.
struct SpeciesLuck {
    double luck = 0;     ///< days: the expected departure
    double luck_sd = 0;  ///< days: how uncertain that is still
};

/// What all notes together say of the season.
struct SeasonUpdate {
    SpeciesLuck others;                          ///< of a species that has no notes
    std::map<std::string, SpeciesLuck> species;  ///< by botanical name, species with a note only
    std::map<std::string, Moved> observed;       ///< by name, accessions with a note only

    /// Where `accession` has no note it moves with its species only.
    Moved of(const std::string& accession, const std::string& species, double own_sd) const;
};

/// departure = s + g + e + noise, with s of the season, g of the species in it (together season_sd, and as
/// much of it shared as departures across species are), e ~ N(0, own_sd) by accession: the exact posterior.
/// Notes of one accession are averaged by precision first. A departure far outside what all three allow is
/// taken for a slip and counts for little.
SeasonUpdate update_season(std::span<const ObservationDeparture> observations, double season_sd);

}  // namespace pipward::bloom::detail
