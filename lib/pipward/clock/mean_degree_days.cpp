// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/clock/degree_day_rules.h"

namespace pipward::clock {
namespace {

double mean_of(DayRange day) {
    return (day.low.degrees + day.high.degrees) / 2;
}

}  // namespace

DegreeDays daily_mean_degree_days(DayRange day, Celsius lower) {
    require_order(day);
    return {std::max(0.0, mean_of(day) - lower.degrees)};
}

DegreeDays modified_mean_degree_days(DayRange day, Celsius lower, Celsius upper) {
    require_order(day);
    require_order(Thresholds{lower, upper, CutOff::horizontal});
    const DayRange within{std::clamp(day.low, lower, upper), std::clamp(day.high, lower, upper)};
    return {mean_of(within) - lower.degrees};
}

}  // namespace pipward::clock
