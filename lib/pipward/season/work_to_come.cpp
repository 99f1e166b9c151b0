// SPDX-License-Identifier: MIT
#include "pipward/season/work_to_come.h"

#include <algorithm>

namespace pipward::season {
namespace {

using FullBlooms = std::map<Season, std::map<std::string, seed::FullBloomSpan>>;

/// Does a step; where the book holds too little for it, tells that and goes on without.
template <class Work>
void where_possible(Findings& findings, Work work) {
    try {
        work();
    } catch (const Error& error) {
        if (error.trouble() != Trouble::input) {
            throw;
        }
        for (auto finding : error.findings()) {
            finding.level = std::min(finding.level, Level::warning);
            if (std::ranges::find(findings, finding) == findings.end()) {
                findings.push_back(std::move(finding));
            }
        }
    }
}

/// The work at the flowers; keeps the bloom that it forecast on the way.
std::vector<FieldWorkItem> flower_work_to_come(const PlanWish& wish, Place& place, FullBlooms& known,
                                               const Step& step) {
    std::vector<FieldWorkItem> items;
    if (!is_in_progress(place)) {
        return items;
    }
    where_possible(place.findings, [&] {
        const auto forecast = make_forecast(place, wish.method, step).forecast;
        known[place.season] = full_bloom_of(forecast);
        const auto assumptions = assumptions_of(wish, place.orchard, place.as_of);
        items = flower_work(plan_crosses(place, forecast, assumptions, step));
    });
    return items;
}

std::vector<seed::TagToHarvest> tags_with_bloom(MethodChoice method, Place& place, FullBlooms& known,
                                                const Step& step) {
    const auto nothing_told = [](const std::string&) { return std::optional<seed::FullBloomSpan>{}; };
    std::map<std::string, Season> season_of_tree;
    for (const auto& tag : seed::tags_to_harvest(place.orchard, place.as_of, nothing_told)) {
        const auto season = season_of(tag.work->pollinated_on, place.hemisphere);
        season_of_tree.emplace(tag.work->tree, season);
        if (!known.contains(season)) {
            known[season] = {};
            where_possible(place.findings,
                           [&] { known[season] = full_bloom_known(place, season, method, step); });
        }
    }
    return seed::tags_to_harvest(
        place.orchard, place.as_of, [&](const std::string& tree) -> std::optional<seed::FullBloomSpan> {
            const auto& blooms = known[season_of_tree[tree]];
            const auto found = blooms.find(tree);
            return found == blooms.end() ? std::nullopt : std::optional{found->second};
        });
}

bool is_open(const FieldWorkItem& item, Day as_of) {
    const bool over = item.to && *item.to < as_of;
    return item.possible && (!over || item.late);
}

}  // namespace

std::vector<seed::TagToHarvest> harvest_to_come(MethodChoice method, Place& place, const Step& step) {
    FullBlooms known;
    return tags_with_bloom(method, place, known, step);
}

std::vector<FieldWorkItem> work_to_come(const PlanWish& wish, Place& place, const Step& step) {
    FullBlooms known;
    auto items = flower_work_to_come(wish, place, known, step);
    std::ranges::move(fruit_work(tags_with_bloom(wish.method, place, known, step), place.as_of),
                      std::back_inserter(items));
    std::ranges::move(seed_work(place.orchard, place.as_of), std::back_inserter(items));
    std::erase_if(items, [&](const FieldWorkItem& item) { return !is_open(item, place.as_of); });
    std::ranges::stable_sort(items, [](const FieldWorkItem& a, const FieldWorkItem& b) {
        return std::pair{!a.from, a.from} < std::pair{!b.from, b.from};
    });
    return items;
}

}  // namespace pipward::season
