// SPDX-License-Identifier: MIT
#include "pipward/operation/season_summary.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/paper/season_words.h"

namespace pipward {
namespace {

std::string full_bloom_text(const BloomWindow& window) {
    return fmt::format("{} ({})", to_short_text(window.full.p50), window.accession);
}

std::string counted(std::size_t number, const std::string& one, const std::string& many) {
    return fmt::format("{} {}", number, number == 1 ? one : many);
}

/// A cross is as good as its best way.
std::map<std::string, Verdict> verdicts_of(const SeasonPlan& plan) {
    std::map<std::string, Verdict> verdicts;
    for (const auto& way : plan.ways) {
        const auto [at, added] = verdicts.try_emplace(way.cross, way.verdict);
        at->second = std::min(at->second, way.verdict);
    }
    return verdicts;
}

std::string crosses_text(const SeasonPlan& plan) {
    std::map<Verdict, int> count;
    const auto verdicts = verdicts_of(plan);
    for (const auto& [cross, verdict] : verdicts) {
        ++count[verdict];
    }
    std::string parts;
    for (const auto& [verdict, crosses] : count) {
        parts += fmt::format("{}{} {}", parts.empty() ? "" : ", ", crosses, to_text(verdict));
    }
    return verdicts.empty() ? "The book has no cross goals for this season."
                            : fmt::format("{}: {}.", counted(verdicts.size(), "cross", "crosses"), parts);
}

std::string pollen_text(const SeasonPlan& plan) {
    if (plan.pollen.empty()) {
        return "No pollen work.";
    }
    const auto first = std::ranges::min_element(plan.pollen, {}, &PollenTask::do_to);
    return fmt::format("{}, the first by {}.",
                       counted(plan.pollen.size(), "piece of pollen work", "pieces of pollen work"),
                       to_short_text(first->do_to));
}

}  // namespace

std::string summary_of(const BloomForecast& forecast) {
    const auto head = fmt::format("Season {} as of {}", forecast.season.year, to_iso(forecast.as_of));
    if (forecast.windows.empty()) {
        return head + ": no accession to foretell.";
    }
    const auto by_full = [](const BloomWindow& window) { return window.full.p50; };
    const auto [first, last] = std::ranges::minmax_element(forecast.windows, {}, by_full);
    if (first->full.p50 == last->full.p50) {
        return fmt::format("{}: full bloom of all about {}, foretold by {}.", head,
                           to_short_text(first->full.p50), method_words(forecast.method));
    }
    return fmt::format("{}: full bloom from {} to {}, foretold by {}.", head, full_bloom_text(*first),
                       full_bloom_text(*last), method_words(forecast.method));
}

std::string summary_of(const SeasonPlan& plan) {
    return crosses_text(plan) + " " + pollen_text(plan);
}

}  // namespace pipward
