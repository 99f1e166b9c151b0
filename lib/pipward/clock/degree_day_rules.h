// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/clock/degree_days.h"

/// What the degree-day methods share.
namespace pipward::clock {

/// Throws Error (input) where the minimum lies above the maximum, or one is not a number.
void require_order(DayRange day);
/// The same for thresholds; the upper one is looked at only where there is a cut-off.
void require_order(const Thresholds& thresholds);

/// One day's temperature curve, asked twice: at the lower and at the upper threshold.
struct CurveAbove {
    double area = 0;   ///< degrees x days above the threshold
    double share = 0;  ///< the part of the day above it, 0..1
};

/// The three cut-offs as sums of areas above the thresholds.
DegreeDays cut_off_degree_days(const Thresholds& thresholds, CurveAbove lower, CurveAbove upper);

/// What of a day's curve lies above a threshold, °C.
using CurveMethod = CurveAbove (*)(DayRange day, double threshold);

/// A day by one curve, its order looked at first.
DegreeDays degree_days_by(CurveMethod curve, DayRange day, const Thresholds& thresholds);
/// Half of today's curve and half of the one between its maximum and the next minimum.
DegreeDays double_degree_days_by(CurveMethod curve, DayRange today, Celsius next_low,
                                 const Thresholds& thresholds);

}  // namespace pipward::clock
