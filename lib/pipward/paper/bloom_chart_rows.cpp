// SPDX-License-Identifier: MIT
#include "pipward/paper/bloom_chart_rows.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/bloom_chart_axis.h"
#include "pipward/paper/season_words.h"
#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

// A stacked chart is as wide as a small phone's page, so that a unit is about a pixel there.
constexpr ChartMeasures wide{760, 14, 18, 200, 210, 618, 0};
constexpr ChartMeasures stacked{358, 16, 20, 232, 2, 356, 30};

Sentence source_text(const BloomBar& bar) {
    if (bar.source != bloom::NeedSource::own_notes) {
        return verbatim("○ ") + say("borrowed");
    }
    return verbatim("● ") + (bar.notes == 1 ? say("1 note") : say("{} notes", bar.notes));
}

Sentence role_text(const BloomBar& bar) {
    if (bar.seed_parent) {
        return verbatim(" · ") + (bar.pollen_parent ? say("seed, pollen") : say("seed"));
    }
    return bar.pollen_parent ? verbatim(" · ") + say("pollen") : Sentence{};
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
    const auto about = speech.text(source_text(bar) + role_text(bar));
    Row row{bar, wrap_lines(bar.name, em, 2), wrap_lines(about, em, 2), top, 0, 0};
    const auto lines = std::max<std::size_t>(2, row.name.size() + row.about.size());
    row.text_bottom = top + chart_row_gap / 2 + m.line * static_cast<double>(lines);
    row.bottom = row.text_bottom + m.bar_below + chart_row_gap / 2;
    return row;
}

std::string days_svg(const BloomBar& bar, const ChartMeasures& m, const Speech& speech, double y) {
    return svg_text({m.width, y}, "days", "end", speech.text(to_short_text(bar.full.p50))) +
           svg_text({m.width, y + m.line}, "quiet", "end",
                    speech.text(day_range_text(bar.full.p10, bar.full.p90)));
}

Sentence spoken(const BloomBar& bar) {
    return say("{}: full bloom {}, between {} and {}; first bloom {}, end {}", bar.name, to_iso(bar.full.p50),
               to_iso(bar.full.p10), to_iso(bar.full.p90), to_iso(bar.first), to_iso(bar.end));
}

std::string row_text(const Row& row, const ChartMeasures& m, const Speech& speech) {
    const double name_y = row.top + chart_row_gap / 2 + m.font;
    const double about_y = name_y + m.line * static_cast<double>(row.name.size());
    return text_block({0, name_y}, "name", row.name, m.line) +
           text_block({0, about_y}, "quiet", row.about, m.line) + days_svg(row.bar, m, speech, name_y);
}

std::string row_svg(const Row& row, const BloomChart& chart, const ChartMeasures& m, const Speech& speech) {
    const auto axis = plot_axis(chart, m);
    const double plot_top = m.bar_below > 0 ? row.text_bottom : row.top;
    return "<g><title>" + speech.plain(spoken(row.bar)) + "</title>" +
           svg_line({0, row.top}, {m.width, row.top}, "grid") +
           grid_svg(axis, chart.as_of, plot_top, row.bottom) + row_text(row, m, speech) +
           bar_marks(axis, row.bar, (plot_top + row.bottom) / 2) + "</g>\n";
}

}  // namespace

const ChartMeasures& measures_of(ChartShape shape) {
    return shape == ChartShape::wide ? wide : stacked;
}

DayAxis plot_axis(const BloomChart& chart, const ChartMeasures& m) {
    return {chart.from, chart.to, m.plot_left, m.plot_right};
}

std::string rows_svg(const BloomChart& chart, const ChartMeasures& m, const Speech& speech, double& y) {
    std::string svg;
    for (const auto& bar : chart.bars) {
        const auto row = laid_out(bar, m, speech, y);
        svg += row_svg(row, chart, m, speech);
        y = row.bottom;
    }
    return svg;
}

std::string text_block(Spot at, std::string_view kind, const std::vector<std::string>& lines, double step) {
    std::string svg;
    for (const auto& line : lines) {
        svg += svg_text(at, kind, "start", line);
        at.y += step;
    }
    return svg;
}

}  // namespace pipward::paper
