// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/bloom/season_curves.h"
#include "pipward/bloom/stage_ladder.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"
#include "pipward/weather/season_weather.h"

namespace pipward::bloom {

/// Trees within this of each other share one temperature: 0.05 kelvin is 8 m of height, a tenth of a day of
/// bloom.
inline constexpr CelsiusStep offset_step{0.05};
/// ICAO standard atmosphere (Doc 7488): 6.5 kelvin colder a kilometre up.
inline constexpr double lapse_per_metre = 0.0065;

/// A tree's temperature less the station's, by height (its own, else its point's, else the station's),
/// in whole offset_steps.
CelsiusStep tree_offset(const Tree& tree, const Station& station);

/// What the notes of one accession in one season at one offset say of its full bloom.
struct Observation {
    std::string accession;                   ///< its name
    Season season;                           ///< in which it was noted
    CelsiusStep offset;                      ///< of the noted trees' temperature from the station's
    double full_bloom = 0;                   ///< fractional season day; noon is whole
    double sd_days = 1;                      ///< of the noting, not of the weather
    std::vector<std::int64_t> observations;  ///< fids
    std::vector<Day> observed_on;            ///< one a note
    std::vector<double> told{};              ///< one a note: the full bloom that it tells of by itself
};

/// Which weather: a season at one offset from the station.
struct CurvesKey {
    Season season;              ///< whose days
    double offset_degrees = 0;  ///< kelvin, in whole offset_steps

    auto operator<=>(const CurvesKey&) const = default;
};
using CurvesOf = std::map<CurvesKey, SeasonCurves>;  ///< each season at each offset once

/// One bloom observation, placed: on a tree's temperature and on the stage ladder.
struct StageSeen {
    std::int64_t fid = 0;         ///< of the note
    std::string tree;             ///< label; empty where only the accession was noted
    std::string accession;        ///< the tree's, else the note's
    CelsiusStep offset;           ///< of the tree's temperature, else of the accession's trees' mean
    Season season;                ///< the one that holds observed_on
    Day observed_on;              ///< date of observation
    Bbch stage;                   ///< as noted
    LadderPlace place;            ///< on the stage ladder; by open_percent where the note has it
    std::string species{};        ///< of the accession; empty where the book does not tell it
    std::optional<Share> open{};  ///< share of the flowers open, where it was noted at stages 60 to 65
};

/// The ladders of an orchard's species.
struct Ladders {
    std::map<std::string, StageLadder> by_species;  ///< by botanical name, those that were learned

    /// The usual one for a species that is not in it.
    StageLadder of(const std::string& species) const;
};

/// Where a stage that was seen stands on a ladder. Its stage stands on every ladder.
LadderPlace place_of(const StageSeen& seen, const StageLadder& ladder);

/// Somebody looked, and no flower was open yet.
struct NotYet {
    std::string accession;  ///< the tree's, else the note's
    CelsiusStep offset;     ///< of the tree's temperature, else of the accession's trees' mean
    Season season;          ///< the one that holds observed_on
    Day observed_on;        ///< date of observation
};

/// The bloom observations that could be placed, and what is odd about any.
struct StagesReport {
    std::vector<StageSeen> stages;  ///< by day, then fid; on their species' usual ladders
    std::vector<NotYet> not_yet;    ///< notes of stages before first bloom, or of 0 % open
    Findings findings;              ///< notes that cannot be placed
};

/// Places every bloom observation that was made by `as_of`, of whatever season. A note with a tree stands at
/// the tree's offset, one with an accession only at the mean offset of the accession's trees that stood that
/// day, else at the station's. `open_percent` at stages 60 to 65 gives the place on the ladder directly.
StagesReport stages_seen(const Orchard& orchard, const Station& station, Hemisphere hemisphere, Day as_of);

/// The full bloom that a stage seen on `season_day` tells of, in a season's warmth: a fractional season day.
double full_bloom_from(const LadderPlace& place, double season_day, const SeasonCurves& curves);

/// The curves that fitting and scoring ask for: every season at every offset at which a note stands.
CurvesOf curves_for_observations(std::span<const StageSeen> stages,
                                 std::span<const weather::SeasonWeather> seasons, Latitude latitude);

/// What past springs teach, and what could not be used.
struct ObservationsReport {
    std::vector<Observation> observations;  ///< by accession, season and offset
    std::vector<StageSeen> stages;          ///< every note that could be placed, on the ladders learned
    std::vector<NotYet> not_yet;            ///< as in StagesReport
    Ladders ladders;                        ///< as the springs before that of `as_of` taught them
    Findings findings;                      ///< notes that could not be used, and odd ones, each with the reason
};

/// Turns notes of any stage into full-bloom days by the stage ladder and the season's own warmth.
/// Notes on one accession, season and offset are averaged with weights 1/sd^2, a note that stands apart from
/// the others counting for less. Seasons without curves are left out, with a note that says so; notes of
/// after `as_of` are passed over, as if they had not been made yet.
ObservationsReport observe(const Orchard& orchard, const Station& station, Hemisphere hemisphere, Day as_of,
                           const CurvesOf& curves);

}  // namespace pipward::bloom
