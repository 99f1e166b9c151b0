// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "pipward/bloom/season_curves.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

namespace pipward {

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
    std::string accession;
    Season season;
    CelsiusStep offset;
    double full_bloom = 0;            ///< fractional season day; noon is whole
    double sd_days = 1;               ///< of the noting, not of the weather
    std::vector<std::int64_t> notes;  ///< fids
};

struct CurvesKey {
    Season season;
    double offset_degrees = 0;

    auto operator<=>(const CurvesKey&) const = default;
};
using CurvesOf = std::map<CurvesKey, SeasonCurves>;

struct ObservationsReport {
    std::vector<Observation> observations;
    Findings findings;  ///< notes that could not be used, each with the reason
};

/// Turns notes of any stage into full-bloom days by the stage ladder and the season's own warmth.
/// Notes on one accession, season and offset are averaged with weights 1/sd^2.
ObservationsReport observe(const Orchard& orchard, const Station& station, Hemisphere hemisphere,
                           const CurvesOf& curves);

}  // namespace pipward
