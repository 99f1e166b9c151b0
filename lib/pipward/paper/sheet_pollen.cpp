// SPDX-License-Identifier: MIT
#include <algorithm>
#include <vector>

#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/detail/task_html.h"
#include "pipward/paper/text.h"
#include "pipward/season/words.h"

namespace pipward::paper::detail {
namespace {

std::string amount_html(const cross::PollenTask& task, const Speech& speech) {
    std::string html;
    if (task.flowers > 0) {
        html += element("span", "pair", speech.around(season::flowers_words(task.flowers)));
    }
    if (const auto mass = season::milligram_words(task.mass); !mass.empty()) {
        html += element("span", "pair", speech.around(mass));
    }
    return html;
}

std::string keep_html(const cross::PollenTask& task, const Speech& speech) {
    auto html = speech.around(season::store_words(task.store));
    if (task.keep_until) {
        html += element("span", "pair", speech.around(say("until {}", day_html(*task.keep_until, speech))));
    }
    return html;
}

SheetRow row_of(const cross::PollenTask& task, Season season, const Speech& speech) {
    const auto later = later_season_tag(task, season, speech);
    const auto second =
        task.insurance ? element("span", "tag soon", speech.plain(say("second way"))) : std::string{};
    return {{tick_box(say("pollen of {}", task.donor), speech),
             days_html(task.do_from, task.do_to, task.by_median, speech) + " " +
                 urgency_tag(task.urgency, speech),
             work_html(task, speech) + second, amount_html(task, speech), keep_html(task, speech),
             names_html(task.for_crosses) + (later.empty() ? "" : " " + later)},
            task.why.empty() ? "" : element("p", "", speech.plain(task.why))};
}

std::vector<SheetRow> pollen_rows(const cross::SeasonPlan& plan, const Speech& speech) {
    std::vector<const cross::PollenTask*> tasks;
    for (const auto& task : plan.pollen) {
        tasks.push_back(&task);
    }
    std::ranges::stable_sort(tasks, {}, &cross::PollenTask::do_to);
    std::vector<SheetRow> rows;
    for (const auto* task : tasks) {
        rows.push_back(row_of(*task, plan.season, speech));
    }
    return rows;
}

}  // namespace

std::string pollen_section(const cross::SeasonPlan& plan, const Speech& speech) {
    if (plan.pollen.empty()) {
        return section_html("pollen", say("Pollen work"),
                            paragraph_html(say("No pollen needs to be collected, forced or tested."), speech),
                            speech);
    }
    static const std::vector<SheetColumn> columns{{say("Done"), 7, false, "tick"}, {say("When"), 19},
                                                  {say("Work"), 28, true},         {say("How much"), 11},
                                                  {say("Store in"), 18},           {say("For crosses"), 17}};
    return section_html(
        "pollen", say("Pollen work"),
        paragraph_html(say("By last safe day, which is in bold."), speech) +
            sheet_table(say("Pollen work at the donor trees"), columns, pollen_rows(plan, speech), speech),
        speech);
}

}  // namespace pipward::paper::detail
