// SPDX-License-Identifier: MIT
#include "pipward/weather/hours.h"

#include <cmath>
#include <numbers>

#include "pipward/weather/day_length.h"

namespace pipward::weather {
namespace {

/// Between solar noon and the warmest moment, so the sine's half wave is this much longer on each side.
constexpr double hours_noon_to_maximum = 2.0;

double daylight_share(double hours_since_sunrise, double day_length) {
    return std::sin(std::numbers::pi * hours_since_sunrise / (day_length + 2 * hours_noon_to_maximum));
}

double night_share(double hours_since_sunset, double night_length) {
    if (night_length <= 1.0) {
        return hours_since_sunset / night_length;
    }
    return hours_since_sunset <= 1.0 ? 0.0 : std::log(hours_since_sunset) / std::log(night_length);
}

Celsius between(Celsius from, Celsius to, double share) {
    return from + (to - from) * share;
}

double middle_of(std::size_t hour) {
    return static_cast<double>(hour) + 0.5;
}

std::size_t first_hour_after(double moment) {
    return static_cast<std::size_t>(std::ceil(moment - 0.5));
}

DayShape shape_of(const SunTimes& previous, const SunTimes& today, const SunTimes& next) {
    DayShape shape;
    shape.first_daylight = first_hour_after(today.sunrise);
    shape.first_evening = first_hour_after(today.sunset);
    shape.at_sunset = daylight_share(today.day_length(), today.day_length());
    const double last_night = 24.0 - previous.sunset + today.sunrise;
    const double coming_night = 24.0 - today.sunset + next.sunrise;
    for (std::size_t hour = 0; hour < shape.first_daylight; ++hour) {
        shape.share[hour] = night_share(24.0 - previous.sunset + middle_of(hour), last_night);
    }
    for (std::size_t hour = shape.first_daylight; hour < shape.first_evening; ++hour) {
        shape.share[hour] = daylight_share(middle_of(hour) - today.sunrise, today.day_length());
    }
    for (std::size_t hour = shape.first_evening; hour < hours_a_day; ++hour) {
        shape.share[hour] = night_share(middle_of(hour) - today.sunset, coming_night);
    }
    return shape;
}

void append_day(const DayShape& shape, Celsius previous_sunset, const DayExtremes& today,
                Celsius next_minimum, std::vector<Celsius>& hours) {
    const Celsius sunset = between(today.t_min, today.t_max, shape.at_sunset);
    for (std::size_t hour = 0; hour < shape.first_daylight; ++hour) {
        hours.push_back(between(previous_sunset, today.t_min, shape.share[hour]));
    }
    for (std::size_t hour = shape.first_daylight; hour < shape.first_evening; ++hour) {
        hours.push_back(between(today.t_min, today.t_max, shape.share[hour]));
    }
    for (std::size_t hour = shape.first_evening; hour < hours_a_day; ++hour) {
        hours.push_back(between(sunset, next_minimum, shape.share[hour]));
    }
}

}  // namespace

std::vector<DayShape> day_shapes(Day first, std::size_t count, Latitude latitude) {
    std::vector<DayShape> shapes;
    shapes.reserve(count);
    SunTimes previous = sun_times(first - 1, latitude);
    SunTimes today = sun_times(first, latitude);
    for (std::size_t i = 0; i < count; ++i) {
        const SunTimes next = sun_times(first + static_cast<int>(i) + 1, latitude);
        shapes.push_back(shape_of(previous, today, next));
        previous = today;
        today = next;
    }
    return shapes;
}

std::vector<Celsius> hourly_temperatures(std::span<const DayExtremes> days, Day first, Latitude latitude) {
    return hourly_temperatures(days, day_shapes(first, days.size(), latitude));
}

std::vector<Celsius> hourly_temperatures(std::span<const DayExtremes> days,
                                         std::span<const DayShape> shapes) {
    std::vector<Celsius> hours;
    hours.reserve(days.size() * hours_a_day);
    for (std::size_t i = 0; i < days.size(); ++i) {
        const std::size_t before = i == 0 ? 0 : i - 1;
        const std::size_t after = i + 1 == days.size() ? i : i + 1;
        const Celsius previous_sunset =
            between(days[before].t_min, days[before].t_max, shapes[before].at_sunset);
        append_day(shapes[i], previous_sunset, days[i], days[after].t_min, hours);
    }
    return hours;
}

Celsius temperature_at(double solar_hour, const DaysAround& days, const SunTimes& sun) {
    const auto& [previous, today, next] = days;
    const double day_length = sun.day_length();
    const double night_length = 24.0 - day_length;
    const double at_sunset = daylight_share(day_length, day_length);
    if (solar_hour < sun.sunrise) {
        return between(between(previous.t_min, previous.t_max, at_sunset), today.t_min,
                       night_share(24.0 - sun.sunset + solar_hour, night_length));
    }
    if (solar_hour <= sun.sunset) {
        return between(today.t_min, today.t_max, daylight_share(solar_hour - sun.sunrise, day_length));
    }
    return between(between(today.t_min, today.t_max, at_sunset), next.t_min,
                   night_share(solar_hour - sun.sunset, night_length));
}

}  // namespace pipward::weather
