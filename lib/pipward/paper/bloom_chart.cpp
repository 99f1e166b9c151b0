// SPDX-License-Identifier: MIT
#include "pipward/paper/bloom_chart.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/bloom_drawing.h"
#include "pipward/paper/day_words.h"
#include "pipward/paper/detail/chart_svg.h"
#include "pipward/paper/speech.h"
#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

std::string rows_svg(const BloomDrawing& drawing) {
    std::string svg;
    for (const auto& row : drawing.rows) {
        svg += "<g><title>" + escape_markup(row.spoken) + "</title>" + detail::svg_of(row.marks) + "</g>\n";
    }
    return svg;
}

std::string key_svg(const ChartMeasures& m, const Speech& speech, double& y) {
    std::string svg;
    y += 2 * m.line;
    for (const auto& sign : bloom_chart_signs()) {
        const double x = sign.marks.empty() ? 0 : chart_sign_width + 8;
        const auto lines = wrap_lines(speech.text(sign.words), (m.width - x) / m.font, 6);
        svg += fmt::format("<g transform=\"translate(0 {:.1f})\">{}</g>", y - chart_sign_height / 2.0 - 4,
                           detail::svg_of(sign.marks));
        svg += detail::svg_of(text_block({x, y}, MarkRole::quiet, lines, m.line));
        y += m.line * static_cast<double>(lines.size()) + chart_row_gap;
    }
    return svg;
}

Sentence described(const BloomChart& chart) {
    if (chart.bars.empty()) {
        return say("No accession has a bloom window.");
    }
    const auto [first, last] =
        std::ranges::minmax_element(chart.bars, {}, [](const BloomBar& bar) { return bar.full.p50; });
    const auto count = chart.bars.size();
    return say("{}, {} to {}. Earliest median full bloom: {}, {}. Latest: {}, {}.",
               count == 1 ? say("1 accession") : say("{} accessions", count), to_iso(chart.from),
               to_iso(chart.to), first->name, to_iso(first->full.p50), last->name, to_iso(last->full.p50));
}

// A file of its own has no page to give it a margin.
double margin_of(const BloomChartLayout& layout) {
    return layout.with_style ? 12 : 0;
}

std::string view_box(const BloomChartLayout& layout, double width, double height) {
    const double margin = margin_of(layout);
    return fmt::format("viewBox=\"{0:.0f} {0:.0f} {1:.0f} {2:.0f}\" width=\"{1:.0f}\" height=\"{2:.0f}\"",
                       0 - margin, width + 2 * margin, height + 2 * margin);
}

std::string opening(const BloomChart& chart, const BloomChartLayout& layout, const Speech& speech,
                    double width, double height) {
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"bloom-chart{0}\" role=\"img\" "
        "aria-labelledby=\"{1}-title {1}-desc\" {2}>\n<title id=\"{1}-title\">{3}</title>\n"
        "<desc id=\"{1}-desc\">{4}</desc>\n",
        layout.shape == ChartShape::stacked ? " stacked" : "", layout.id, view_box(layout, width, height),
        speech.plain(chart.title), speech.plain(described(chart)));
}

std::string backing(const BloomChartLayout& layout) {
    const double margin = margin_of(layout);
    return layout.with_style ? fmt::format(
                                   "<style>{0}</style>\n<rect class=\"paper\" x=\"{1:.0f}\" y=\"{1:.0f}\" "
                                   "width=\"100%\" height=\"100%\"/>\n",
                                   bloom_chart_style(), 0 - margin)
                             : "";
}

}  // namespace

std::string bloom_chart_svg(const BloomChart& chart, const BloomChartLayout& layout, const Wording& wording) {
    const Speech speech(wording, parts_of(chart.from).year);
    const auto& m = measures_of(layout.shape);
    const auto drawing = bloom_drawing(chart, m, wording);
    double y = drawing.height;
    const auto key = layout.with_key ? key_svg(m, speech, y) : "";
    return opening(chart, layout, speech, m.width, y + 2) + backing(layout) + detail::svg_of(drawing.head) +
           "\n" + rows_svg(drawing) + key + "</svg>\n";
}

Sentence day_range_text(Day from, Day to) {
    const auto a = parts_of(from);
    const auto b = parts_of(to);
    if (from == to) {
        return to_short_text(from);
    }
    if (a.year == b.year && a.month == b.month) {
        return joined({verbatim(std::to_string(a.day)), to_short_text(to)}, verbatim("–"));
    }
    return joined({to_short_text(from), to_short_text(to)}, verbatim(" – "));
}

}  // namespace pipward::paper
