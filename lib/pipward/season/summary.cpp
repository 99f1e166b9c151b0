// SPDX-License-Identifier: MIT
#include "pipward/season/summary.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/season/words.h"

namespace pipward::season {
namespace {

Sentence full_bloom_text(const bloom::BloomWindow& window) {
    return say("{} ({})", to_iso(window.full.p50), window.accession);
}

Sentence crosses_text(const cross::SeasonPlan& plan) {
    std::map<cross::Verdict, int> count;
    const auto verdicts = verdicts_of(plan);
    for (const auto& [cross, verdict] : verdicts) {
        ++count[verdict];
    }
    std::vector<Sentence> parts;
    for (const auto& [verdict, crosses] : count) {
        parts.push_back(say("{} {}", crosses, filled(cross::to_text(verdict), {})));
    }
    if (verdicts.empty()) {
        return say("The book has no cross goals for this season.");
    }
    const auto all = joined(parts, verbatim(", "));
    return verdicts.size() == 1 ? say("1 cross: {}.", all) : say("{} crosses: {}.", verdicts.size(), all);
}

Sentence pollen_text(const cross::SeasonPlan& plan) {
    if (plan.pollen.empty()) {
        return say("No pollen work.");
    }
    const auto first = std::ranges::min_element(plan.pollen, {}, &cross::PollenTask::do_to);
    const auto by = to_iso(first->do_to);
    return plan.pollen.size() == 1 ? say("1 pollen task, the first by {}.", by)
                                   : say("{} pollen tasks, the first by {}.", plan.pollen.size(), by);
}

}  // namespace

std::map<std::string, cross::Verdict> verdicts_of(const cross::SeasonPlan& plan) {
    std::map<std::string, cross::Verdict> verdicts;
    for (const auto& way : plan.ways) {
        const auto [at, added] = verdicts.try_emplace(way.cross, way.verdict);
        at->second = std::min(at->second, way.verdict);
    }
    return verdicts;
}

Sentence summary_of(const bloom::BloomForecast& forecast) {
    const auto head = say("Season {} as of {}", forecast.season.year, to_iso(forecast.as_of));
    if (forecast.windows.empty()) {
        return say("{}: no accession to forecast.", head);
    }
    const auto by_full = [](const bloom::BloomWindow& window) { return window.full.p50; };
    const auto [first, last] = std::ranges::minmax_element(forecast.windows, {}, by_full);
    if (first->full.p50 == last->full.p50) {
        return say("{}: full bloom of all about {}, forecast by {}.", head, to_iso(first->full.p50),
                   method_words(forecast.method));
    }
    return say("{}: full bloom from {} to {}, forecast by {}.", head, full_bloom_text(*first),
               full_bloom_text(*last), method_words(forecast.method));
}

Sentence summary_of(const cross::SeasonPlan& plan) {
    return crosses_text(plan) + verbatim(" ") + pollen_text(plan);
}

}  // namespace pipward::season
