// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <cmath>

#include "pipward/intake/detail/readings.h"
#include "pipward/math/quantile.h"

namespace pipward::intake {

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

std::span<const Word<TemperatureUnit>> words(TemperatureUnit) {
    static constexpr std::array table{
        Word<TemperatureUnit>{TemperatureUnit::celsius, "celsius", "degrees Celsius"},
        Word<TemperatureUnit>{TemperatureUnit::fahrenheit, "fahrenheit", "degrees Fahrenheit"},
        Word<TemperatureUnit>{TemperatureUnit::tenths_celsius, "tenths_celsius",
                              "tenths of a degree Celsius"},
    };
    return table;
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

namespace detail {
namespace {

constexpr double hottest_in_fahrenheit = 130;
constexpr double hottest_in_celsius = 50;
constexpr std::size_t days_with_a_summer = 200;

/// One maximum in twenty lies above it, so single typing errors do not move it.
double warm_mark(std::span<const RawReading> readings) {
    std::vector<double> maxima;
    std::ranges::transform(readings, std::back_inserter(maxima), &RawReading::t_max);
    const auto place = (maxima.size() - 1) * 95 / 100;
    return math::in_place(std::move(maxima), place);
}

bool all_whole(std::span<const RawReading> readings) {
    return std::ranges::all_of(readings, [](const RawReading& reading) {
        return reading.t_min == std::floor(reading.t_min) && reading.t_max == std::floor(reading.t_max);
    });
}

UnitChoice ask(WeatherWork& work, double mark, Sentence message, const Sentence& more = {}) {
    work.findings.error(
        "unit", fmt::format("{}", mark), std::move(message),
        say("State the unit with the option unit: celsius, fahrenheit or tenths_celsius.") + more);
    return {};
}

}  // namespace

UnitChoice choose_unit(std::span<const RawReading> readings, std::optional<TemperatureUnit> of_heading,
                       bool tenths_possible, WeatherWork& work) {
    using enum TemperatureUnit;
    if (work.options.unit || of_heading) {
        return work.options.unit ? UnitChoice{work.options.unit, say("as stated")}
                                 : UnitChoice{of_heading, say("as the header says")};
    }
    const double mark = warm_mark(readings);
    if (mark > hottest_in_fahrenheit && tenths_possible && all_whole(readings)) {
        return {tenths_celsius, say("as 1 day in 20 reaches {:.0f} or more, all in integers", mark)};
    }
    if (mark > hottest_in_fahrenheit) {
        return ask(work, mark,
                   say("The temperatures are too high for Celsius and for Fahrenheit: perhaps they "
                       "are tenths of a degree, or kelvin."),
                   verbatim(" ") + say("Kelvin must be turned into degrees Celsius first."));
    }
    if (mark > hottest_in_celsius) {
        return {fahrenheit,
                say("as 1 day in 20 reaches {:.1f} or more; in Celsius no place is so hot", mark)};
    }
    if (readings.size() >= days_with_a_summer) {
        return {celsius,
                say("as 19 days in 20 stay within {:.1f}; in Fahrenheit no summer is so cold", mark)};
    }
    return ask(work, mark, say("The temperatures of this short file could be Celsius or Fahrenheit."));
}

}  // namespace detail
}  // namespace pipward::intake
