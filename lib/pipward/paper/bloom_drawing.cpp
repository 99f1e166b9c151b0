// SPDX-License-Identifier: MIT
#include "pipward/paper/bloom_drawing.h"

#include <algorithm>

#include "pipward/paper/day_words.h"
#include "pipward/paper/detail/bloom_chart_axis.h"
#include "pipward/paper/detail/bloom_chart_marks.h"
#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

// A stacked chart is as wide as a small phone's page, so that a unit is about a pixel there.
constexpr ChartMeasures wide{760, 14, 18, 200, 210, 618, 0};
constexpr ChartMeasures stacked{358, 16, 20, 232, 2, 356, 30};

Sentence source_text(const BloomBar& bar) {
    if (bar.source != bloom::NeedSource::own_observations) {
        return verbatim("○ ") + say("estimated");
    }
    return verbatim("● ") +
           (bar.observations == 1 ? say("1 observation") : say("{} observations", bar.observations));
}

Sentence role_text(const BloomBar& bar) {
    if (bar.seed_parent) {
        return bar.pollen_parent ? say("seed, pollen") : say("seed");
    }
    return bar.pollen_parent ? say("pollen") : Sentence{};
}

/// Beside each other where there is room for both, else one below the other.
std::vector<std::string> about_lines(const BloomBar& bar, const Speech& speech, double em) {
    const auto source = speech.text(source_text(bar));
    const auto role = speech.text(role_text(bar));
    const auto both = role.empty() ? source : source + " · " + role;
    if (role.empty() || estimated_width(both) <= em) {
        return wrap_lines(both, em, 2);
    }
    auto lines = wrap_lines(source, em, 1);
    std::ranges::move(wrap_lines(role, em, 1), std::back_inserter(lines));
    return lines;
}

// One accession's row, laid out.
struct Row {
    const BloomBar& bar;
    std::vector<std::string> name;
    std::vector<std::string> about;
    double top = 0;
    double text_bottom = 0;
    double bottom = 0;
};

Row laid_out(const BloomBar& bar, const ChartMeasures& m, const Speech& speech, double top) {
    const double em = m.names_end / m.font;
    if (m.name_alone) {
        const double bottom = top + m.line + chart_row_gap;
        return {bar, wrap_lines(bar.name, em, 1), {}, top, bottom - chart_row_gap / 2, bottom};
    }
    Row row{bar, wrap_lines(bar.name, em, 2), about_lines(bar, speech, em), top, 0, 0};
    const auto lines = std::max<std::size_t>(2, row.name.size() + row.about.size());
    row.text_bottom = top + chart_row_gap / 2 + m.line * static_cast<double>(lines);
    row.bottom = row.text_bottom + m.bar_below + chart_row_gap / 2;
    return row;
}

ChartMarks day_words(const BloomBar& bar, const ChartMeasures& m, const Speech& speech, double y) {
    return {TextMark{MarkRole::days, {m.width, y}, Anchor::end, speech.text(to_short_text(bar.full.p50))},
            TextMark{MarkRole::quiet,
                     {m.width, y + m.line},
                     Anchor::end,
                     speech.text(day_range_text(bar.full.p10, bar.full.p90))}};
}

Sentence spoken(const BloomBar& bar) {
    return say("{}: full bloom {}, 80 % prediction interval {} to {}; first bloom {}, end of bloom {}",
               bar.name, to_iso(bar.full.p50), to_iso(bar.full.p10), to_iso(bar.full.p90), to_iso(bar.first),
               to_iso(bar.end));
}

ChartMarks row_text(const Row& row, const ChartMeasures& m, const Speech& speech) {
    const double name_y = row.top + chart_row_gap / 2 + m.font;
    if (m.name_alone) {
        const auto role = row.bar.is_wanted() ? MarkRole::name : MarkRole::quiet;
        return text_block({0, name_y}, role, row.name, m.line);
    }
    const double about_y = name_y + m.line * static_cast<double>(row.name.size());
    auto marks = text_block({0, name_y}, MarkRole::name, row.name, m.line);
    lay_over(marks, text_block({0, about_y}, MarkRole::quiet, row.about, m.line));
    lay_over(marks, day_words(row.bar, m, speech, name_y));
    return marks;
}

ChartMarks row_marks(const Row& row, const BloomChart& chart, const ChartMeasures& m, const Speech& speech) {
    const auto axis = plot_axis(chart, m);
    const double plot_top = m.bar_below > 0 ? row.text_bottom : row.top;
    ChartMarks marks{LineMark{MarkRole::grid, {0, row.top}, {m.width, row.top}}};
    lay_over(marks, detail::grid_marks(axis, chart.as_of, plot_top, row.bottom));
    lay_over(marks, row_text(row, m, speech));
    lay_over(marks, detail::bar_marks(axis, row.bar, (plot_top + row.bottom) / 2));
    return marks;
}

}  // namespace

const ChartMeasures& measures_of(ChartShape shape) {
    return shape == ChartShape::wide ? wide : stacked;
}

ChartMeasures panel_measures(double width, double font, double line, double longest) {
    const double names = std::min(longest * font, width / 3);
    return {width, font, line, names, names + 8, width - 2, 0, true};
}

DayAxis plot_axis(const BloomChart& chart, const ChartMeasures& m) {
    return {chart.from, chart.to, m.plot_left, m.plot_right};
}

BloomDrawing bloom_drawing(const BloomChart& chart, const ChartMeasures& m, const Wording& wording) {
    const Speech speech(wording, parts_of(chart.from).year);
    BloomDrawing drawing{
        .width = m.width, .height = detail::axis_height(m.line), .axis = plot_axis(chart, m)};
    drawing.head = detail::axis_marks(drawing.axis, {chart.as_of, m.font, m.line, drawing.height}, speech);
    for (const auto& bar : chart.bars) {
        const auto row = laid_out(bar, m, speech, drawing.height);
        drawing.rows.push_back(
            {speech.text(spoken(bar)), row.top, row.bottom, row_marks(row, chart, m, speech)});
        drawing.height = row.bottom;
    }
    return drawing;
}

ChartMarks text_block(Spot at, MarkRole role, const std::vector<std::string>& lines, double step) {
    ChartMarks marks;
    for (const auto& line : lines) {
        marks.emplace_back(TextMark{role, at, Anchor::start, line});
        at.y += step;
    }
    return marks;
}

}  // namespace pipward::paper
