// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/record/orchard.h"

namespace pipward::weather {

/// How a day's reading came about.
enum class DayOrigin {
    observed,      ///< measured, from the book
    forecast,      ///< of a weather service, from the book
    interpolated,  ///< between the neighbours of a short gap, by fill_gaps()
    past_season,   ///< lent by another year; no function of the library makes such a day
};

/// One day's extremes at a station.
struct DailyTemperature {
    Celsius t_min;  ///< lowest air temperature of the day
    Celsius t_max;  ///< highest; not below t_min, which the check of the book looks at
    DayOrigin origin = DayOrigin::observed;  ///< whether anybody measured it
};

/// Days without holes in the calendar, from `first` on; a day without a reading is empty.
struct DailySeries {
    Day first;  ///< without meaning where there are no days
    /// One a calendar day; empty for a day without a reading.
    std::vector<std::optional<DailyTemperature>> days;

    /// Empty outside the series and where the day has no reading.
    std::optional<DailyTemperature> at(Day day) const;
    /// The day after the last.
    Day end() const { return first + static_cast<int>(days.size()); }
};

/// The station's rows in day order. Where a day stands twice an observed row wins over a forecast one
/// (the book's check reports true doubles).
DailySeries daily_series(const std::vector<WeatherDay>& weather, const std::string& station);

}  // namespace pipward::weather
