// SPDX-License-Identifier: MIT
#include "pipward/clock/degree_day_rules.h"

namespace pipward::clock {
namespace {

CurveAbove triangle_above(DayRange day, double threshold) {
    const double low = day.low.degrees;
    const double high = day.high.degrees;
    if (high <= threshold) {
        return {};
    }
    if (low >= threshold) {
        return {(low + high) / 2 - threshold, 1};
    }
    const double share = (high - threshold) / (high - low);
    return {share * (high - threshold) / 2, share};
}

}  // namespace

DegreeDays single_triangle_degree_days(DayRange day, const Thresholds& thresholds) {
    return degree_days_by(triangle_above, day, thresholds);
}

DegreeDays double_triangle_degree_days(DayRange today, Celsius next_low, const Thresholds& thresholds) {
    return double_degree_days_by(triangle_above, today, next_low, thresholds);
}

}  // namespace pipward::clock
