// SPDX-License-Identifier: MIT
#include "pipward/clock/clock_sums.h"

#include <fmt/format.h>

#include "pipward/clock/asymcur.h"
#include "pipward/clock/chilling_hours.h"
#include "pipward/clock/dynamic_model.h"
#include "pipward/clock/gdh_richardson.h"
#include "pipward/clock/utah_units.h"
#include "pipward/value/finding.h"

namespace pipward::clock {
namespace {

constexpr std::size_t hours_each = 24;

void require_all_hours(std::size_t days, std::size_t hours) {
    if (hours == days * hours_each) {
        return;
    }
    throw Error(Trouble::usage,
                Finding{.level = Level::error,
                        .table = {},
                        .row = {},
                        .field = "hours",
                        .value = fmt::format("{}", hours),
                        .message = say("{} days need {} hourly readings.", days, days * hours_each),
                        .remedy = say("Give 24 hourly readings for each day.")});
}

std::optional<DegreeDays> mean_for(DayRange day, const Thresholds& thresholds) {
    if (thresholds.cut_off == CutOff::none) {
        return daily_mean_degree_days(day, thresholds.lower);
    }
    if (thresholds.cut_off == CutOff::horizontal) {
        return modified_mean_degree_days(day, thresholds.lower, thresholds.upper);
    }
    return std::nullopt;
}

void add_hour(ClockSums& sums, DynamicModel& dynamic, Celsius hour) {
    sums.chilling_hours += chilling_hours(hour);
    sums.utah_units += utah_units(hour);
    sums.chill_portions += dynamic.hour(hour);
    sums.gdh_linear += gdh_richardson(hour);
    sums.gdh_asymcur += asymcur(hour);
}

void add_day(ClockSums& sums, DayRange day, const Thresholds& thresholds) {
    const auto mean = mean_for(day, thresholds);
    sums.gdd_mean = mean ? std::optional{sums.gdd_mean.value_or(DegreeDays{}) + *mean} : std::nullopt;
    sums.gdd_triangle += single_triangle_degree_days(day, thresholds);
    sums.gdd_sine += single_sine_degree_days(day, thresholds);
}

}  // namespace

std::vector<ClockSums> clock_sums(std::span<const DayRange> days, std::span<const Celsius> hours,
                                  const Thresholds& thresholds) {
    require_all_hours(days.size(), hours.size());
    std::vector<ClockSums> results;
    results.reserve(days.size());
    ClockSums sums;
    DynamicModel dynamic;
    for (std::size_t i = 0; i < days.size(); ++i) {
        add_day(sums, days[i], thresholds);
        for (const Celsius hour : hours.subspan(i * hours_each, hours_each)) {
            add_hour(sums, dynamic, hour);
        }
        results.push_back(sums);
    }
    return results;
}

}  // namespace pipward::clock
