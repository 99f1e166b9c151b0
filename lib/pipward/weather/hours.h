// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/value/day.h"
#include "pipward/value/quantity.h"

namespace pipward {

/// One day's extremes, nothing else.
struct DayExtremes {
    Celsius t_min;
    Celsius t_max;
};

/// Hourly temperatures from daily extremes: a sine by day, a logarithm by night (Linvill 1990, HortScience
/// 25:14-16). The maximum falls two hours after solar noon; the night falls to the next morning's minimum.
/// Shape: 24 readings a day, at solar hours 0.5, 1.5 ... 23.5 (the middle of each hour).
/// The first night uses the first day for the day before, the last night the last day for the day after.
std::vector<Celsius> hourly_temperatures(std::span<const DayExtremes> days, Day first, Latitude latitude);

/// The temperature of one clock hour of one day by the same curve; `previous` and `next` are the neighbours.
Celsius temperature_at(double solar_hour, const DayExtremes& previous, const DayExtremes& today,
                       const DayExtremes& next, double sunrise, double sunset);

}  // namespace pipward
