// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/html.h"
#include "pipward/paper/sheet_sections.h"
#include "pipward/paper/text.h"

namespace pipward {
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
std::string plain(std::string name) {
    std::ranges::replace(name, '_', ' ');
    return name;
}

std::string where_text(const Finding& finding) {
    auto where = plain(finding.table);
    for (const auto& part : {finding.row, plain(finding.field)}) {
        if (!part.empty()) {
            where += (where.empty() ? "" : ", ") + part;
        }
    }
    return finding.value.empty() ? where : where + " = " + finding.value;
}

std::string_view kind_of(Level level) {
    return level == Level::error ? "tag missed" : level == Level::warning ? "tag now" : "tag";
}

std::string item_html(const Finding& finding) {
    auto html = element("span", kind_of(finding.level), to_text(finding.level)) + " ";
    if (const auto where = where_text(finding); !where.empty()) {
        html += element("span", "quiet", escape_markup(where) + ":") + " ";
    }
    html += escape_markup(finding.message);
    if (!finding.remedy.empty()) {
        html += " " + element("em", "", escape_markup(finding.remedy));
    }
    return "<li>" + html + "</li>\n";
}

}  // namespace

std::string findings_section(const SeasonSheet& sheet) {
    const auto all = each_once(sheet);
    if (all.empty()) {
        return section_html("findings", "Warnings", "<p>Nothing in the book stood against this plan.</p>\n");
    }
    std::string items;
    for (std::size_t i = 0; i < std::min(all.size(), most_shown); ++i) {
        items += item_html(all[i]);
    }
    if (all.size() > most_shown) {
        items += fmt::format("<li>and {} more; the run that made this sheet reports every one.</li>\n",
                             all.size() - most_shown);
    }
    return section_html("findings", "Warnings", "<ul class=\"findings\">\n" + items + "</ul>\n");
}

}  // namespace pipward
