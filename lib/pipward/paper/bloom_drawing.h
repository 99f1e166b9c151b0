// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/paper/bloom_chart.h"
#include "pipward/paper/chart_marks.h"
#include "pipward/paper/day_axis.h"

namespace pipward::paper {

/// Where things stand in a bloom chart, in drawing units.
struct ChartMeasures {
    double width = 0;         ///< of the whole chart
    double font = 0;          ///< height of the letters
    double line = 0;          ///< from one line of text to the next
    double names_end = 0;     ///< names are broken here
    double plot_left = 0;     ///< where the first day begins
    double plot_right = 0;    ///< where the last day ends
    double bar_below = 0;     ///< room for a bar under its text; 0 where it stands beside it
    bool name_alone = false;  ///< no words beside or below it; parents of wanted crosses in bold
};
inline constexpr double chart_row_gap = 10;  ///< between two rows, drawing units

/// Those of the sheet and the phone.
const ChartMeasures& measures_of(ChartShape shape);
/// A panel beside a map: one line an accession, its name and its bar. `longest` is the widest name, as
/// estimated_width() tells it; names take a third of the width at most.
ChartMeasures panel_measures(double width, double font, double line, double longest);

/// The axis of the chart's days between the plot's edges.
DayAxis plot_axis(const BloomChart& chart, const ChartMeasures& measures);

/// One accession of the drawing.
struct DrawnRow {
    std::string spoken;  ///< for whoever cannot see it; plain
    double top = 0;      ///< of the row, text and bar
    double bottom = 0;   ///< below `top`
    ChartMarks marks;    ///< of this row only
};

/// The chart laid out.
struct BloomDrawing {
    double width = 0;              ///< as in its measures
    double height = 0;             ///< of axis and rows
    DayAxis axis;                  ///< its days across
    ChartMarks head{};             ///< the axis, above the rows
    std::vector<DrawnRow> rows{};  ///< one a bar, in their order, from the top down without gaps
};
/// A chart without bars has an axis only.
BloomDrawing bloom_drawing(const BloomChart& chart, const ChartMeasures& measures,
                           const Wording& wording = in_english);

/// Lines of text one below the other, the first at `at`.
ChartMarks text_block(Spot at, MarkRole role, const std::vector<std::string>& lines, double step);

}  // namespace pipward::paper
