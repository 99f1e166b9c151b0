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

SheetRow row_of(const FieldTask& task) {
    return {{tick_box("cross " + task.cross + " on " + task.seed_parent),
             days_html(task.do_from, task.do_to) + " " + urgency_tag(task.urgency), work_html(task),
             task.flowers > 0 ? std::to_string(task.flowers) : "", escape_markup(task.pollen),
             name_html(task.cross)},
            task.why.empty() ? "" : element("p", "", escape_markup(task.why))};
}

std::vector<SheetRow> rows_of(const SeasonPlan& plan) {
    std::vector<const FieldTask*> tasks;
    for (const auto& task : plan.field) {
        tasks.push_back(&task);
    }
    std::ranges::stable_sort(tasks, {}, &FieldTask::do_from);
    std::vector<SheetRow> rows;
    for (const auto* task : tasks) {
        rows.push_back(row_of(*task));
    }
    return rows;
}

}  // namespace

std::string field_section(const SeasonPlan& plan) {
    if (plan.field.empty()) {
        return section_html("field", "Field work", "<p>No work waits at the seed parents.</p>\n");
    }
    static const std::vector<SheetColumn> columns{{"Done", 7, false, "tick"},
                                                  {"When", 19},
                                                  {"Work", 33, true},
                                                  {"Flowers", 9},
                                                  {"Pollen", 20},
                                                  {"Cross", 12}};
    return section_html("field", "Field work",
                        "<p>By first day. Browsers forget the ticks; the paper copy keeps them.</p>\n" +
                            sheet_table("Work at the seed parents", columns, rows_of(plan)));
}

}  // namespace pipward
