// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/bloom_chart.h"
#include "pipward/paper/detail/chart_svg.h"
#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/text.h"
#include "pipward/season/words.h"

namespace pipward::paper::detail {
namespace {

// So many bars fit one sheet of paper; a page break would cut a taller picture.
constexpr std::size_t bars_a_picture = 16;

std::string key_html(const Speech& speech) {
    std::string items;
    for (const auto& sign : bloom_chart_signs()) {
        const auto picture = sign.marks.empty()
                                 ? ""
                                 : fmt::format(
                                       "<svg class=\"bloom-chart\" aria-hidden=\"true\" width=\"{0}\" "
                                       "height=\"{1}\" viewBox=\"0 0 {0} {1}\">{2}</svg> ",
                                       chart_sign_width, chart_sign_height, svg_of(sign.marks));
        items += "<li>" + picture + element("span", "", speech.plain(sign.words)) + "</li>\n";
    }
    return "<ul class=\"key\">\n" + items + "</ul>\n";
}

std::string figure_html(const BloomChart& chart, const Sentence& heading, int number, const Speech& speech) {
    const auto id = fmt::format("bloom-{}", number);
    const auto drawn = [&](ChartShape shape, std::string_view ending) {
        return bloom_chart_svg(chart, {shape, id + std::string(ending), false, false}, speech.wording());
    };
    return "<figure>\n<figcaption>" + speech.plain(heading) + "</figcaption>\n<div class=\"wide\">\n" +
           drawn(ChartShape::wide, "-wide") + "</div>\n<div class=\"narrow\">\n" +
           drawn(ChartShape::stacked, "-narrow") + "</div>\n</figure>\n";
}

Sentence heading_of(const BloomChart& whole, std::size_t first, std::size_t in_group) {
    const bool wanted = whole.bars[first].is_wanted();
    const auto group = wanted ? say("Parents of the wanted crosses") : say("Other accessions");
    return in_group == 0 ? group : say("{}, continued", group);
}

// One picture a group and at most so many bars, all on the same days.
std::string figures_html(const BloomChart& whole, const Speech& speech) {
    std::string html;
    int number = 0;
    std::size_t in_group = 0;
    for (std::size_t first = 0; first < whole.bars.size();) {
        BloomChart part{whole.title, whole.as_of, whole.from, whole.to, {}, 0};
        const auto heading = heading_of(whole, first, in_group);
        std::size_t next = first;
        while (next < whole.bars.size() && next - first < bars_a_picture &&
               whole.bars[next].is_wanted() == whole.bars[first].is_wanted()) {
            part.bars.push_back(whole.bars[next++]);
        }
        part.title += verbatim(". ") + heading;
        html += figure_html(part, heading, ++number, speech);
        in_group = next < whole.bars.size() && whole.bars[next].is_wanted() == whole.bars[first].is_wanted()
                       ? in_group + part.bars.size()
                       : 0;
        first = next;
    }
    return html;
}

std::string warnings_html(const bloom::BloomForecast& forecast, const std::string& accession,
                          const Speech& speech) {
    std::string html;
    for (const auto& warning : forecast.windows[forecast.of_accession.at(accession)].warnings) {
        html += element("p", "", speech.plain(warning));
    }
    return html;
}

std::string source_html(const BloomBar& bar, const Speech& speech) {
    const auto words = speech.around(season::source_words(bar.source));
    return bar.source == bloom::NeedSource::own_observations
               ? fmt::format("● {} ({})", words, bar.observations)
               : "○ " + words;
}

SheetRow number_row(const bloom::BloomForecast& forecast, const BloomBar& bar, const Speech& speech) {
    return {{name_html(bar.name), element("strong", "", day_html(bar.full.p50, speech)),
             span_html(day_html(bar.full.p10, speech), day_html(bar.full.p90, speech)),
             day_html(bar.first, speech), day_html(bar.end, speech), source_html(bar, speech)},
            warnings_html(forecast, bar.name, speech)};
}

std::string numbers_html(const bloom::BloomForecast& forecast, const BloomChart& chart,
                         const Speech& speech) {
    static const std::vector<SheetColumn> columns{{say("Accession"), 20, true}, {say("Full bloom"), 13},
                                                  {say("80 % interval"), 25},   {say("First bloom"), 13},
                                                  {say("Bloom end"), 13},       {say("Source"), 16}};
    std::vector<SheetRow> rows;
    for (const auto& bar : chart.bars) {
        rows.push_back(number_row(forecast, bar, speech));
    }
    return "<details open>\n" + element("summary", "", speech.plain(say("The same in numbers"))) + "\n" +
           sheet_table(say("Medians; full bloom with its 80 % prediction interval (8 springs in 10)"),
                       columns, rows, speech) +
           "</details>\n";
}

Sentence left_out_text(int accessions) {
    return accessions == 1
               ? say("Not shown: one accession without bloom observations of its own and without a role in a "
                     "wanted cross. The book's layer of bloom windows has it.")
               : say("Not shown: {} accessions without bloom observations of their own and without a role in "
                     "a wanted cross. The book's layer of bloom windows has them.",
                     accessions);
}

std::string left_out_html(int accessions, const Speech& speech) {
    return accessions == 0 ? "" : element("p", "", speech.around(left_out_text(accessions)));
}

}  // namespace

std::string bloom_section(const SeasonSheet& sheet, const Speech& speech) {
    if (!sheet.forecast || sheet.forecast->of_accession.empty()) {
        return section_html("bloom", say("Bloom"),
                            paragraph_html(say("No bloom window could be forecast. It needs trees with an "
                                               "accession, weather and at least one bloom observation."),
                                           speech),
                            speech);
    }
    const auto chart = bloom_chart_of(*sheet.forecast, *sheet.plan);
    return section_html("bloom", say("Bloom"),
                        key_html(speech) + figures_html(chart, speech) +
                            left_out_html(chart.left_out, speech) +
                            numbers_html(*sheet.forecast, chart, speech),
                        speech);
}

}  // namespace pipward::paper::detail
