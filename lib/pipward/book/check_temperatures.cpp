// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/book/detail/check.h"

namespace pipward::book::detail {
namespace {

using Days = std::vector<const WeatherDay*>;

// World Meteorological Organization, World Weather & Climate Extremes Archive: hottest air temperature
// recorded (Furnace Creek, 10 July 1913) and coldest (Vostok, 21 July 1983).
constexpr double hottest_ever = 56.7;
constexpr double coldest_ever = -89.2;

bool is_believable(Celsius value) {
    return value.degrees <= hottest_ever && value.degrees >= coldest_ever;
}

// A few days are told one by one; many are one trouble: a code for a missing value, columns swapped.
constexpr std::size_t few_days = 3;

std::string span_of(const Days& days) {
    const auto [first, last] = std::ranges::minmax_element(days, {}, &WeatherDay::day);
    return fmt::format("{} {} to {}", days.front()->station, to_iso((*first)->day), to_iso((*last)->day));
}

Whereabouts at(const WeatherDay& day, std::string_view field, std::string value) {
    return {"weather_day", day.station + " " + to_iso(day.day), field, std::move(value)};
}

std::string number_text(Celsius value) {
    return fmt::format("{}", value.degrees);
}

void check_reversed(const Days& all, Findings& findings) {
    Days days;
    std::ranges::copy_if(all, std::back_inserter(days),
                         [](const WeatherDay* day) { return day->t_min > day->t_max; });
    if (days.size() > few_days) {
        findings.push_back(
            error({"weather_day", span_of(days), "t_min_c"},
                  say("On {} of these days the lowest temperature is above the highest.", days.size()),
                  say("Import them again; perhaps the two columns are swapped.")));
        return;
    }
    for (const auto* day : days) {
        findings.push_back(error(at(*day, "t_min_c", number_text(day->t_min)),
                                 say("The lowest temperature is above the highest, {}.", day->t_max.degrees),
                                 say("Correct them; perhaps they are swapped.")));
    }
}

std::string shared_value(const Days& days, Celsius WeatherDay::*temperature) {
    const auto first = days.front()->*temperature;
    const bool same = std::ranges::all_of(days, [&](const auto* day) { return day->*temperature == first; });
    return same ? number_text(first) : std::string{};
}

void check_extremes(const Days& all, std::string_view field, Celsius WeatherDay::*temperature,
                    Findings& findings) {
    Days days;
    std::ranges::copy_if(all, std::back_inserter(days),
                         [&](const WeatherDay* day) { return !is_believable(day->*temperature); });
    if (days.size() > few_days) {
        findings.push_back(error(
            {"weather_day", span_of(days), field, shared_value(days, temperature)},
            say("On {} of these days stands a temperature that was never measured on earth.", days.size()),
            say("Remove the days if it stands for a missing value, or correct them; "
                "temperatures are in degrees Celsius.")));
        return;
    }
    for (const auto* day : days) {
        findings.push_back(error(at(*day, field, number_text(day->*temperature)),
                                 say("No such temperature was ever measured on earth."),
                                 say("Correct the day or remove it; temperatures are in degrees Celsius.")));
    }
}

void check_doubles(const Days& all, Findings& findings) {
    std::map<Day, int> seen;
    Days days;
    std::ranges::copy_if(all, std::back_inserter(days),
                         [&](const WeatherDay* day) { return ++seen[day->day] == 2; });
    if (days.size() > few_days) {
        findings.push_back(error({"weather_day", span_of(days), "day"},
                                 say("The station has {} of these days more than once.", days.size()),
                                 say("Remove all but one of each.")));
        return;
    }
    for (const auto* day : days) {
        findings.push_back(error(at(*day, "day", to_iso(day->day)),
                                 say("The station has this day more than once."),
                                 say("Remove all but one.")));
    }
}

void check_not_future(const Days& all, Day as_of, Findings& findings) {
    Days days;
    std::ranges::copy_if(all, std::back_inserter(days), [&](const WeatherDay* day) {
        return day->source == WeatherSource::observed && day->day > as_of;
    });
    if (days.size() > few_days) {
        findings.push_back(
            warning({"weather_day", span_of(days), "day"},
                    say("{} days in the future of {} cannot have been observed.", days.size(), to_iso(as_of)),
                    say("Correct the days, or mark them as a forecast.")));
        return;
    }
    for (const auto* day : days) {
        findings.push_back(warning(at(*day, "day", to_iso(day->day)),
                                   say("A day in the future of {} cannot have been observed.", to_iso(as_of)),
                                   say("Correct the day, or mark it as a forecast.")));
    }
}

}  // namespace

bool is_believable(const WeatherDay& day) {
    return is_believable(day.t_min) && is_believable(day.t_max);
}

void check_temperatures(const std::vector<const WeatherDay*>& days, Findings& findings) {
    check_reversed(days, findings);
    check_extremes(days, "t_min_c", &WeatherDay::t_min, findings);
    check_extremes(days, "t_max_c", &WeatherDay::t_max, findings);
}

void check_days(const std::vector<const WeatherDay*>& days, Day as_of, Findings& findings) {
    check_doubles(days, findings);
    check_not_future(days, as_of, findings);
}

}  // namespace pipward::book::detail
