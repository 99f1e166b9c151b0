// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

#include "pipward/value/day.h"
#include "pipward/value/quantity.h"
#include "pipward/weather/day_length.h"

namespace pipward::weather {

/// One day's extremes, nothing else.
struct DayExtremes {
    Celsius t_min;  ///< not above t_max; not checked
    Celsius t_max;  ///< °C, as t_min
};

inline constexpr std::size_t hours_a_day = 24;  ///< of solar time; no day has 23 or 25

/// Where the 24 hours of one day lie between its extremes. It depends on the Sun alone, so one set of shapes
/// serves every series of the same days and latitude.
struct DayShape {
    std::size_t first_daylight = 0;  ///< index of the first hour after sunrise
    std::size_t first_evening = 0;   ///< index of the first hour after sunset
    double at_sunset = 0;            ///< share of the day's range above its minimum at sunset
    /// By day the share of the range above the minimum; by night the share of the fall from sunset to the
    /// morning's minimum that is done.
    std::array<double, hours_a_day> share{};
};

/// Shape: `count` days from `first` on.
std::vector<DayShape> day_shapes(Day first, std::size_t count, Latitude latitude);

/// Hourly temperatures from daily extremes: a sine by day, a logarithm by night (Linvill 1990, HortScience
/// 25:14-16). The maximum falls two hours after solar noon; the night falls to the next morning's minimum.
/// Shape: 24 readings a day, at solar hours 0.5, 1.5 ... 23.5 (the middle of each hour).
/// The first night uses the first day for the day before, the last night the last day for the day after.
/// In the first hour after sunset the sunset's temperature holds, for the logarithm begins at one hour. A
/// night of an hour or less is a straight line. A day under four hours (beyond the orchards) ends below its
/// maximum.
std::vector<Celsius> hourly_temperatures(std::span<const DayExtremes> days, Day first, Latitude latitude);
/// The same from shapes made beforehand; `shapes` must be at least as many as `days`.
std::vector<Celsius> hourly_temperatures(std::span<const DayExtremes> days, std::span<const DayShape> shapes);

/// A day and its neighbours.
struct DaysAround {
    DayExtremes previous;
    DayExtremes today;
    DayExtremes next;
};

/// The temperature at an hour of local solar time, 0..24, of `days.today` by the same curve. The neighbours'
/// Sun is taken to rise and set when today's does.
Celsius temperature_at(double solar_hour, const DaysAround& days, const SunTimes& sun);

}  // namespace pipward::weather
