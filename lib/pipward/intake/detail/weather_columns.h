// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/intake/detail/line_findings.h"
#include "pipward/intake/weather_file.h"

namespace pipward::intake::detail {

/// A column's heading taken apart: "Max Temp (°F)" is the name "max" in degrees Fahrenheit.
struct WeatherHeading {
    std::string name;  ///< folded, without unit, "temperature", "daily" and the like
    std::optional<TemperatureUnit> unit{};
};
WeatherHeading weather_heading(std::string_view heading);

/// Whether it is a name for something that weather files have.
bool heads_weather(std::string_view heading);

/// Where a daily table has what: indices into its records.
struct WeatherColumns {
    std::optional<std::size_t> day{};
    std::optional<std::size_t> year{};  ///< year, month and day_of_month stand together, in place of day
    std::optional<std::size_t> month{};
    std::optional<std::size_t> day_of_month{};
    std::size_t t_min = 0;
    std::size_t t_max = 0;
    std::optional<std::size_t> station{};
    bool day_is_utc = false;                ///< as its heading says
    std::optional<TemperatureUnit> unit{};  ///< as the two temperature headings say
    Sentence understood{};                  ///< one sentence
};

/// Finds the columns by name: many spellings, units in the heading. Nothing where a column is missing or two
/// fit equally; the findings then say which headings there are.
std::optional<WeatherColumns> find_weather_columns(const std::vector<std::string>& headings,
                                                   const WeatherFileOptions& options, LineFindings& findings);

}  // namespace pipward::intake::detail
