// SPDX-License-Identifier: MIT
#include "pipward/paper/bloom_chart_axis.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/bloom_chart_marks.h"
#include "pipward/paper/season_words.h"
#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

// Weeks from one labelled Monday to the next, so that two-digit days do not touch.
int weeks_between_labels(const DayAxis& axis, double font) {
    int weeks = 1;
    while (7 * axis.day_width() * weeks < 2 * font) {
        weeks *= 2;
    }
    return weeks;
}

std::string month_lines(const DayAxis& axis, double from_y, double to_y) {
    std::string svg;
    for (const auto& month : months_of(axis)) {
        if (month.first > axis.from) {
            const double x = axis.start_of(month.first);
            svg += svg_line({x, from_y}, {x, to_y}, "month");
        }
    }
    return svg;
}

std::string monday_labels(const DayAxis& axis, const AxisFrame& frame) {
    std::string svg;
    const auto mondays = mondays_of(axis);
    const auto step = static_cast<std::size_t>(weeks_between_labels(axis, frame.font));
    for (std::size_t i = 0; i < mondays.size(); i += step) {
        svg += svg_text({axis.start_of(mondays[i]), frame.top - 7}, "quiet over", i == 0 ? "start" : "middle",
                        std::to_string(parts_of(mondays[i]).day));
    }
    return svg;
}

std::string month_labels(const DayAxis& axis, const AxisFrame& frame, const Speech& speech) {
    std::string svg;
    int year_shown = 0;
    for (const auto& month : months_of(axis)) {
        const double x = axis.start_of(month.first) + (month.first > axis.from ? 4 : 0);
        const auto name = speech.text(month.name);
        const auto text = month.year == year_shown ? name : fmt::format("{} {}", name, month.year);
        if (estimated_width(text) * frame.font <= axis.end_of(month.last) - x) {
            svg += svg_text({x, frame.top - frame.line - 7}, "name over", "start", text);
            year_shown = month.year;
        }
    }
    return svg;
}

// Keeps a label about x inside the axis.
std::string_view anchor_for(const DayAxis& axis, double x, double label_width) {
    if (x - label_width / 2 < axis.left) {
        return "start";
    }
    return x + label_width / 2 > axis.right ? "end" : "middle";
}

std::string as_of_line(const DayAxis& axis, Day as_of, double from_y, double to_y) {
    const double x = axis.middle_of(as_of);
    return axis.shows(as_of) ? svg_line({x, from_y}, {x, to_y}, "as-of") : "";
}

std::string as_of_label(const DayAxis& axis, const AxisFrame& frame, const Speech& speech) {
    const auto label = speech.text(say("as of {}", work_day(frame.as_of)));
    if (frame.as_of < axis.from) {
        return svg_text({axis.left, frame.font}, "as-of", "start", "← " + label);
    }
    if (frame.as_of > axis.to) {
        return svg_text({axis.right, frame.font}, "as-of", "end", label + " →");
    }
    const double x = axis.middle_of(frame.as_of);
    return svg_text({x, frame.font}, "as-of", anchor_for(axis, x, estimated_width(label) * frame.font),
                    label);
}

}  // namespace

double axis_height(double line) {
    return 3 * line + 10;
}

std::string axis_svg(const DayAxis& axis, const AxisFrame& frame, const Speech& speech) {
    return month_lines(axis, frame.top - 2 * frame.line - 5, frame.top) +
           as_of_line(axis, frame.as_of, frame.font + 4, frame.top) + monday_labels(axis, frame) +
           month_labels(axis, frame, speech) + as_of_label(axis, frame, speech) + "\n";
}

std::string grid_svg(const DayAxis& axis, Day as_of, double from_y, double to_y) {
    std::string svg;
    for (const Day monday : mondays_of(axis)) {
        const double x = axis.start_of(monday);
        svg += svg_line({x, from_y}, {x, to_y}, "grid");
    }
    return svg + month_lines(axis, from_y, to_y) + as_of_line(axis, as_of, from_y, to_y);
}

}  // namespace pipward::paper
