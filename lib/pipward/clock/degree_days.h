// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include "pipward/value/quantity.h"
#include "pipward/value/word.h"

/// Degree-days of one day from its extremes, by every method the trade uses. Unit: °C x days.
/// Every function throws Error (input) where a minimum lies above its maximum or a lower threshold above its
/// upper one, or where any of them is not a number.
namespace pipward::clock {

/// The extremes of one day.
struct DayRange {
    Celsius low;   ///< minimum of the day; above `high` is an error
    Celsius high;  ///< maximum of the day
};

/// What heat above the upper threshold is worth. Definitions: University of California degree-day glossary;
/// algebra from memory of Roltsch et al. 1999 and Zalom et al. 1983.
enum class CutOff {
    none,          ///< there is no upper threshold
    horizontal,    ///< the rate stays at its highest
    intermediate,  ///< the rate falls as fast as it rose
    vertical,      ///< no development at all
};

/// Between which temperatures a day's warmth counts.
struct Thresholds {
    Celsius lower;                  ///< development begins above it
    Celsius upper{};                ///< looked at only where there is a cut-off
    CutOff cut_off = CutOff::none;  ///< what warmth above `upper` is worth
};

/// The mean of the extremes above `lower`, never negative.
/// Western Regional Climate Center, growing degree day tables.
DegreeDays daily_mean_degree_days(DayRange day, Celsius lower);
/// Each extreme brought between the thresholds first: "86/50" in Fahrenheit (Iowa State University). This is
/// the mean method's horizontal cut-off; it has no other.
DegreeDays modified_mean_degree_days(DayRange day, Celsius lower, Celsius upper);

/// The area under two straight lines between the extremes.
/// Lindsey & Newman 1956; Sevacherian et al. 1977 (from memory).
DegreeDays single_triangle_degree_days(DayRange day, const Thresholds& thresholds);
/// The area under one sine wave between the extremes. Baskerville & Emin 1969, Ecology 50:514-517 (from
/// memory).
DegreeDays single_sine_degree_days(DayRange day, const Thresholds& thresholds);

/// Half of today's wave and half of the one that falls to tomorrow's minimum (Allen 1976, Environmental
/// Entomology 5:388-396; definition from the University of California degree-day glossary).
/// A minimum above today's maximum makes the second half a rise.
DegreeDays double_triangle_degree_days(DayRange today, Celsius next_low, const Thresholds& thresholds);
/// The same with half sine waves (Allen 1976).
DegreeDays double_sine_degree_days(DayRange today, Celsius next_low, const Thresholds& thresholds);

/// The four-case rule of the meteorological services (Met Eireann, degree-day note).
DegreeDays four_case_degree_days(DayRange day, Celsius lower);

/// The cut-offs as they are typed.
std::span<const Word<CutOff>> words(CutOff);

}  // namespace pipward::clock
