// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/bloom_chart_axis.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/detail/day_words.h"
#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

// Weeks from one labelled Monday to the next, so that two-digit days do not touch.
int weeks_between_labels(const DayAxis& axis, double font) {
    int weeks = 1;
    while (7 * axis.day_width() * weeks < 2 * font) {
        weeks *= 2;
    }
    return weeks;
}

ChartMarks month_lines(const DayAxis& axis, double from_y, double to_y) {
    ChartMarks marks;
    for (const auto& month : months_of(axis)) {
        if (month.first > axis.from) {
            const double x = axis.start_of(month.first);
            marks.emplace_back(LineMark{MarkRole::month, {x, from_y}, {x, to_y}});
        }
    }
    return marks;
}

ChartMarks monday_labels(const DayAxis& axis, const AxisFrame& frame) {
    ChartMarks marks;
    const auto mondays = mondays_of(axis);
    const auto step = static_cast<std::size_t>(weeks_between_labels(axis, frame.font));
    for (std::size_t i = 0; i < mondays.size(); i += step) {
        marks.emplace_back(TextMark{MarkRole::quiet,
                                    {axis.start_of(mondays[i]), frame.top - 7},
                                    i == 0 ? Anchor::start : Anchor::middle,
                                    std::to_string(parts_of(mondays[i]).day),
                                    true});
    }
    return marks;
}

ChartMarks month_labels(const DayAxis& axis, const AxisFrame& frame, const Speech& speech) {
    ChartMarks marks;
    int year_shown = 0;
    for (const auto& month : months_of(axis)) {
        const double x = axis.start_of(month.first) + (month.first > axis.from ? 4 : 0);
        const auto name = speech.text(month.name);
        const auto text = month.year == year_shown ? name : fmt::format("{} {}", name, month.year);
        if (estimated_width(text) * frame.font <= axis.end_of(month.last) - x) {
            marks.emplace_back(
                TextMark{MarkRole::name, {x, frame.top - frame.line - 7}, Anchor::start, text, true});
            year_shown = month.year;
        }
    }
    return marks;
}

// Keeps a label about x inside the axis.
Anchor anchor_for(const DayAxis& axis, double x, double label_width) {
    if (x - label_width / 2 < axis.left) {
        return Anchor::start;
    }
    return x + label_width / 2 > axis.right ? Anchor::end : Anchor::middle;
}

ChartMarks as_of_line(const DayAxis& axis, Day as_of, double from_y, double to_y) {
    if (!axis.shows(as_of)) {
        return {};
    }
    const double x = axis.middle_of(as_of);
    return {LineMark{MarkRole::as_of, {x, from_y}, {x, to_y}}};
}

TextMark as_of_label(const DayAxis& axis, const AxisFrame& frame, const Speech& speech) {
    const auto label = speech.text(say("as of {}", work_day(frame.as_of)));
    if (frame.as_of < axis.from) {
        return {MarkRole::as_of, {axis.left, frame.font}, Anchor::start, "← " + label};
    }
    if (frame.as_of > axis.to) {
        return {MarkRole::as_of, {axis.right, frame.font}, Anchor::end, label + " →"};
    }
    const double x = axis.middle_of(frame.as_of);
    const auto anchor = anchor_for(axis, x, estimated_width(label) * frame.font);
    return {MarkRole::as_of, {x, frame.font}, anchor, label};
}

}  // namespace

double axis_height(double line) {
    return 3 * line + 10;
}

ChartMarks axis_marks(const DayAxis& axis, const AxisFrame& frame, const Speech& speech) {
    auto marks = month_lines(axis, frame.top - 2 * frame.line - 5, frame.top);
    lay_over(marks, as_of_line(axis, frame.as_of, frame.font + 4, frame.top));
    lay_over(marks, monday_labels(axis, frame));
    lay_over(marks, month_labels(axis, frame, speech));
    marks.emplace_back(as_of_label(axis, frame, speech));
    return marks;
}

ChartMarks grid_marks(const DayAxis& axis, Day as_of, double from_y, double to_y) {
    ChartMarks marks;
    for (const Day monday : mondays_of(axis)) {
        const double x = axis.start_of(monday);
        marks.emplace_back(LineMark{MarkRole::grid, {x, from_y}, {x, to_y}});
    }
    lay_over(marks, month_lines(axis, from_y, to_y));
    lay_over(marks, as_of_line(axis, as_of, from_y, to_y));
    return marks;
}

}  // namespace pipward::paper::detail
