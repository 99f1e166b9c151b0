// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "pipward/clock/clock_sums.h"
#include "pipward/season/pipeline.h"

/// Chill and heat of a season, day by day.
namespace pipward::season {

/// One day with its sums.
struct ChillHeatDay {
    std::string_view station;               ///< of the place, which must outlive it
    Day day;                                ///< one of the days asked for
    weather::DailyTemperature temperature;  ///< of the day, measured, forecast or interpolated
    clock::ClockSums sums;                  ///< at its end
    double day_length = 0;                  ///< h, sunrise to sunset
};

/// Which days are counted, and how.
struct ClockWish {
    std::optional<Day> from;       ///< the season's first day where not given
    std::optional<Day> to;         ///< the last day known up to as_of where not given
    clock::Thresholds thresholds;  ///< of the degree-day sums
};

/// Every day with its sums since the first. Short gaps are filled, which a note tells in `place.findings`;
/// nothing observed after `place.as_of` is used. Throws Error: input for a longer gap, usage for a last day
/// before the first.
std::vector<ChillHeatDay> chill_heat_days(Place& place, const ClockWish& wish);

}  // namespace pipward::season
