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
};

/// How one accession's day moves and what spread is left to it.
struct Moved {
    double by = 0;         ///< days
    double season_sd = 0;  ///< days: what is left of the spread shared with the orchard
    double own_sd = 0;     ///< days: what is left of its own
};

/// What all notes together say of the season.
struct SeasonUpdate {
    double luck = 0;                        ///< days: the season's expected departure
    double luck_sd = 0;                     ///< days: how uncertain that is still
    std::map<std::string, Moved> observed;  ///< by name, accessions with a note only

    /// Where `accession` has no note it moves with the season only.
    Moved of(const std::string& accession, double own_sd) const;
};

/// departure = s + e + noise, with s ~ N(0, season_sd), e ~ N(0, own_sd) by accession: the exact posterior.
/// Notes of one accession are averaged by precision first. A departure far outside what all three allow is
/// taken for a slip and counts for little.
SeasonUpdate update_season(std::span<const ObservationDeparture> observations, double season_sd);

}  // namespace pipward::bloom::detail
