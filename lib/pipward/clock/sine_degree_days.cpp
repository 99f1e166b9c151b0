// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>

#include "pipward/clock/degree_day_rules.h"

namespace pipward::clock {
namespace {

CurveAbove sine_above(DayRange day, double threshold) {
    const double low = day.low.degrees;
    const double high = day.high.degrees;
    if (high <= threshold) {
        return {};
    }
    const double mean = (low + high) / 2;
    if (low >= threshold) {
        return {mean - threshold, 1};
    }
    constexpr double pi = std::numbers::pi;
    const double amplitude = (high - low) / 2;
    const double crossing = std::asin((threshold - mean) / amplitude);
    const double half_arc = pi / 2 - crossing;
    return {((mean - threshold) * half_arc + amplitude * std::cos(crossing)) / pi, half_arc / pi};
}

}  // namespace

DegreeDays single_sine_degree_days(DayRange day, const Thresholds& thresholds) {
    return degree_days_by(sine_above, day, thresholds);
}

DegreeDays double_sine_degree_days(DayRange today, Celsius next_low, const Thresholds& thresholds) {
    return double_degree_days_by(sine_above, today, next_low, thresholds);
}

}  // namespace pipward::clock
