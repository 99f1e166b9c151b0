// SPDX-License-Identifier: MIT
#pragma once

#include <span>

/// Keeping one typing error from ruling an answer.
namespace pipward::math {

/// What makes a median distance a standard deviation, were the values normal: 1 / 0.6745 (Hampel 1974, J. Am.
/// Stat. Assoc. 69:383).
inline constexpr double deviations_per_median = 1.4826;

/// The standard deviation of values about 0, by the median of their distances from it; 0 for none.
double robust_sd(std::span<const double> values);

/// The weight that Student's t with 4 degrees of freedom leaves a residual of `standardised` deviations:
/// 1 within one deviation, 0.36 at three, 0.07 at eight (Lange, Little & Taylor 1989, J. Am. Stat. Assoc.
/// 84:881). Range: 0 to 1.
double student_weight(double standardised);

/// Departures beyond so many usual ones look like a slip of the pen: Iglewicz & Hoaglin 1993, How to Detect
/// and Handle Outliers (from memory).
inline constexpr double unlikely_deviations = 3.5;

/// The weight of a residual that counts in full until it looks unlikely, and hardly at all far beyond: for
/// where honest late and early springs must keep their say. 1 up to 3.5 deviations, 0.04 at eight. Our own
/// method: published redescending weights begin to fall at once or end in nothing.
double slip_weight(double standardised);

/// Huber's loss (Huber 1964, Ann. Math. Stat. 35:73): the square up to `bend`, a straight line beyond. In the
/// square of the residual's unit.
double huber_loss(double residual, double bend);

/// The weight that belongs to that loss where it bends at 1.5 deviations: a residual far off counts, but not
/// more than one at the bend. Range: 0 to 1.
double huber_weight(double residual, double deviation);

}  // namespace pipward::math
