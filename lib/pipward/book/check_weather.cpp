// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/book/detail/check.h"
#include "pipward/math/quantile.h"
#include "pipward/value/season.h"

namespace pipward::book::detail {
namespace {

// No place on earth has half of its daily highest temperatures above this; readings in degrees Fahrenheit do.
constexpr double median_of_fahrenheit = 45.0;
// Nor above this in degrees Fahrenheit.
constexpr double median_beyond_fahrenheit = 115.0;
constexpr std::size_t enough_for_a_median = 30;
constexpr double missing_share_that_matters = 0.1;

struct StationWeather {
    Hemisphere hemisphere = Hemisphere::north;
    std::vector<const WeatherDay*> days;
};

std::map<std::string, StationWeather> by_station(const Orchard& orchard) {
    std::map<std::string, StationWeather> stations;
    for (const auto& station : orchard.stations) {
        stations[station.name].hemisphere =
            station.latitude ? hemisphere_of(*station.latitude) : Hemisphere::north;
    }
    for (const auto& day : orchard.weather) {
        stations[day.station].days.push_back(&day);
    }
    return stations;
}

double median_high(const std::vector<const WeatherDay*>& days) {
    std::vector<double> highs;
    highs.reserve(days.size());
    for (const auto* day : days) {
        highs.push_back(day->t_max.degrees);
    }
    return math::middle_value(std::move(highs));
}

bool is_in_another_unit(const std::vector<const WeatherDay*>& days) {
    return days.size() >= enough_for_a_median && median_high(days) > median_of_fahrenheit;
}

Finding about_unit(const std::string& station, double median) {
    const bool higher = median > median_beyond_fahrenheit;
    return error({"weather_day", station, "t_max_c", fmt::format("{:.1f}", median)},
                 say("Half of the highest temperatures lie above this, which no place on earth has in "
                     "degrees Celsius: they look like {}.",
                     higher ? say("tenths of a degree, or kelvin") : say("degrees Fahrenheit")),
                 higher ? say("Import them again in their unit, or turn them into degrees Celsius first.")
                        : say("Import them again as degrees Fahrenheit."));
}

// Days of weather in the part of each season that counts and that has gone by.
void check_seasons(const std::string& name, const StationWeather& station, Day as_of, Findings& findings) {
    std::map<Season, std::set<Day>> seasons;
    for (const auto* day : station.days) {
        const auto season = season_of(day->day, station.hemisphere);
        const auto first = anchor_of(season, station.hemisphere) + season_first;
        if (day->source == WeatherSource::observed && day->day - first < season_length && day->day <= as_of) {
            seasons[season].insert(day->day);
        }
    }
    for (const auto& [season, days] : seasons) {
        const auto first = anchor_of(season, station.hemisphere) + season_first;
        const int expected = std::min(season_length, as_of - first + 1);
        const int missing = expected - static_cast<int>(days.size());
        if (missing > missing_share_that_matters * expected) {
            findings.push_back(
                warning({"weather_day", name, "day", std::to_string(season.year)},
                        say("Season {} has only {} of {} days of weather from {} on.", season.year,
                            days.size(), expected, to_iso(first)),
                        say("Import the missing days; a season with gaps counts for less or not at all.")));
        }
    }
}

using ObservationsOfSeasons = std::map<Season, int>;
constexpr std::size_t few_seasons = 3;

void tell_without_weather(const ObservationsOfSeasons& without, Findings& findings) {
    if (without.size() > few_seasons) {
        int observations = 0;
        for (const auto& [season, count] : without) {
            observations += count;
        }
        findings.push_back(
            warning({"weather_day",
                     {},
                     "day",
                     fmt::format("{} to {}", without.begin()->first.year, without.rbegin()->first.year)},
                    say("There are {} bloom observations of {} seasons without any weather.", observations,
                        without.size()),
                    say("Import the weather of those winters and springs.")));
        return;
    }
    for (const auto& [season, count] : without) {
        findings.push_back(warning(
            {"weather_day", {}, "day", std::to_string(season.year)},
            count == 1 ? say("There is 1 bloom observation of season {} but no weather for it.", season.year)
                       : say("There are {} bloom observations of season {} but no weather for it.", count,
                             season.year),
            say("Import the weather of that winter and spring.")));
    }
}

// Notes without weather teach nothing about what bloom needs. One of the future is found on its own.
void check_seasons_of_observations(const Orchard& orchard, Hemisphere hemisphere, Day as_of,
                                   Findings& findings) {
    std::set<Season> with_weather;
    for (const auto& day : orchard.weather) {
        with_weather.insert(season_of(day.day, hemisphere));
    }
    ObservationsOfSeasons without;
    for (const auto& observed : orchard.bloom_observations) {
        const auto season = season_of(observed.observed_on, hemisphere);
        if (observed.observed_on <= as_of && !with_weather.contains(season)) {
            ++without[season];
        }
    }
    tell_without_weather(without, findings);
}

}  // namespace

void check_weather(const Orchard& orchard, Day as_of, Findings& findings) {
    const auto stations = by_station(orchard);
    for (const auto& [name, station] : stations) {
        if (is_in_another_unit(station.days)) {
            findings.push_back(about_unit(name, median_high(station.days)));
        } else {
            check_temperatures(station.days, findings);
        }
        check_days(station.days, as_of, findings);
        check_seasons(name, station, as_of, findings);
    }
    if (!orchard.weather.empty()) {
        check_seasons_of_observations(orchard, stations.begin()->second.hemisphere, as_of, findings);
    }
}

}  // namespace pipward::book::detail
