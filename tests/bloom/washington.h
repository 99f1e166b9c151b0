// SPDX-License-Identifier: MIT
#pragma once

#include <fstream>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

#include "paths.h"
#include "pipward/bloom/observation.h"
#include "pipward/bloom/season_curves.h"

/// Seventy-six springs of cherry bloom and daily extremes at Washington (shared data, not in the repository).
namespace pipward::testing {

inline constexpr Latitude washington_latitude{38.85};

struct Washington {
    std::vector<weather::SeasonWeather> seasons;
    std::vector<int> bloom_day_of_year;  ///< peak bloom, 70 % of the flowers open
};

inline weather::DayExtremes extremes_from(const std::string& pair) {
    const auto slash = pair.find('/');
    return {from_fahrenheit(std::stod(pair.substr(0, slash))),
            from_fahrenheit(std::stod(pair.substr(slash + 1)))};
}

/// Nothing where the file is absent.
inline std::optional<Washington> read_washington() {
    std::ifstream file(shared_file("bloom/washington-76-seasons.txt"));
    if (!file) {
        return std::nullopt;
    }
    Washington read;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') {
            continue;
        }
        std::istringstream words(line);
        weather::SeasonWeather weather;
        int bloom = 0;
        words >> weather.season.year >> bloom;
        weather.first = anchor_of(weather.season, Hemisphere::north) + season_first;
        for (std::string pair; words >> pair;) {
            weather.days.push_back(extremes_from(pair));
        }
        read.seasons.push_back(weather);
        read.bloom_day_of_year.push_back(bloom);
    }
    return read;
}

inline bloom::CurvesOf curves_of(const std::vector<weather::SeasonWeather>& seasons, Latitude latitude) {
    bloom::CurvesOf curves;
    for (const auto& weather : seasons) {
        curves.emplace(bloom::CurvesKey{weather.season, 0.0},
                       bloom::season_curves(weather.days, weather.first, latitude, {0}));
    }
    return curves;
}

/// The bloom days as published, to noon of the day.
inline std::vector<bloom::Observation> peak_bloom_days(const Washington& washington) {
    std::vector<bloom::Observation> observations;
    for (std::size_t i = 0; i < washington.seasons.size(); ++i) {
        bloom::Observation observation;
        observation.accession = "Yoshino cherry";
        observation.season = washington.seasons[i].season;
        observation.full_bloom = washington.bloom_day_of_year[i] - 1;
        observation.observations = {static_cast<std::int64_t>(i)};
        observation.observed_on = {anchor_of(observation.season, Hemisphere::north) +
                                   (washington.bloom_day_of_year[i] - 1)};
        observations.push_back(observation);
    }
    return observations;
}

/// The same as a book's notes: full bloom, 70 % open, told through the stage ladder.
inline Orchard peak_bloom_notes(const Washington& washington) {
    Orchard orchard;
    for (const auto& observation : peak_bloom_days(washington)) {
        BloomObservation remark;
        remark.fid = observation.observations.front();
        remark.accession = observation.accession;
        remark.observed_on = observation.observed_on.front();
        remark.bbch = full_bloom;
        remark.open_percent = 70;
        orchard.bloom_observations.push_back(remark);
    }
    return orchard;
}

}  // namespace pipward::testing
