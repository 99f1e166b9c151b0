// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <vector>

#include "pipward/paper/html.h"
#include "pipward/paper/season_words.h"
#include "pipward/paper/sheet_sections.h"
#include "pipward/paper/task_html.h"

namespace pipward {
namespace {

// A longer list is no longer looked at; the tables below hold the rest.
constexpr std::size_t most_shown = 8;

struct Due {
    Urgency urgency;
    Day from;
    Day to;
    std::string html;
};

Due due(const PollenTask& task) {
    auto html = work_html(task);
    if (task.flowers > 0) {
        html += ": " + counted(task.flowers, "flower", "flowers");
    }
    if (!task.for_crosses.empty()) {
        html += " · for " + names_html(task.for_crosses);
    }
    return {task.urgency, task.do_from, task.do_to, html};
}

Due due(const FieldTask& task) {
    auto html = work_html(task);
    if (task.flowers > 0) {
        html += ": " + counted(task.flowers, "flower", "flowers");
    }
    return {task.urgency, task.do_from, task.do_to, html + " · cross " + name_html(task.cross)};
}

std::vector<Due> all_due(const SeasonPlan& plan) {
    std::vector<Due> all;
    for (const auto& task : plan.pollen) {
        all.push_back(due(task));
    }
    for (const auto& task : plan.field) {
        all.push_back(due(task));
    }
    std::ranges::stable_sort(all, {}, &Due::to);
    return all;
}

std::string when_html(const Due& task) {
    const auto last = element("strong", "", work_day_html(task.to));
    return task.from == task.to ? last : span_html(work_day_html(task.from), last);
}

std::string item_html(const Due& task) {
    return "<li>" + element("span", "when", when_html(task)) + " " + element("span", "what", task.html) +
           "</li>\n";
}

std::string group_html(const std::vector<Due>& all, Urgency urgency, std::string_view title,
                       std::string_view remark) {
    std::string items;
    std::size_t found = 0;
    for (const auto& task : all) {
        if (task.urgency == urgency && ++found <= most_shown) {
            items += item_html(task);
        }
    }
    if (found == 0) {
        return "";
    }
    if (found > most_shown) {
        items += fmt::format("<li>and {} more in the tables below</li>\n", found - most_shown);
    }
    return fmt::format("<h3>{} {}</h3>\n{}<ul class=\"due\">\n{}</ul>\n", urgency_tag(urgency), title,
                       remark.empty() ? "" : element("p", "quiet", remark), items);
}

std::string nothing_due(const std::vector<Due>& all) {
    const Due* next = nullptr;
    for (const auto& task : all) {
        if (task.urgency == Urgency::later && (!next || task.from < next->from)) {
            next = &task;
        }
    }
    return next
               ? "<p>Nothing is due this week. Next:</p>\n<ul class=\"due\">\n" + item_html(*next) + "</ul>\n"
               : "<p>Nothing is due.</p>\n";
}

}  // namespace

std::string do_now_section(const SeasonPlan& plan) {
    const auto all = all_due(plan);
    const auto missed = group_html(
        all, Urgency::too_late, "Last safe day has passed",
        "The last safe day is in bold. Look at the cross below for another way before giving it up.");
    const auto soon = group_html(all, Urgency::today, "Can be done now", "") +
                      group_html(all, Urgency::this_week, "Within seven days", "");
    return section_html("now", "Do now", missed + (soon.empty() ? nothing_due(all) : soon));
}

}  // namespace pipward
