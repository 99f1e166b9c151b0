// SPDX-License-Identifier: MIT
#include "pipward/paper/season_sheet.h"

#include <fmt/format.h>

#include <array>
#include <string_view>

#include "pipward/paper/day_words.h"
#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

void require_plan(const SeasonSheet& sheet) {
    if (!sheet.plan) {
        throw Error(Trouble::usage,
                    {Level::error, "", "", "", "", say("A season's sheet needs a season's plan."),
                     say("Plan the season first.")});
    }
}

std::string title_text(const SeasonSheet& sheet, const Speech& speech) {
    const auto title = speech.text(say("Season plan {}", sheet.plan->season.year));
    return sheet.orchard_name.empty() ? title : title + " · " + sheet.orchard_name;
}

Sentence counts_text(const SeasonSheet& sheet) {
    const auto forecast_made = sheet.forecast ? sheet.forecast->of_accession.size() : 0;
    const auto pollen = sheet.plan->pollen.size();
    const auto field = sheet.plan->field.size();
    return joined(
        {forecast_made == 1 ? say("1 accession forecast") : say("{} accessions forecast", forecast_made),
         pollen == 1 ? say("1 pollen task") : say("{} pollen tasks", pollen),
         field == 1 ? say("1 field task") : say("{} field tasks", field)},
        verbatim(" · "));
}

std::string as_of_html(Day as_of, const Speech& speech) {
    return fmt::format("<time datetime=\"{}\"><strong>{}</strong></time>", to_iso(as_of),
                       speech.plain(long_day(as_of)));
}

std::string masthead_html(const SeasonSheet& sheet, const Speech& speech) {
    const auto& plan = *sheet.plan;
    auto html = "<header>\n" +
                detail::element("h1", "", speech.plain(say("Season plan {}", plan.season.year))) + "\n";
    if (!sheet.orchard_name.empty()) {
        html += detail::element("p", "orchard", detail::name_html(sheet.orchard_name)) + "\n";
    }
    html += detail::paragraph_html(say("As of {} · {}", as_of_html(plan.as_of, speech), counts_text(sheet)),
                                   speech);
    if (!sheet.subtitle.empty()) {
        html += detail::element("p", "note", escape_markup(sheet.subtitle)) + "\n";
    }
    return html + "</header>\n";
}

std::string contents_html(const Speech& speech) {
    struct Part {
        std::string_view id;
        Sentence title;
    };
    const std::array<Part, 8> parts{{{"now", say("To do now")},
                                     {"bloom", say("Bloom")},
                                     {"crosses", say("Crosses")},
                                     {"pollen", say("Pollen work")},
                                     {"field", say("Field work")},
                                     {"findings", say("Warnings")},
                                     {"sure", say("Certainty")},
                                     {"care", say("Caution")}}};
    auto html = fmt::format("<nav aria-label=\"{}\">\n<ul>\n", speech.plain(say("On this page")));
    for (const auto& [id, title] : parts) {
        html += fmt::format("<li><a href=\"#{}\">{}</a></li>\n", id, speech.plain(title));
    }
    return html + "</ul>\n</nav>\n";
}

std::string sections_html(const SeasonSheet& sheet, const Speech& speech) {
    const auto& plan = *sheet.plan;
    return detail::do_now_section(plan, speech) + detail::bloom_section(sheet, speech) +
           detail::crosses_section(plan, speech) + detail::pollen_section(plan, speech) +
           detail::field_section(plan, speech) + detail::findings_section(sheet, speech) +
           detail::sureness_section(sheet, speech) + detail::cautions_section(speech);
}

}  // namespace

std::string season_sheet_html(const SeasonSheet& sheet, const Wording& wording) {
    require_plan(sheet);
    const Speech speech(wording, sheet.plan->season.year);
    return detail::sheet_page(title_text(sheet, speech),
                              masthead_html(sheet, speech) + contents_html(speech) + "<main>\n" +
                                  sections_html(sheet, speech) + "</main>\n",
                              speech);
}

}  // namespace pipward::paper
