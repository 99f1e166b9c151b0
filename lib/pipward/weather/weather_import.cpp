// SPDX-License-Identifier: MIT
#include "pipward/weather/weather_import.h"

#include <array>

namespace pipward::weather {

Sentence to_text(TemperatureUnit unit) {
    switch (unit) {
        case TemperatureUnit::celsius:
            return say("degrees Celsius");
        case TemperatureUnit::fahrenheit:
            return say("degrees Fahrenheit");
        case TemperatureUnit::tenths_celsius:
            return say("tenths of a degree Celsius");
    }
    return {};
}

Celsius to_celsius(double value, TemperatureUnit unit) {
    switch (unit) {
        case TemperatureUnit::celsius:
            return {value};
        case TemperatureUnit::fahrenheit:
            return from_fahrenheit(value);
        case TemperatureUnit::tenths_celsius:
            return {value / 10};
    }
    return {};
}

Sentence to_text(DayFormat format) {
    switch (format) {
        case DayFormat::year_month_day:
            return say("year-month-day");
        case DayFormat::day_month_year:
            return say("day-month-year");
        case DayFormat::month_day_year:
            return say("month-day-year");
    }
    return {};
}

std::span<const Word<TemperatureUnit>> words(TemperatureUnit) {
    static constexpr std::array table{
        Word<TemperatureUnit>{TemperatureUnit::celsius, "celsius", "degrees Celsius"},
        Word<TemperatureUnit>{TemperatureUnit::fahrenheit, "fahrenheit", "degrees Fahrenheit"},
        Word<TemperatureUnit>{TemperatureUnit::tenths_celsius, "tenths_celsius",
                              "tenths of a degree Celsius"},
    };
    return table;
}

std::span<const Word<DayFormat>> words(DayFormat) {
    static constexpr std::array table{
        Word<DayFormat>{DayFormat::year_month_day, "year-month-day", "2026-04-12 or 20260412"},
        Word<DayFormat>{DayFormat::day_month_year, "day-month-year", "12/04/2026 or 12.4.2026"},
        Word<DayFormat>{DayFormat::month_day_year, "month-day-year", "4/12/2026"},
    };
    return table;
}

}  // namespace pipward::weather
