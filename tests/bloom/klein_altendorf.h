// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

#include "paths.h"
#include "pipward/record/orchard.h"
#include "pipward/weather/season_weather.h"

/// Sixty springs of apples and pears of one orchard (shared data, not in the repository): 5 % open, half
/// open, end of bloom, and the days' extremes.
namespace pipward::testing {

inline constexpr Latitude klein_altendorf_latitude{50.61};
inline constexpr std::size_t shortest_whole_season = weather::shortest_season_end - season_first + 1;

struct KleinAltendorf {
    Orchard orchard;
    Station station;
    std::vector<weather::SeasonWeather> seasons;
};

inline std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells(1);
    for (const char letter : line) {
        if (letter == ',') {
            cells.emplace_back();
        } else if (letter != '\r') {
            cells.back() += letter;
        }
    }
    return cells;
}

inline void add_observation(Orchard& orchard, const std::string& accession, const std::string& iso,
                            Bbch stage) {
    if (const auto day = parse_iso_day(iso)) {
        BloomObservation seen;
        seen.fid = static_cast<std::int64_t>(orchard.bloom_observations.size()) + 1;
        seen.accession = accession;
        seen.observed_on = *day;
        seen.bbch = stage;
        orchard.bloom_observations.push_back(seen);
    }
}

/// Two springs of one apple are impossible as published and left out.
inline bool is_impossible_spring(const std::string& cultivar, const std::string& year) {
    return cultivar == "Elstar" && (year == "2008" || year == "2010");
}

inline bool read_observations(Orchard& orchard) {
    std::ifstream file(shared_file("bloom/klein-altendorf-bloom.csv"));
    std::map<std::string, std::string> species;
    std::string line;
    for (std::getline(file, line); std::getline(file, line);) {
        const auto cells = cells_of(line);
        species[cells[1]] = cells[0] == "pear" ? "Pyrus communis" : "Malus domestica";
        if (!is_impossible_spring(cells[1], cells[2])) {
            add_observation(orchard, cells[1], cells[3], first_bloom);
            add_observation(orchard, cells[1], cells[4], full_bloom);
            add_observation(orchard, cells[1], cells[5], bloom_end);
        }
    }
    for (const auto& [name, botanical] : species) {
        Accession accession;
        accession.name = name;
        accession.species = botanical;
        orchard.accessions.push_back(accession);
    }
    return !species.empty();
}

/// Days whose minimum stands above their maximum are turned round.
inline std::vector<weather::SeasonWeather> read_seasons(const std::string& file_name) {
    std::ifstream file(shared_file(file_name));
    std::map<Season, weather::SeasonWeather> seasons;
    std::string line;
    for (std::getline(file, line); std::getline(file, line);) {
        const auto cells = cells_of(line);
        const auto day = parse_iso_day(cells[0]);
        const double one = std::stod(cells[1]);
        const double other = std::stod(cells[2]);
        auto& weather = seasons[season_of(*day, Hemisphere::north)];
        weather.season = season_of(*day, Hemisphere::north);
        weather.first = anchor_of(weather.season, Hemisphere::north) + season_first;
        if (*day == weather.first + static_cast<int>(weather.days.size()) &&
            weather.days.size() < season_length) {
            weather.days.push_back({{std::min(one, other)}, {std::max(one, other)}});
        }
    }
    std::vector<weather::SeasonWeather> whole;
    for (auto& [season, weather] : seasons) {
        if (weather.days.size() >= shortest_whole_season) {
            whole.push_back(std::move(weather));
        }
    }
    return whole;
}

/// Nothing where the files are absent.
inline std::optional<KleinAltendorf> read_klein_altendorf() {
    KleinAltendorf read;
    if (!read_observations(read.orchard)) {
        return std::nullopt;
    }
    read.seasons = read_seasons("bloom/klein-altendorf-daily.csv");
    read.station.name = "Klein-Altendorf";
    read.station.latitude = klein_altendorf_latitude;
    return read;
}

}  // namespace pipward::testing
