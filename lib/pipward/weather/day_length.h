// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/day.h"
#include "pipward/value/quantity.h"

namespace pipward::weather {

/// Sunrise and sunset in hours of local solar time (noon is 12), so sunrise + sunset = 24.
/// Polar day: 0 and 24. Polar night: 12 and 12.
struct SunTimes {
    double sunrise = 6;  ///< 0..12
    double sunset = 18;  ///< 12..24

    double day_length() const { return sunset - sunrise; }  ///< hours, 0..24
};

/// The Sun's declination in radians at noon UT, north positive, within +-0.41: low-precision formula of the
/// Astronomical Almanac.
double solar_declination(Day day);
/// Upper limb at the horizon with mean refraction: the Sun's centre 50 arc-minutes below it.
/// Within 3 minutes of published tables between the polar circles.
SunTimes sun_times(Day day, Latitude latitude);

/// FAO-56 (Allen et al. 1998, equations 24, 25, 34): declination in radians by day of year (1..366), north
/// positive, within +-0.409; no refraction. The latitude of the functions below is in degrees, as everywhere.
double fao56_declination(int day_of_year);
double fao56_sunset_angle(int day_of_year, Latitude latitude);  ///< radians from noon, 0..pi
double fao56_day_length(int day_of_year, Latitude latitude);    ///< hours, 0..24

}  // namespace pipward::weather
