// SPDX-License-Identifier: MIT
#include "pipward/season/chill_heat_days.h"

#include <algorithm>

#include "pipward/value/complaint.h"
#include "pipward/weather/day_length.h"
#include "pipward/weather/filled_days.h"
#include "pipward/weather/gaps.h"
#include "pipward/weather/hours.h"

namespace pipward::season {
namespace {

/// What is known on as_of: nothing observed later.
weather::DailySeries known_days(const Place& place) {
    auto known = place.series;
    for (Day day = known.first; day < known.end(); day = day + 1) {
        auto& reading = known.days[static_cast<std::size_t>(day - known.first)];
        if (day > place.as_of && reading && reading->origin == weather::DayOrigin::observed) {
            reading.reset();
        }
    }
    return known;
}

Day last_known(const weather::DailySeries& series, Day until) {
    Day last = std::min(until, series.end() - 1);
    while (last > series.first && !series.at(last)) {
        last = last - 1;
    }
    return last;
}

Error hole_at(const Place& place, Day missing) {
    return {Trouble::input,
            about_table(Level::error, "weather_day",
                        say("Station {} has no temperatures on {}, and sums cannot leap over it.",
                            place.station.name, to_iso(missing)),
                        say("Import the missing days, or choose from and to on one side of it."))};
}

Error nothing_between(Day first, Day last) {
    return {Trouble::usage,
            about_parameter("to", to_iso(last),
                            say("The last day, {}, is before the first, {}.", to_iso(last), to_iso(first)),
                            say("Give from as well, or a later to."))};
}

std::vector<weather::DailyTemperature> unbroken(const Place& place, const weather::DailySeries& series,
                                                Day first, Day last) {
    if (last < first) {
        throw nothing_between(first, last);
    }
    std::vector<weather::DailyTemperature> days;
    for (Day day = first; day <= last; day = day + 1) {
        const auto reading = series.at(day);
        if (!reading) {
            throw hole_at(place, day);
        }
        days.push_back(*reading);
    }
    return days;
}

std::vector<ChillHeatDay> counted(const Place& place, const ClockWish& wish, Day first,
                                  const std::vector<weather::DailyTemperature>& days) {
    std::vector<weather::DayExtremes> extremes;
    std::vector<clock::DayRange> ranges;
    for (const auto& one : days) {
        extremes.push_back({one.t_min, one.t_max});
        ranges.push_back({one.t_min, one.t_max});
    }
    const auto hours = weather::hourly_temperatures(extremes, first, place.latitude);
    const auto sums = clock::clock_sums(ranges, hours, wish.thresholds);
    std::vector<ChillHeatDay> result;
    for (std::size_t i = 0; i < days.size(); ++i) {
        const Day day = first + static_cast<int>(i);
        result.push_back({place.station.name, day, days[i], sums[i],
                          weather::sun_times(day, place.latitude).day_length()});
    }
    return result;
}

void record_filled_days(const std::vector<weather::DailyTemperature>& days, Findings& findings) {
    const auto filled =
        std::ranges::count(days, weather::DayOrigin::interpolated, &weather::DailyTemperature::origin);
    if (filled > 0) {
        findings.push_back(about_table(Level::notice, "weather_day",
                                       weather::filled_days_words(static_cast<int>(filled)), {}));
    }
}

}  // namespace

std::vector<ChillHeatDay> chill_heat_days(Place& place, const ClockWish& wish) {
    const auto series = weather::fill_gaps(known_days(place)).series;
    const Day first = wish.from.value_or(anchor_of(place.season, place.hemisphere) + season_first);
    const Day last = wish.to.value_or(std::max(first, last_known(series, place.as_of)));
    const auto days = unbroken(place, series, first, last);
    auto clock = counted(place, wish, first, days);
    record_filled_days(days, place.findings);
    return clock;
}

}  // namespace pipward::season
