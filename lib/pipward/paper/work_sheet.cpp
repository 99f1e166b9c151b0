// SPDX-License-Identifier: MIT
#include "pipward/paper/work_sheet.h"

#include <fmt/format.h>

#include "pipward/paper/day_words.h"
#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/detail/task_html.h"
#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

std::string days_of(const WorkLine& line, const Speech& speech) {
    std::string html;
    if (line.from && line.to) {
        html = detail::days_html(*line.from, *line.to, line.by_median, speech);
    } else if (line.from) {
        html = speech.around(say("from {}", detail::day_html(*line.from, speech)));
    }
    return line.late ? html + " " + detail::element("span", "tag now", speech.plain(say("late"))) : html;
}

std::string detail(const Sentence& text, const Speech& speech) {
    return text.empty() ? "" : detail::element("span", "pair", speech.plain(text));
}

std::string work_of(const WorkLine& line, const Speech& speech) {
    return detail::element("strong", "", speech.plain(line.title)) + detail(line.tags, speech) +
           detail(line.with, speech) + detail(line.amount, speech);
}

std::string written_down(const WorkLine& line, const Speech& speech) {
    return detail::element("span", "quiet", speech.plain(line.write_down)) + "<div class=\"blank\"></div>";
}

std::string below(const WorkLine& line, const Speech& speech) {
    return line.mind.empty() ? "" : detail::element("p", "", speech.plain(line.mind));
}

std::string place_of(const WorkLine& line, const Speech& speech) {
    return detail::element("span", "address", detail::name_html(line.label)) +
           detail::element("span", "pair", speech.plain(line.address));
}

detail::SheetRow tree_row(const WorkLine& line, const Speech& speech) {
    return {{detail::tick_box(line.title, speech), place_of(line, speech), work_of(line, speech),
             days_of(line, speech), written_down(line, speech)},
            below(line, speech)};
}

detail::SheetRow bench_row(const WorkLine& line, const Speech& speech) {
    return {{detail::tick_box(line.title, speech), work_of(line, speech), days_of(line, speech),
             written_down(line, speech)},
            below(line, speech)};
}

std::string trees_section(const WorkSheet& sheet, const Speech& speech) {
    if (sheet.at_trees.empty()) {
        return detail::section_html(
            "trees", say("At the trees"),
            detail::paragraph_html(say("Nothing is to be done at the trees."), speech), speech);
    }
    static const std::vector<detail::SheetColumn> columns{{say("Done"), 7, false, "tick"},
                                                          {say("Where"), 22, true},
                                                          {say("Work"), 32},
                                                          {say("When"), 19},
                                                          {say("Recorded"), 20}};
    std::vector<detail::SheetRow> rows;
    for (const auto& line : sheet.at_trees) {
        rows.push_back(tree_row(line, speech));
    }
    const auto walk = sheet.walk_metres >= 1
                          ? say("In walking order, about {:.0f} m along the alleys.", sheet.walk_metres)
                          : say("In walking order.");
    return detail::section_html(
        "trees", say("At the trees"),
        detail::paragraph_html(walk, speech) +
            detail::sheet_table(say("Work at the trees, in walking order"), columns, rows, speech),
        speech);
}

std::string bench_section(const WorkSheet& sheet, const Speech& speech) {
    if (sheet.on_bench.empty()) {
        return "";
    }
    static const std::vector<detail::SheetColumn> columns{
        {say("Done"), 7, false, "tick"}, {say("Work"), 45, true}, {say("When"), 22}, {say("Recorded"), 26}};
    std::vector<detail::SheetRow> rows;
    for (const auto& line : sheet.on_bench) {
        rows.push_back(bench_row(line, speech));
    }
    return detail::section_html(
        "bench", say("Indoors"),
        detail::sheet_table(say("Work with pollen and seed indoors"), columns, rows, speech), speech);
}

std::string warnings_section(const WorkSheet& sheet, const Speech& speech) {
    if (sheet.warnings.empty()) {
        return "";
    }
    std::string items;
    for (const auto& warning : sheet.warnings) {
        items += detail::element("li", "", speech.plain(warning)) + "\n";
    }
    return detail::section_html("findings", say("Warnings"), "<ul class=\"findings\">\n" + items + "</ul>\n",
                                speech);
}

std::string masthead(const WorkSheet& sheet, const Speech& speech) {
    auto html = "<header>\n" + detail::element("h1", "", speech.plain(sheet.title)) + "\n";
    if (!sheet.orchard_name.empty()) {
        html += detail::element("p", "orchard", detail::name_html(sheet.orchard_name)) + "\n";
    }
    const auto day = [&](Day of) { return speech.plain(long_day(of)); };
    html += detail::paragraph_html(
        sheet.from == sheet.to ? verbatim(day(sheet.from)) : say("{} to {}", day(sheet.from), day(sheet.to)),
        speech);
    if (!sheet.subtitle.empty()) {
        html += detail::element("p", "note", escape_markup(sheet.subtitle)) + "\n";
    }
    return html + "</header>\n";
}

}  // namespace

std::string work_sheet_html(const WorkSheet& sheet, const Wording& wording) {
    const Speech speech(wording, parts_of(sheet.from).year);
    const auto care = sheet.hazards.empty() ? std::string{} : cautions_html(sheet.hazards, speech);
    const auto title = speech.text(sheet.title);
    return detail::sheet_page(sheet.orchard_name.empty() ? title : title + " · " + sheet.orchard_name,
                              masthead(sheet, speech) + "<main>\n" + trees_section(sheet, speech) +
                                  bench_section(sheet, speech) + warnings_section(sheet, speech) + care +
                                  "</main>\n",
                              speech);
}

}  // namespace pipward::paper
