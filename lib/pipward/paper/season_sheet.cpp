// SPDX-License-Identifier: MIT
#include "pipward/paper/season_sheet.h"

#include <fmt/format.h>

#include "pipward/paper/html.h"
#include "pipward/paper/season_words.h"
#include "pipward/paper/sheet_sections.h"
#include "pipward/paper/text.h"

namespace pipward {
namespace {

void require_plan(const SeasonSheet& sheet) {
    if (!sheet.plan) {
        throw Error(Trouble::usage, {Level::error, "", "", "", "", "A season's sheet needs a season's plan.",
                                     "Plan the season first."});
    }
}

std::string title_text(const SeasonSheet& sheet) {
    const auto title = fmt::format("Season plan {}", sheet.plan->season.year);
    return sheet.orchard_name.empty() ? title : title + " · " + sheet.orchard_name;
}

std::string head_html(const SeasonSheet& sheet) {
    return "<head>\n<meta charset=\"utf-8\">\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
           "<meta name=\"color-scheme\" content=\"light dark\">\n<title>" +
           escape_markup(title_text(sheet)) + "</title>\n<style>\n" + sheet_style() + "</style>\n</head>\n";
}

std::string counts_text(const SeasonSheet& sheet) {
    const auto foretold = sheet.forecast ? static_cast<int>(sheet.forecast->of_accession.size()) : 0;
    return counted(foretold, "accession foretold", "accessions foretold") + " · " +
           counted(static_cast<int>(sheet.plan->pollen.size()), "pollen task", "pollen tasks") + " · " +
           counted(static_cast<int>(sheet.plan->field.size()), "field task", "field tasks");
}

std::string masthead_html(const SeasonSheet& sheet) {
    const auto& plan = *sheet.plan;
    auto html = fmt::format("<header>\n<h1>Season plan {}</h1>\n", plan.season.year);
    if (!sheet.orchard_name.empty()) {
        html += element("p", "orchard", name_html(sheet.orchard_name)) + "\n";
    }
    html += fmt::format("<p>As of <time datetime=\"{}\"><strong>{}</strong></time> · {}</p>\n",
                        to_iso(plan.as_of), long_day(plan.as_of), counts_text(sheet));
    if (!sheet.note.empty()) {
        html += element("p", "note", escape_markup(sheet.note)) + "\n";
    }
    return html + "</header>\n";
}

std::string contents_html() {
    return "<nav aria-label=\"On this page\">\n<ul>\n"
           "<li><a href=\"#now\">Do now</a></li>\n<li><a href=\"#bloom\">Bloom</a></li>\n"
           "<li><a href=\"#crosses\">Crosses</a></li>\n<li><a href=\"#pollen\">Pollen work</a></li>\n"
           "<li><a href=\"#field\">Field work</a></li>\n<li><a href=\"#findings\">Warnings</a></li>\n"
           "<li><a href=\"#sure\">How sure</a></li>\n<li><a href=\"#care\">Take care</a></li>\n"
           "</ul>\n</nav>\n";
}

std::string sections_html(const SeasonSheet& sheet) {
    const auto& plan = *sheet.plan;
    return do_now_section(plan) + bloom_section(sheet) + crosses_section(plan) + pollen_section(plan) +
           field_section(plan) + findings_section(sheet) + sureness_section(sheet) + cautions_section();
}

}  // namespace

std::string season_sheet_html(const SeasonSheet& sheet) {
    require_plan(sheet);
    return "<!DOCTYPE html>\n<html lang=\"en\">\n" + head_html(sheet) + "<body>\n" + masthead_html(sheet) +
           contents_html() + "<main>\n" + sections_html(sheet) + "</main>\n</body>\n</html>\n";
}

}  // namespace pipward
