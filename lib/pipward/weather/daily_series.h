// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/record/orchard.h"

namespace pipward::weather {

enum class DayOrigin { observed, forecast, interpolated, past_season };

/// One day's extremes at a station.
struct DailyTemperature {
    Celsius t_min;
    Celsius t_max;
    DayOrigin origin = DayOrigin::observed;
};

/// Days without holes in the calendar, from `first` on; a day without a reading is empty.
struct DailySeries {
    Day first;
    std::vector<std::optional<DailyTemperature>> days;

    /// Empty outside the series and where the day has no reading.
    std::optional<DailyTemperature> at(Day day) const;
    Day end() const { return first + static_cast<int>(days.size()); }
};

/// The station's rows in day order. Where a day stands twice an observed row wins over a forecast one
/// (the book's check reports true doubles).
DailySeries daily_series(const std::vector<WeatherDay>& weather, const std::string& station);

}  // namespace pipward::weather
