// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/weather/weather_import.h"

/// What a whole file says about how its days and temperatures are written.
namespace pipward::weather {

struct LineText {
    int line = 0;
    std::string_view text;
};

struct DayFormatChoice {
    std::optional<DayFormat> format;
    Sentence why;  ///< a clause: "for no other order fits every line"
    Findings findings;
};

/// The one order of year, month and day that fits. An error where two fit every line alike, where some lines
/// fit only one and some only the other, or where fewer than half of the lines fit any.
DayFormatChoice choose_day_format(std::span<const LineText> dates, const WeatherFileOptions& options);

/// One day's extremes as the file gives them.
struct RawReading {
    int line = 0;
    Day day;
    double t_min = 0;
    double t_max = 0;
};

struct UnitChoice {
    std::optional<TemperatureUnit> unit;
    Sentence why;
    Findings findings;
};

/// The unit, by the first of these that tells: the option; the headers; the values. Of the values the *warm
/// mark* is looked at, which one maximum in twenty exceeds: above 130 it is neither Celsius nor Fahrenheit
/// (but tenths of a degree Celsius where `tenths_possible` and all figures are whole); above 50 it is
/// Fahrenheit, for nowhere is one day in twenty so hot in Celsius; otherwise it is Celsius where the file has
/// 200 days or more, for so many days pass through a summer, and in Fahrenheit none of them would be warmer
/// than 10 degrees C. A shorter file that stays below 50 could be either: an error that asks.
UnitChoice choose_unit(std::span<const RawReading> readings, std::optional<TemperatureUnit> header_unit,
                       bool tenths_possible, const WeatherFileOptions& options);

}  // namespace pipward::weather
