// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// What every reader of foreign weather files takes and gives.
namespace pipward::weather {

enum class TemperatureUnit { celsius, fahrenheit, tenths_celsius };

/// "degrees Celsius"
Sentence to_text(TemperatureUnit unit);
Celsius to_celsius(double value, TemperatureUnit unit);

enum class DayFormat {
    year_month_day,  ///< 2026-04-12, 2026/04/12, 20260412
    day_month_year,  ///< 12/04/2026, 12.4.2026
    month_day_year,  ///< 4/12/2026
};

/// "year-month-day"
Sentence to_text(DayFormat format);

/// What may be stated instead of being found out. Column names are those in the file's header, in any case.
struct WeatherFileOptions {
    std::string file;     ///< how findings name the file
    std::string station;  ///< the book's station; empty: as the file calls it
    WeatherSource source = WeatherSource::observed;
    std::optional<std::string> station_in_file;  ///< which one, where the file holds several
    std::optional<std::string> day_column;
    std::optional<std::string> t_min_column;
    std::optional<std::string> t_max_column;
    std::optional<std::string> station_column;
    std::optional<TemperatureUnit> unit;
    std::optional<DayFormat> day_format;
};

struct WeatherImport {
    std::vector<WeatherDay> days;  ///< in day order, one a day; none where a finding is an error
    Sentence understood;           ///< sentences: which columns, which unit and why, which days
    Findings findings;             ///< row = "line 12"
};

/// Readings outside these cannot be air temperatures of an orchard: they are typing errors or another unit.
inline constexpr Celsius coldest_believable{-60};
inline constexpr Celsius hottest_believable{60};

}  // namespace pipward::weather
