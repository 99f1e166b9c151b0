// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "pipward/value/day.h"
#include "pipward/weather/weather_import.h"

/// Single cells of foreign tables. ASCII throughout, whatever the locale.
namespace pipward::weather {

std::string_view trimmed(std::string_view text);
std::string lower_case(std::string_view text);
std::optional<int> parse_whole(std::string_view text);

/// A number, or nothing in one of the many ways of writing nothing, or something that is neither.
struct NumberCell {
    std::optional<double> value;
    bool is_missing = false;
};

/// Takes a decimal point or a single decimal comma. Missing: empty, NA, NaN, null, M, dashes and the like,
/// and the figures -99, -99.9, -999, -9999, 999, 9999 with their fractions, none of which is a temperature in
/// any unit.
NumberCell parse_number(std::string_view text);

struct DayCell {
    std::string_view date;
    bool has_clock_time = false;  ///< a time of day other than midnight follows the date
};

DayCell split_day(std::string_view text);
/// Year with four digits; month and day with one or two; parts parted by -, / or . or (year first) not at
/// all. With dots only day-month-year and year-month-day are ever meant.
std::optional<Day> parse_day(std::string_view date, DayFormat format);

}  // namespace pipward::weather
