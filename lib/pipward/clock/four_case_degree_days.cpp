// SPDX-License-Identifier: MIT
#include "pipward/clock/degree_day_rules.h"

namespace pipward::clock {

DegreeDays four_case_degree_days(DayRange day, Celsius lower) {
    require_order(day);
    const double mean = (day.low.degrees + day.high.degrees) / 2;
    const double above = day.high.degrees - lower.degrees;
    const double below = lower.degrees - day.low.degrees;
    if (below <= 0) {
        return {mean - lower.degrees};
    }
    if (above <= 0) {
        return {};
    }
    return {mean > lower.degrees ? above / 2 - below / 4 : above / 4};
}

}  // namespace pipward::clock
