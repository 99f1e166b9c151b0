// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

constexpr std::size_t most_shown = 40;

Findings each_once(const SeasonSheet& sheet) {
    Findings all;
    for (const auto* list : {&sheet.plan->findings, &sheet.findings}) {
        for (const auto& finding : *list) {
            if (std::ranges::find(all, finding) == all.end()) {
                all.push_back(finding);
            }
        }
    }
    all = told_together(all);
    std::ranges::stable_sort(all, std::ranges::greater{}, &Finding::level);
    return all;
}

/// Tables and columns of the book are words when their underscores are blanks.
std::string plain(std::string name, const Wording& wording) {
    std::ranges::replace(name, '_', ' ');
    return wording(name);
}

std::string where_text(const Finding& finding, const Wording& wording) {
    auto where = plain(finding.table, wording);
    for (const auto& part : {finding.row.in(wording), plain(finding.field, wording)}) {
        if (!part.empty()) {
            where += (where.empty() ? "" : ", ") + part;
        }
    }
    return finding.value.empty() ? where : where + " = " + verbatim(finding.value).in(wording);
}

std::string_view kind_of(Level level) {
    return level == Level::error ? "tag missed" : level == Level::warning ? "tag now" : "tag";
}

std::string item_html(const Finding& finding, const Speech& speech) {
    auto html = element("span", kind_of(finding.level), speech.plain(level_words(finding.level))) + " ";
    if (const auto where = where_text(finding, speech.wording()); !where.empty()) {
        html += element("span", "quiet", escape_markup(where) + ":") + " ";
    }
    html += speech.plain(finding.message);
    if (!finding.remedy.empty()) {
        html += " " + element("em", "", speech.plain(finding.remedy));
    }
    return "<li>" + html + "</li>\n";
}

}  // namespace

std::string findings_section(const SeasonSheet& sheet, const Speech& speech) {
    const auto all = each_once(sheet);
    if (all.empty()) {
        return section_html("findings", say("Warnings"),
                            paragraph_html(say("Nothing in the book spoke against this plan."), speech),
                            speech);
    }
    std::string items;
    for (std::size_t i = 0; i < std::min(all.size(), most_shown); ++i) {
        items += item_html(all[i], speech);
    }
    if (all.size() > most_shown) {
        const auto more =
            say("and {} more; the run that made this sheet reports every one.", all.size() - most_shown);
        items += element("li", "", speech.plain(more)) + "\n";
    }
    return section_html("findings", say("Warnings"), "<ul class=\"findings\">\n" + items + "</ul>\n", speech);
}

}  // namespace pipward::paper::detail
