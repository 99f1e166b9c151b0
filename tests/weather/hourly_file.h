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
#include "pipward/value/day.h"
#include "pipward/weather/hours.h"

/// Reading the shared weather files that are not daily tables.
namespace pipward::testing {

inline std::optional<std::string> shared_weather(const std::string& name) {
    std::ifstream file(shared_file("weather/" + name), std::ios::binary);
    if (!file) {
        return std::nullopt;
    }
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

struct HourReading {
    Day day;
    int hour = 0;  ///< 0..23 by the clock
    Celsius temperature;
};

inline std::vector<std::string> split(const std::string& line, char delimiter) {
    std::vector<std::string> cells;
    std::istringstream stream(line);
    for (std::string cell; std::getline(stream, cell, delimiter);) {
        cells.push_back(cell);
    }
    return cells;
}

/// "2010/01/01 00:00" and "2010-01-01T01:00:00".
inline HourReading hour_reading(std::string stamp, double degrees, bool fahrenheit) {
    std::ranges::replace(stamp, '/', '-');
    return {*parse_iso_day(stamp.substr(0, 10)), std::stoi(stamp.substr(11, 2)),
            fahrenheit ? from_fahrenheit(degrees) : Celsius{degrees}};
}

inline std::vector<HourReading> hour_readings(const std::string& text, std::size_t stamp_column,
                                              std::size_t temperature_column, bool fahrenheit) {
    std::vector<HourReading> readings;
    std::istringstream lines(text);
    std::string line;
    std::getline(lines, line);  // the header
    while (std::getline(lines, line)) {
        const auto cells = split(line, ',');
        readings.push_back(
            hour_reading(cells.at(stamp_column), std::stod(cells.at(temperature_column)), fahrenheit));
    }
    return readings;
}

inline std::map<Day, weather::DayExtremes> extremes_by_day(const std::vector<HourReading>& readings) {
    std::map<Day, weather::DayExtremes> days;
    for (const HourReading& reading : readings) {
        auto [place, is_new] =
            days.try_emplace(reading.day, weather::DayExtremes{reading.temperature, reading.temperature});
        place->second.t_min = std::min(place->second.t_min, reading.temperature);
        place->second.t_max = std::max(place->second.t_max, reading.temperature);
    }
    return days;
}

}  // namespace pipward::testing
