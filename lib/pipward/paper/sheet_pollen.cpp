// SPDX-License-Identifier: MIT
#include <algorithm>
#include <vector>

#include "pipward/paper/html.h"
#include "pipward/paper/season_words.h"
#include "pipward/paper/sheet_sections.h"
#include "pipward/paper/task_html.h"
#include "pipward/paper/text.h"

namespace pipward {
namespace {

std::string amount_html(const PollenTask& task) {
    std::string html;
    if (task.flowers > 0) {
        html += element("span", "pair", counted(task.flowers, "flower", "flowers"));
    }
    if (const auto mass = milligram_words(task.mass); !mass.empty()) {
        html += element("span", "pair", mass);
    }
    return html;
}

std::string keep_html(const PollenTask& task) {
    auto html = std::string(store_words(task.store));
    if (task.keep_until) {
        html += element("span", "pair", "until " + iso_day_html(*task.keep_until));
    }
    return html;
}

SheetRow row_of(const PollenTask& task, Season season) {
    const auto later = later_season_tag(task, season);
    return {{tick_box("pollen of " + task.donor),
             days_html(task.do_from, task.do_to) + " " + urgency_tag(task.urgency), work_html(task),
             amount_html(task), keep_html(task),
             names_html(task.for_crosses) + (later.empty() ? "" : " " + later)},
            task.why.empty() ? "" : element("p", "", escape_markup(task.why))};
}

std::vector<SheetRow> rows_of(const SeasonPlan& plan) {
    std::vector<const PollenTask*> tasks;
    for (const auto& task : plan.pollen) {
        tasks.push_back(&task);
    }
    std::ranges::stable_sort(tasks, {}, &PollenTask::do_to);
    std::vector<SheetRow> rows;
    for (const auto* task : tasks) {
        rows.push_back(row_of(*task, plan.season));
    }
    return rows;
}

}  // namespace

std::string pollen_section(const SeasonPlan& plan) {
    if (plan.pollen.empty()) {
        return section_html("pollen", "Pollen work",
                            "<p>No pollen needs to be gathered, forced or tested.</p>\n");
    }
    static const std::vector<SheetColumn> columns{
        {"Done", 7, false, "tick"}, {"When", 19},    {"Work", 28, true},
        {"How much", 11},           {"Keep in", 18}, {"For crosses", 17}};
    return section_html("pollen", "Pollen work",
                        "<p>By last safe day, which is in bold.</p>\n" +
                            sheet_table("Pollen work at the donor trees", columns, rows_of(plan)));
}

}  // namespace pipward
