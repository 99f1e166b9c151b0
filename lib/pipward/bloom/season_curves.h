// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <span>
#include <vector>

#include "pipward/value/quantity.h"
#include "pipward/value/season.h"
#include "pipward/weather/hours.h"

namespace pipward {

/// The four heat curves of the averaged model.
enum class HeatCurve { sigmoid, arrhenius, linear_4_25, linear_6_25 };
inline constexpr int heat_curve_count = 4;

/// Running sums of one season at one place, read at the noon of each season day.
/// Shape: index 0 is season day season_first, season_length entries in each vector; sums begin at 00:00 of
/// that day.
struct SeasonCurves {
    std::vector<double> chill;                               ///< chill portions
    std::array<std::vector<double>, heat_curve_count> heat;  ///< each curve's own unit
    std::vector<double> ladder;                              ///< degree-days above ladder_base
    std::vector<double> asymcur;                             ///< growing degree hours, ASYMCUR
    std::vector<double> degree_days;                         ///< single-sine degree-days above ladder_base
    std::vector<double> mean_temperature;                    ///< of the day, degrees C (not a sum)
    int known_days =
        0;  ///< days from real weather; later entries go on at the pace of the last seven known days
};

/// `days` starts at season day season_first and may be shorter than a season.
/// `offset` is added to both extremes of every day (a tree higher up is colder).
SeasonCurves season_curves(std::span<const DayExtremes> days, Day first, Latitude latitude,
                           CelsiusStep offset);

/// A running sum at a fractional season day; whole numbers are noons. Clamped to the ends.
double value_at(std::span<const double> sums, double season_day);
/// The season day at which a running sum reaches `target`. Beyond the end: season_last + 1.
double day_reaching(std::span<const double> sums, double target);

}  // namespace pipward
