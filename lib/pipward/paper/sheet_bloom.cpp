// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/bloom_chart.h"
#include "pipward/paper/html.h"
#include "pipward/paper/season_words.h"
#include "pipward/paper/sheet_sections.h"
#include "pipward/paper/text.h"

namespace pipward {
namespace {

// So many bars fit one sheet of paper; a page break would cut a taller picture.
constexpr std::size_t bars_a_picture = 16;

std::string key_html() {
    std::string items;
    for (const auto& sign : bloom_chart_signs()) {
        const auto picture = sign.svg.empty()
                                 ? ""
                                 : fmt::format(
                                       "<svg class=\"bloom-chart\" aria-hidden=\"true\" width=\"{0}\" "
                                       "height=\"{1}\" viewBox=\"0 0 {0} {1}\">{2}</svg> ",
                                       chart_sign_width, chart_sign_height, sign.svg);
        items += "<li>" + picture + element("span", "", escape_markup(sign.words)) + "</li>\n";
    }
    return "<ul class=\"key\">\n" + items + "</ul>\n";
}

std::string figure_html(const BloomChart& chart, std::string_view heading, int number) {
    const auto id = fmt::format("bloom-{}", number);
    const auto drawn = [&](ChartShape shape, std::string_view ending) {
        return bloom_chart_svg(chart, {shape, id + std::string(ending), false, false});
    };
    return "<figure>\n<figcaption>" + std::string(heading) + "</figcaption>\n<div class=\"wide\">\n" +
           drawn(ChartShape::wide, "-wide") + "</div>\n<div class=\"narrow\">\n" +
           drawn(ChartShape::stacked, "-narrow") + "</div>\n</figure>\n";
}

std::string heading_of(const BloomChart& whole, std::size_t first, std::size_t in_group) {
    const bool wanted = whole.bars[first].is_wanted();
    const auto group = wanted ? "Parents of the wanted crosses" : "Other accessions";
    return in_group == 0 ? group : fmt::format("{}, continued", group);
}

// One picture a group and at most so many bars, all on the same days.
std::string figures_html(const BloomChart& whole) {
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
        part.title += ". " + heading;
        html += figure_html(part, heading, ++number);
        in_group = next < whole.bars.size() && whole.bars[next].is_wanted() == whole.bars[first].is_wanted()
                       ? in_group + part.bars.size()
                       : 0;
        first = next;
    }
    return html;
}

std::string warnings_html(const BloomForecast& forecast, const std::string& accession) {
    std::string html;
    for (const auto& warning : forecast.windows[forecast.of_accession.at(accession)].warnings) {
        html += element("p", "", escape_markup(warning));
    }
    return html;
}

std::string source_html(const BloomBar& bar) {
    auto words = std::string(source_words(bar.source));
    if (bar.source == NeedSource::own_notes) {
        words += fmt::format(" ({})", bar.notes);
    }
    return (bar.source == NeedSource::own_notes ? "● " : "○ ") + words;
}

SheetRow number_row(const BloomForecast& forecast, const BloomBar& bar) {
    return {{name_html(bar.name), element("strong", "", iso_day_html(bar.full.p50)),
             span_html(iso_day_html(bar.full.p10), iso_day_html(bar.full.p90)), iso_day_html(bar.first),
             iso_day_html(bar.end), source_html(bar)},
            warnings_html(forecast, bar.name)};
}

std::string numbers_html(const BloomForecast& forecast, const BloomChart& chart) {
    static const std::vector<SheetColumn> columns{{"Accession", 20, true}, {"Full bloom", 13},
                                                  {"8 in 10", 25},         {"First bloom", 13},
                                                  {"Bloom end", 13},       {"Source", 16}};
    std::vector<SheetRow> rows;
    for (const auto& bar : chart.bars) {
        rows.push_back(number_row(forecast, bar));
    }
    return "<details open>\n<summary>The same in numbers</summary>\n" +
           sheet_table("Medians; full bloom falls 8 times in 10 within the span", columns, rows) +
           "</details>\n";
}

std::string left_out_html(int accessions) {
    if (accessions == 0) {
        return {};
    }
    return element(
        "p", "",
        fmt::format("Not shown: {} without bloom notes of {} own and without a part in a wanted cross. The "
                    "book's layer of bloom windows has {}.",
                    accessions == 1 ? "one accession" : fmt::format("{} accessions", accessions),
                    accessions == 1 ? "its" : "their", accessions == 1 ? "it" : "them"));
}

}  // namespace

std::string bloom_section(const SeasonSheet& sheet) {
    if (!sheet.forecast || sheet.forecast->of_accession.empty()) {
        return section_html("bloom", "Bloom",
                            "<p>No bloom window could be foretold. It takes trees with an accession, weather "
                            "and at least one bloom note.</p>\n");
    }
    const auto chart = bloom_chart_of(*sheet.forecast, *sheet.plan);
    return section_html("bloom", "Bloom",
                        key_html() + figures_html(chart) + left_out_html(chart.left_out) +
                            numbers_html(*sheet.forecast, chart));
}

}  // namespace pipward
