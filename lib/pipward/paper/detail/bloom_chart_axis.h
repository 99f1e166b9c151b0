// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/paper/chart_marks.h"
#include "pipward/paper/day_axis.h"
#include "pipward/paper/speech.h"

namespace pipward::paper::detail {

/// What the axis of a bloom chart needs besides its days, in drawing units.
struct AxisFrame {
    Day as_of;
    double font = 14;
    double line = 18;
    double top = 0;  ///< where the first row begins; the axis stands above it
};

/// Room for the label of the forecast's day, the months and the Mondays.
double axis_height(double line);

/// Names of the months, days of the Mondays and the label of the forecast's day, each with a short stroke.
ChartMarks axis_marks(const DayAxis& axis, const AxisFrame& frame, const Speech& speech);
/// The thin grid and the line of the forecast's day, from one height to another.
ChartMarks grid_marks(const DayAxis& axis, Day as_of, double from_y, double to_y);

}  // namespace pipward::paper::detail
