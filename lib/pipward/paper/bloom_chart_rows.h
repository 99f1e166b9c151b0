// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/paper/bloom_chart.h"
#include "pipward/paper/bloom_chart_marks.h"
#include "pipward/paper/day_axis.h"
#include "pipward/paper/speech.h"

namespace pipward::paper {

/// Where things stand in a bloom chart, in drawing units.
struct ChartMeasures {
    double width = 0;
    double font = 0;
    double line = 0;       ///< from one line of text to the next
    double names_end = 0;  ///< names are broken here
    double plot_left = 0;
    double plot_right = 0;
    double bar_below = 0;  ///< room for a bar under its text; 0 where it stands beside it
};
inline constexpr double chart_row_gap = 10;

const ChartMeasures& measures_of(ChartShape shape);

/// The axis of the chart's days between the plot's edges.
DayAxis plot_axis(const BloomChart& chart, const ChartMeasures& measures);

/// All rows from the height `y` down, with the grid behind them; moves `y` to where they end.
std::string rows_svg(const BloomChart& chart, const ChartMeasures& measures, const Speech& speech, double& y);

/// Lines of text one below the other, the first at `at`.
std::string text_block(Spot at, std::string_view kind, const std::vector<std::string>& lines, double step);

}  // namespace pipward::paper
