// SPDX-License-Identifier: MIT
#include <algorithm>
#include <vector>

#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/detail/task_html.h"
#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

SheetRow row_of(const cross::FieldTask& task, const Speech& speech) {
    return {{tick_box(say("cross {} on {}", task.cross, task.seed_parent), speech),
             days_html(task.do_from, task.do_to, task.by_median, speech) + " " +
                 urgency_tag(task.urgency, speech),
             work_html(task, speech), task.flowers > 0 ? std::to_string(task.flowers) : "",
             speech.plain(task.pollen), name_html(task.cross)},
            task.why.empty() ? "" : element("p", "", speech.plain(task.why))};
}

std::vector<SheetRow> field_rows(const cross::SeasonPlan& plan, const Speech& speech) {
    std::vector<const cross::FieldTask*> tasks;
    for (const auto& task : plan.field) {
        tasks.push_back(&task);
    }
    std::ranges::stable_sort(tasks, {}, &cross::FieldTask::do_from);
    std::vector<SheetRow> rows;
    for (const auto* task : tasks) {
        rows.push_back(row_of(*task, speech));
    }
    return rows;
}

}  // namespace

std::string field_section(const cross::SeasonPlan& plan, const Speech& speech) {
    if (plan.field.empty()) {
        return section_html("field", say("Field work"),
                            paragraph_html(say("No work is due at the seed parents."), speech), speech);
    }
    static const std::vector<SheetColumn> columns{{say("Done"), 7, false, "tick"},
                                                  {say("When"), 19},
                                                  {say("Work"), 33, true},
                                                  {say("Flowers"), 9},
                                                  {say("Pollen"), 20},
                                                  {say("Cross"), 12}};
    return section_html(
        "field", say("Field work"),
        paragraph_html(say("By first day. Browsers forget the ticks; the paper copy keeps them."), speech) +
            sheet_table(say("Work at the seed parents"), columns, field_rows(plan, speech), speech),
        speech);
}

}  // namespace pipward::paper::detail
