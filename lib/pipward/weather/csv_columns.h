// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "pipward/weather/weather_import.h"

namespace pipward::weather {

/// Where a daily table has what: indices into its records.
struct CsvColumns {
    std::optional<std::size_t> day;
    std::optional<std::size_t> year;  ///< year, month and day_of_month stand together, in place of day
    std::optional<std::size_t> month;
    std::optional<std::size_t> day_of_month;
    std::size_t t_min = 0;
    std::size_t t_max = 0;
    std::optional<std::size_t> station;
    std::optional<TemperatureUnit> unit;  ///< as the two temperature headers say
    Sentence understood;                  ///< one sentence
};

/// Finds the columns by name: many spellings, units in the header ("Max Temp (°F)", "tmin_c",
/// "TemperatureF"). Nothing where a column is missing or two fit equally; `findings` then say which headers
/// there are.
std::optional<CsvColumns> find_columns(const std::vector<std::string>& header,
                                       const WeatherFileOptions& options, Findings& findings);

}  // namespace pipward::weather
