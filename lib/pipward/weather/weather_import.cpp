// SPDX-License-Identifier: MIT
#include "pipward/weather/weather_import.h"

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

}  // namespace pipward::weather
