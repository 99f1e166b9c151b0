// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "pipward/clock/degree_days.h"
#include "pipward/value/quantity.h"

namespace pipward::clock {

/// Every clock's running sum at the end of one day, counted from the first day given.
struct ClockSums {
    ChillingHours chilling_hours;        ///< hours between 0 and 7.2 °C
    UtahUnits utah_units;                ///< plain running sum, may be negative
    ChillPortions chill_portions;        ///< Dynamic Model; a completed portion is seldom exactly 1
    std::optional<DegreeDays> gdd_mean;  ///< none where the mean method does not know the cut-off
    DegreeDays gdd_triangle;             ///< single triangle
    DegreeDays gdd_sine;                 ///< single sine
    DegreeHours gdh_linear;              ///< Richardson et al. 1975
    DegreeHours gdh_asymcur;             ///< Anderson, Richardson & Kesner 1986
};

/// `hours` holds the 24 hourly readings of each of `days`, in order. Shape: as many as `days`.
/// The mean method knows no cut-off and the horizontal one (the modified mean).
/// Throws Error (usage) where there are not 24 hours a day, Error (input) as the degree-days do.
std::vector<ClockSums> clock_sums(std::span<const DayRange> days, std::span<const Celsius> hours,
                                  const Thresholds& thresholds);

}  // namespace pipward::clock
