// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/paper/chart_marks.h"

namespace pipward::paper::detail {

/// Elements with a class each, for the chart's style sheet; text is escaped.
std::string svg_of(const ChartMarks& marks);

}  // namespace pipward::paper::detail
