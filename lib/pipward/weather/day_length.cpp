// SPDX-License-Identifier: MIT
#include "pipward/weather/day_length.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pipward::weather {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double degree = pi / 180.0;

/// 2000-01-01, whose noon is the epoch of the Almanac's formulas.
constexpr Day almanac_epoch{10957};
/// Half the Sun's disc and the mean refraction at the horizon: 50 arc-minutes.
constexpr double horizon_depression = 50.0 / 60.0 * degree;

}  // namespace

double solar_declination(Day day) {
    const double n = day - almanac_epoch;
    const double mean_longitude = 280.460 + 0.9856474 * n;
    const double anomaly = (357.528 + 0.9856003 * n) * degree;
    const double ecliptic_longitude =
        (mean_longitude + 1.915 * std::sin(anomaly) + 0.020 * std::sin(2 * anomaly)) * degree;
    const double obliquity = (23.439 - 4e-7 * n) * degree;
    return std::asin(std::sin(obliquity) * std::sin(ecliptic_longitude));
}

SunTimes sun_times(Day day, Latitude latitude) {
    const double declination = solar_declination(day);
    const double north = latitude.degrees * degree;
    const double cosine = (std::sin(horizon_depression) + std::sin(north) * std::sin(declination)) /
                          (std::cos(north) * std::cos(declination));
    const double half_night = 12.0 / pi * std::acos(std::clamp(cosine, -1.0, 1.0));
    return {half_night, 24.0 - half_night};
}

double fao56_declination(int day_of_year) {
    return 0.409 * std::sin(2 * pi * day_of_year / 365.0 - 1.39);
}

double fao56_sunset_angle(int day_of_year, Latitude latitude) {
    const double cosine = -std::tan(latitude.degrees * degree) * std::tan(fao56_declination(day_of_year));
    return std::acos(std::clamp(cosine, -1.0, 1.0));
}

double fao56_day_length(int day_of_year, Latitude latitude) {
    return 24.0 / pi * fao56_sunset_angle(day_of_year, latitude);
}

}  // namespace pipward::weather
