// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/math/quantile.h"
#include "pipward/weather/file_conventions.h"

namespace pipward::weather {
namespace {

constexpr double hottest_in_fahrenheit = 130;
constexpr double hottest_in_celsius = 50;
constexpr std::size_t days_with_a_summer = 200;

/// One maximum in twenty lies above it, so single typing errors do not move it.
double warm_mark(std::span<const RawReading> readings) {
    std::vector<double> maxima;
    for (const RawReading& reading : readings) {
        maxima.push_back(reading.t_max);
    }
    const auto place = (maxima.size() - 1) * 95 / 100;
    return math::in_place(std::move(maxima), place);
}

bool all_whole(std::span<const RawReading> readings) {
    return std::ranges::all_of(readings, [](const RawReading& reading) {
        return reading.t_min == std::floor(reading.t_min) && reading.t_max == std::floor(reading.t_max);
    });
}

UnitChoice ask_for_unit(const WeatherFileOptions& options, double mark, Sentence message,
                        const Sentence& more = {}) {
    return {std::nullopt,
            {},
            {Finding{
                .level = Level::error,
                .table = options.file,
                .row = {},
                .field = "unit",
                .value = fmt::format("{}", mark),
                .message = std::move(message),
                .remedy = say("State the unit with the option unit: celsius, fahrenheit or tenths_celsius.") +
                          more}}};
}

}  // namespace

UnitChoice choose_unit(std::span<const RawReading> readings, std::optional<TemperatureUnit> header_unit,
                       bool tenths_possible, const WeatherFileOptions& options) {
    if (options.unit) {
        return {options.unit, say("as stated"), {}};
    }
    if (header_unit) {
        return {header_unit, say("as the header says"), {}};
    }
    const double mark = warm_mark(readings);
    if (mark > hottest_in_fahrenheit) {
        if (tenths_possible && all_whole(readings)) {
            return {TemperatureUnit::tenths_celsius,
                    say("as 1 day in 20 reaches {:.0f} or more, all in whole figures", mark),
                    {}};
        }
        return ask_for_unit(options, mark,
                            say("The temperatures are too high for Celsius and for Fahrenheit: perhaps they "
                                "are tenths of a degree, or kelvin."),
                            verbatim(" ") + say("Kelvin must be turned into degrees Celsius first."));
    }
    if (mark > hottest_in_celsius) {
        return {TemperatureUnit::fahrenheit,
                say("as 1 day in 20 reaches {:.1f} or more; in Celsius no place is so hot", mark),
                {}};
    }
    if (readings.size() >= days_with_a_summer) {
        return {TemperatureUnit::celsius,
                say("as 19 days in 20 stay within {:.1f}; in Fahrenheit no summer is so cold", mark),
                {}};
    }
    return ask_for_unit(options, mark,
                        say("The temperatures of this short file could be Celsius or Fahrenheit."));
}

}  // namespace pipward::weather
