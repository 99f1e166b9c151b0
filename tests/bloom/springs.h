// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <string>
#include <vector>

#include "pipward/bloom/detail/structures.h"
#include "pipward/bloom/forecast.h"
#include "pipward/bloom/observation.h"

/// Invented springs and trees whose true bloom is known, for tests of behaviour.
namespace pipward::testing {

inline constexpr Latitude orchard_latitude{50};
inline constexpr int whole_season = season_length;

/// Repeatable noise, the same on every machine: roughly normal, mean 0, sd 1.
class Noise {
  public:
    explicit Noise(int seed) : random_(static_cast<unsigned>(seed)) {}
    double next() {
        double sum = 0;
        for (int i = 0; i < 12; ++i) {
            sum += static_cast<double>(random_()) / static_cast<double>(std::mt19937::max());
        }
        return sum - 6;
    }

  private:
    std::mt19937 random_;
};

/// A temperate season: cold in mid January, restless from day to day, `warmer` than usual throughout.
inline weather::SeasonWeather spring_weather(int year, double warmer = 0,
                                             Hemisphere hemisphere = Hemisphere::north,
                                             int days = whole_season) {
    weather::SeasonWeather weather{{year}, anchor_of({year}, hemisphere) + season_first, {}};
    Noise noise(year);
    double restless = 0;
    for (int i = 0; i < days; ++i) {
        const double season_day = season_first + i;
        restless = 0.7 * restless + 2 * noise.next();
        const double mean =
            9.0 - 12.5 * std::cos(2 * std::numbers::pi * (season_day - 17) / 365) + warmer + restless;
        const double half_range = std::max(1.0, 4.5 + noise.next());
        weather.days.push_back({{mean - half_range}, {mean + half_range}});
    }
    return weather;
}

inline std::vector<weather::SeasonWeather> springs(int first_year, int count,
                                                   Hemisphere hemisphere = Hemisphere::north) {
    std::vector<weather::SeasonWeather> seasons;
    for (int i = 0; i < count; ++i) {
        seasons.push_back(spring_weather(first_year + i, 0, hemisphere));
    }
    return seasons;
}

inline bloom::CurvesOf curves_of_springs(const std::vector<weather::SeasonWeather>& seasons,
                                         Latitude latitude = orchard_latitude,
                                         std::vector<double> offsets = {0.0}) {
    bloom::CurvesOf curves;
    for (const auto& weather : seasons) {
        for (const double offset : offsets) {
            curves.emplace(bloom::CurvesKey{weather.season, offset},
                           bloom::season_curves(weather.days, weather.first, latitude, {offset}));
        }
    }
    return curves;
}

/// The truth of these tests: sigmoid heat from 70 chill portions; 4700 brings bloom in the last days of
/// April.
inline double true_bloom(const bloom::SeasonCurves& curves, double need) {
    constexpr bloom::detail::Structure truth{bloom::detail::Summed::sigmoid, bloom::detail::StartBy::chill,
                                             70};
    const double start =
        std::min<double>(bloom::day_reaching(curves.chill, truth.start), bloom::detail::latest_start);
    return bloom::day_reaching(curves.heat[0], bloom::value_at(curves.heat[0], start) + need);
}

inline bloom::Observation observed(const std::string& accession, int year, double full_bloom,
                                   double sd_days = 1, CelsiusStep offset = {}) {
    bloom::Observation observation;
    observation.accession = accession;
    observation.season = {year};
    observation.offset = offset;
    observation.full_bloom = full_bloom;
    observation.sd_days = sd_days;
    observation.observations = {static_cast<std::int64_t>(1000 * (year - 2000)) +
                           static_cast<int>(accession.back())};
    observation.observed_on = {anchor_of({year}, Hemisphere::north) +
                               static_cast<int>(std::round(full_bloom))};
    return observation;
}

/// A true observation of every accession ("Apple A", "Apple B" ...) in every season, to the nearest day.
inline std::vector<bloom::Observation> true_observations(const bloom::CurvesOf& curves,
                                                         const std::vector<double>& needs) {
    std::vector<bloom::Observation> observations;
    for (const auto& [key, season] : curves) {
        for (std::size_t i = 0; i < needs.size(); ++i) {
            const std::string name = std::string("Apple ") + static_cast<char>('A' + i);
            const double day = std::round(true_bloom(season, needs[i]));
            observations.push_back(observed(name, key.season.year, day, 1, {key.offset_degrees}));
        }
    }
    return observations;
}

inline Accession apple(const std::string& name, const std::string& seed_parent = "",
                       const std::string& pollen_parent = "") {
    Accession accession;
    accession.name = name;
    if (!seed_parent.empty()) {
        accession.seed_parent = seed_parent;
    }
    if (!pollen_parent.empty()) {
        accession.pollen_parent = pollen_parent;
    }
    return accession;
}

}  // namespace pipward::testing
