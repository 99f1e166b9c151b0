// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "pipward/paper/bloom_chart.h"
#include "pipward/paper/day_axis.h"

/// The strokes a bloom chart is drawn with.
namespace pipward::paper {

struct Spot {
    double x = 0;
    double y = 0;
};

/// `anchor` is start, middle or end. The text is escaped here. A kind that ends in "over" (see the chart's
/// style sheet) keeps what lies under the text away from its letters.
std::string svg_text(Spot at, std::string_view kind, std::string_view anchor, std::string_view text);
std::string svg_line(Spot a, Spot b, std::string_view kind);

/// Half the height of the full bloom box.
inline constexpr double band_half = 8;

/// The thin line, the box and the tick of one accession, about the height `y`.
std::string bar_marks(const DayAxis& axis, const BloomBar& bar, double y);

}  // namespace pipward::paper
