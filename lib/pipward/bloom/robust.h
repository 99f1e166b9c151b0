// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

/// Keeping one typing error from ruling an answer.
namespace pipward::bloom {

double median_of(std::vector<double> values);  ///< 0 for none

/// 1.4826 x the median distance from zero: the standard deviation, were the values normal about it.
double robust_sd(std::span<const double> values);

/// The weight that Student's t with 4 degrees of freedom leaves a residual of `standardised` deviations:
/// 1 within one deviation, 0.36 at three, 0.07 at eight.
double student_weight(double standardised);

/// Departures beyond so many usual ones look like a slip of the pen.
inline constexpr double unlikely_deviations = 3.5;

/// The weight of a residual that counts in full until it looks unlikely, and hardly at all far beyond: for
/// where honest late and early springs must keep their say. 1 up to 3.5 deviations, 0.04 at eight.
double slip_weight(double standardised);

/// Huber's loss: the square up to `bend`, a straight line beyond.
double huber_loss(double residual, double bend);

}  // namespace pipward::bloom
