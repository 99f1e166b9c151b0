// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <span>
#include <vector>

#include "pipward/value/quantity.h"
#include "pipward/value/season.h"
#include "pipward/weather/hours.h"

namespace pipward::bloom {

/// The four heat curves of the averaged model.
enum class HeatCurve {
    sigmoid,      ///< clock/sigmoid_forcing.h
    arrhenius,    ///< clock/arrhenius_forcing.h
    linear_4_25,  ///< clock/linear_forcing.h between 4 and 25 °C
    linear_6_25,  ///< the same between 6 and 25
};
inline constexpr int heat_curve_count = 4;  ///< curves above

/// Of the plain degree-days that are one of the rivals: a usual base for apple.
inline constexpr Celsius degree_day_base{4.5};

/// Running sums of one season at one place, read at the noon of each season day.
/// Shape: index 0 is season day season_first, season_length entries in each vector; sums begin at 00:00 of
/// that day.
struct SeasonCurves {
    std::vector<double> chill;                               ///< chill portions
    std::array<std::vector<double>, heat_curve_count> heat;  ///< each curve's own unit
    std::vector<double> ladder;                              ///< degree-days above ladder_base
    std::vector<double> asymcur;                             ///< growing degree hours, ASYMCUR
    std::vector<double> degree_days;       ///< single-sine degree-days above degree_day_base
    std::vector<double> mean_temperature;  ///< of the day, °C (not a sum)
    /// Days from real weather; later entries go on at the pace of the last seven known days.
    int known_days = 0;
};

/// `days` starts at season day season_first and may be shorter than a season.
/// `offset` is added to both extremes of every day (a tree higher up is colder).
SeasonCurves season_curves(std::span<const weather::DayExtremes> days, Day first, Latitude latitude,
                           CelsiusStep offset);

/// Every running sum of a season's curves, in a fixed order: chill, the heat curves, ladder, asymcur,
/// degree_days.
inline constexpr int running_sum_count = heat_curve_count + 4;
/// Each sum, to be changed; none is null.
std::array<std::vector<double>*, running_sum_count> running_sums(SeasonCurves& curves);
/// The same, to be read.
std::array<const std::vector<double>*, running_sum_count> running_sums(const SeasonCurves& curves);

/// `known` for its first `days` days (at most its known_days), then the remainder of `past` by season day:
/// the daily gains of the past season on top of what this one has reached. One member of an ensemble.
/// Chill gained is lent like heat: what stands half-made in the Dynamic Model at the seam (less than one
/// portion) is left out.
SeasonCurves with_remainder(const SeasonCurves& known, const SeasonCurves& past, int days);

/// A running sum at a fractional season day; whole numbers are noons. Clamped to the ends.
double value_at(std::span<const double> sums, double season_day);
/// The first season day at which a running sum reaches `target`. Beyond the end: season_last + 1; reached
/// from the start: season_first.
double day_reaching(std::span<const double> sums, double target);

}  // namespace pipward::bloom
