// SPDX-License-Identifier: MIT
#include "pipward/operation/season/detail/plan_answer.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <span>
#include <utility>

#include "pipward/season/summary.h"
#include "pipward/season/words.h"
#include "pipward/season/work_time.h"

namespace pipward::operation::detail {
namespace {

using season::FieldWorkItem;
using season::WorkTime;

constexpr std::size_t most_lines = 4;

/// Lots of one cross have work of their own.
Sentence what_of(const FieldWorkItem& item) {
    return item.kind == season::WorkKind::seed && !item.with.empty() ? say("{}, {}", item.title, item.with)
                                                                     : item.title;
}

Sentence words_of(const FieldWorkItem& item) {
    if (item.from && item.to && *item.from != *item.to) {
        return item.by_median
                   ? say("{} ({} to {}, a median)", what_of(item), to_iso(*item.from), to_iso(*item.to))
                   : say("{} ({} to {})", what_of(item), to_iso(*item.from), to_iso(*item.to));
    }
    const auto day = item.from ? item.from : item.to;
    return day ? say("{} ({})", what_of(item), to_iso(*day)) : what_of(item);
}

void add(std::vector<AnswerLine>& answer, WorkTime time, std::span<const FieldWorkItem* const> items) {
    for (const auto* item : items.first(std::min(items.size(), most_lines))) {
        answer.push_back({item == items.front() ? season::heading_of(time) : Sentence{}, words_of(*item)});
    }
    if (items.size() > most_lines) {
        answer.push_back({{}, say("and {} more", items.size() - most_lines)});
    }
    if (items.empty() && time == WorkTime::today) {
        answer.push_back({season::heading_of(time), say("nothing that must be done today")});
    }
}

/// What ends first comes first; of what is still far off, what begins first.
std::pair<Day, Day> order_of(const FieldWorkItem& item, Day as_of) {
    const Day from = item.from.value_or(item.to.value_or(as_of));
    const Day to = item.to.value_or(from);
    return season::work_time(item, as_of) == WorkTime::later ? std::pair{from, to} : std::pair{to, from};
}

}  // namespace

std::vector<AnswerLine> work_answer(std::vector<FieldWorkItem> work, Day as_of) {
    std::ranges::stable_sort(work, {}, [&](const FieldWorkItem& item) { return order_of(item, as_of); });
    std::map<WorkTime, std::vector<const FieldWorkItem*>> by_time;
    by_time[WorkTime::today];  // is told where nothing is due as well
    for (const auto& item : work) {
        by_time[season::work_time(item, as_of)].push_back(&item);
    }
    std::vector<AnswerLine> answer;
    for (const auto& [time, items] : by_time) {
        add(answer, time, items);
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
