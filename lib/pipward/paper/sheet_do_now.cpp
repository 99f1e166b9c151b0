// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <vector>

#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/detail/task_html.h"
#include "pipward/season/words.h"

namespace pipward::paper::detail {
namespace {

// A longer list is no longer looked at; the tables below hold the rest.
constexpr std::size_t most_due = 8;

struct Due {
    cross::Urgency urgency;
    Day from;
    Day to;
    bool by_median;
    std::string html;
};

/// The work, with how many flowers it takes.
std::string counted_html(const std::string& work, int flowers, const Speech& speech) {
    return flowers > 0 ? work + ": " + speech.around(season::flowers_words(flowers)) : work;
}

Due due(const cross::PollenTask& task, const Speech& speech) {
    auto html = counted_html(work_html(task, speech), task.flowers, speech);
    if (!task.for_crosses.empty()) {
        html += " · " + speech.around(say("for {}", names_html(task.for_crosses)));
    }
    return {task.urgency, task.do_from, task.do_to, task.by_median, html};
}

Due due(const cross::FieldTask& task, const Speech& speech) {
    auto html = counted_html(work_html(task, speech), task.flowers, speech);
    html += " · " + speech.around(say("cross {}", name_html(task.cross)));
    if (!task.pollen.empty()) {
        html += " · " + speech.plain(task.pollen);
    }
    return {task.urgency, task.do_from, task.do_to, task.by_median, html};
}

std::vector<Due> all_due(const cross::SeasonPlan& plan, const Speech& speech) {
    std::vector<Due> all;
    for (const auto& task : plan.pollen) {
        all.push_back(due(task, speech));
    }
    for (const auto& task : plan.field) {
        all.push_back(due(task, speech));
    }
    std::ranges::stable_sort(all, {}, &Due::to);
    return all;
}

std::string when_html(const Due& task, const Speech& speech) {
    const auto last = last_day_html(day_html(task.to, speech), task.by_median, speech);
    return task.from == task.to ? last : span_html(day_html(task.from, speech), last);
}

std::string item_html(const Due& task, const Speech& speech) {
    return "<li>" + element("span", "when", when_html(task, speech)) + " " +
           element("span", "what", task.html) + "</li>\n";
}

std::string group_html(const std::vector<Due>& all, cross::Urgency urgency, const Sentence& title,
                       const Sentence& remark, const Speech& speech) {
    std::string items;
    std::size_t found = 0;
    for (const auto& task : all) {
        if (task.urgency == urgency && ++found <= most_due) {
            items += item_html(task, speech);
        }
    }
    if (found == 0) {
        return "";
    }
    if (found > most_due) {
        const auto more = say("and {} more in the tables below", found - most_due);
        items += element("li", "", speech.plain(more)) + "\n";
    }
    return fmt::format("<h3>{} {}</h3>\n{}<ul class=\"due\">\n{}</ul>\n", urgency_tag(urgency, speech),
                       speech.plain(title), remark.empty() ? "" : element("p", "quiet", speech.plain(remark)),
                       items);
}

std::string nothing_due(const std::vector<Due>& all, const Speech& speech) {
    const Due* next = nullptr;
    for (const auto& task : all) {
        if (task.urgency == cross::Urgency::later && (!next || task.from < next->from)) {
            next = &task;
        }
    }
    return next ? paragraph_html(say("Nothing is due this week. Next:"), speech) + "<ul class=\"due\">\n" +
                      item_html(*next, speech) + "</ul>\n"
                : paragraph_html(say("Nothing is due."), speech);
}

}  // namespace

std::string do_now_section(const cross::SeasonPlan& plan, const Speech& speech) {
    const auto all = all_due(plan, speech);
    const auto missed = group_html(
        all, cross::Urgency::too_late, say("Last safe day has passed"),
        say("The last safe day is in bold. See the cross below for another way before giving it up."),
        speech);
    const auto soon =
        group_html(all, cross::Urgency::today, say("Last safe day is today"), {}, speech) +
        group_html(all, cross::Urgency::this_week, say("Last safe day within seven days"), {}, speech);
    return section_html("now", say("To do now"), missed + (soon.empty() ? nothing_due(all, speech) : soon),
                        speech);
}

}  // namespace pipward::paper::detail
