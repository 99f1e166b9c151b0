// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/paper/bloom_chart.h"
#include "pipward/paper/chart_marks.h"
#include "pipward/paper/day_axis.h"

namespace pipward::paper::detail {

/// Half the height of the full bloom box.
inline constexpr double band_half = 8;

/// The thin line, the box and the tick of one accession, about the height `y`.
ChartMarks bar_marks(const DayAxis& axis, const BloomBar& bar, double y);

}  // namespace pipward::paper::detail
