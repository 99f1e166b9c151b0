// SPDX-License-Identifier: MIT
#include "pipward/operation/season/detail/plan_answer.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <span>
#include <utility>

#include "pipward/paper/day_words.h"
#include "pipward/season/summary.h"
#include "pipward/season/words.h"

namespace pipward::operation::detail {
namespace {

using season::FieldWorkItem;

constexpr int a_week = 7;
constexpr std::size_t most_lines = 4;

enum class When { missed, late, today, this_week, next };

When when_of(const FieldWorkItem& item, Day as_of) {
    if (!item.possible) {
        return When::missed;
    }
    if (item.late || (item.to && *item.to < as_of)) {
        return When::late;
    }
    if (item.to == as_of) {
        return When::today;
    }
    return item.from && *item.from <= as_of + a_week ? When::this_week : When::next;
}

Sentence topic_of(When when) {
    switch (when) {
        case When::missed:
            return say("Missed");
        case When::late:
            return say("Late");
        case When::today:
            return say("Today");
        case When::this_week:
            return say("This week");
        case When::next:
            break;
    }
    return say("Next");
}

Sentence words_of(const FieldWorkItem& item) {
    if (item.from && item.to && *item.from != *item.to) {
        return item.by_median
                   ? say("{} ({} to {}, a median)", item.title, paper::work_day(*item.from),
                         paper::work_day(*item.to))
                   : say("{} ({} to {})", item.title, paper::work_day(*item.from), paper::work_day(*item.to));
    }
    const auto day = item.from ? item.from : item.to;
    return day ? say("{} ({})", item.title, paper::work_day(*day)) : item.title;
}

void add(std::vector<AnswerLine>& answer, When when, std::span<const FieldWorkItem* const> items) {
    for (const auto* item : items.first(std::min(items.size(), most_lines))) {
        answer.push_back({item == items.front() ? topic_of(when) : Sentence{}, words_of(*item)});
    }
    if (items.size() > most_lines) {
        answer.push_back({{}, say("and {} more", items.size() - most_lines)});
    }
    if (items.empty() && when == When::today) {
        answer.push_back({topic_of(when), say("nothing that must be done today")});
    }
}

/// What ends first comes first; of what is still to come, what begins first.
std::pair<Day, Day> order_of(const FieldWorkItem& item, Day as_of) {
    const Day from = item.from.value_or(item.to.value_or(as_of));
    const Day to = item.to.value_or(from);
    return from <= as_of + a_week ? std::pair{to, from} : std::pair{from, to};
}

}  // namespace

std::vector<AnswerLine> work_answer(std::vector<FieldWorkItem> work, Day as_of) {
    std::ranges::stable_sort(work, {}, [&](const FieldWorkItem& item) { return order_of(item, as_of); });
    std::map<When, std::vector<const FieldWorkItem*>> by_time;
    for (const auto& item : work) {
        by_time[when_of(item, as_of)].push_back(&item);
    }
    std::vector<AnswerLine> answer;
    for (const auto when : {When::late, When::today, When::this_week, When::next, When::missed}) {
        add(answer, when, by_time[when]);
    }
    return answer;
}

std::vector<AnswerLine> crosses_answer(const cross::SeasonPlan& plan) {
    std::map<cross::Verdict, std::vector<std::string>> crosses;
    for (const auto& [cross, verdict] : season::verdicts_of(plan)) {
        crosses[verdict].push_back(cross);
    }
    std::vector<AnswerLine> answer;
    for (const auto& [verdict, codes] : crosses) {
        answer.push_back({answer.empty() ? say("Crosses") : Sentence{},
                          say("{} {}: {}", codes.size(), season::verdict_words(verdict),
                              fmt::format("{}", fmt::join(codes, ", ")))});
    }
    return answer;
}

std::vector<AnswerLine> plan_answer(const cross::SeasonPlan& plan) {
    auto answer = work_answer(season::flower_work(plan), plan.as_of);
    std::ranges::move(crosses_answer(plan), std::back_inserter(answer));
    return answer;
}

}  // namespace pipward::operation::detail
