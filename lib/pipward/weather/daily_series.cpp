// SPDX-License-Identifier: MIT
#include "pipward/weather/daily_series.h"

#include <algorithm>

namespace pipward::weather {
namespace {

DayOrigin origin_of(WeatherSource source) {
    return source == WeatherSource::forecast ? DayOrigin::forecast : DayOrigin::observed;
}

bool wins_over(DayOrigin candidate, const std::optional<DailyTemperature>& present) {
    return !present || (candidate == DayOrigin::observed && present->origin == DayOrigin::forecast);
}

std::vector<const WeatherDay*> rows_of(const std::vector<WeatherDay>& weather, const std::string& station) {
    std::vector<const WeatherDay*> rows;
    for (const WeatherDay& row : weather) {
        if (row.station == station) {
            rows.push_back(&row);
        }
    }
    return rows;
}

}  // namespace

std::optional<DailyTemperature> DailySeries::at(Day day) const {
    if (day < first || day >= end()) {
        return std::nullopt;
    }
    return days[static_cast<std::size_t>(day - first)];
}

DailySeries daily_series(const std::vector<WeatherDay>& weather, const std::string& station) {
    const auto rows = rows_of(weather, station);
    if (rows.empty()) {
        return {};
    }
    const auto [earliest, latest] = std::ranges::minmax(rows, {}, [](const auto* row) { return row->day; });
    DailySeries series{earliest->day, {}};
    series.days.resize(static_cast<std::size_t>(latest->day - earliest->day) + 1);
    for (const WeatherDay* row : rows) {
        auto& place = series.days[static_cast<std::size_t>(row->day - series.first)];
        if (const DayOrigin origin = origin_of(row->source); wins_over(origin, place)) {
            place = DailyTemperature{row->t_min, row->t_max, origin};
        }
    }
    return series;
}

}  // namespace pipward::weather
