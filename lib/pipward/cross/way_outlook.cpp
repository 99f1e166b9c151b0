// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/way_outlook.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>

#include "pipward/cross/detail/way_view.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

constexpr std::array every_way{PollenWay::same_day, PollenWay::kept_this_spring,
                               PollenWay::kept_from_last_year, PollenWay::forced_branch};

std::vector<WayOutlook> blocked_ways(const Sentence& why) {
    std::vector<WayOutlook> ways;
    for (const auto way : every_way) {
        auto& outlook = ways.emplace_back();
        outlook.row.way = way;
        outlook.sentences.push_back(why);
    }
    return ways;
}

WayOutlook no_lot_way(const WayView& view) {
    auto outlook = begin_way(view, PollenWay::kept_from_last_year);
    outlook.sentences.push_back(no_lot_text(view.bench, view.crossing));
    return outlook;
}

void add_ways_from_trees(std::vector<WayOutlook>& ways, const WayView& view) {
    if (view.crossing.donors.empty()) {
        ways.push_back(way_without_tree(view, PollenWay::same_day));
        ways.push_back(way_without_tree(view, PollenWay::kept_this_spring));
        ways.push_back(way_without_tree(view, PollenWay::forced_branch));
        return;
    }
    ways.push_back(same_day_way(view));
    ways.push_back(kept_this_spring_way(view));
    ways.push_back(forced_branch_way(view));
    if (view.crossing.next_season) {
        ways.push_back(kept_for_next_season_way(view));
    }
}

std::vector<WayOutlook> open_ways(const Bench& bench, const Crossing& crossing) {
    const auto working = working_days(*crossing.seed_left, bench.assumptions.risk);
    const WayView view{bench, crossing, working.days, working.by_median,
                       share_with(*crossing.seed_left, &BloomCourse::working)};
    std::vector<WayOutlook> ways;
    add_ways_from_trees(ways, view);
    std::ranges::move(lot_ways(view), std::back_inserter(ways));
    const bool has_older = std::ranges::find(ways, PollenWay::kept_from_last_year,
                                             [](const WayOutlook& way) { return way.row.way; }) != ways.end();
    if (!has_older) {
        ways.push_back(no_lot_way(view));
    }
    return ways;
}

void name_parents(CrossWay& row, const Crossing& crossing) {
    row.cross = crossing.goal->code;
    row.season = crossing.goal->season;
    row.seed_parent = crossing.goal->seed_parent;
    row.pollen_parent = crossing.goal->pollen_parent;
    row.donor = crossing.donor;
    row.s_match = crossing.compatibility.match;
    row.kinship = crossing.kinship;
}

}  // namespace

WorkingDays working_days(const BloomCourses& seed_parent, double risk) {
    const auto first = first_day(seed_parent, &BloomCourse::working, 0.5);
    const auto safe = last_day(seed_parent, &BloomCourse::working, risk);
    const auto last = last_day(seed_parent, &BloomCourse::working, 0.5);
    if (!first) {
        return {};
    }
    const bool by_median = *safe <= *first;
    return {{*first, by_median ? std::max(*last, *safe) : *safe}, by_median};
}

std::vector<WayOutlook> way_outlooks(const Bench& bench, const Crossing& crossing) {
    const auto blocked = blocked_text(bench, crossing);
    auto ways = blocked ? blocked_ways(*blocked) : open_ways(bench, crossing);
    const auto more = parentage_sentences(bench, crossing);
    const auto borrowed = borrowed_text(bench, crossing);
    for (auto& way : ways) {
        name_parents(way.row, crossing);
        way.borrowed = borrowed && !way.lot;
        if (way.borrowed && !blocked) {
            way.sentences.push_back(*borrowed);
        }
        way.sentences.insert(way.sentences.end(), more.begin(), more.end());
    }
    return ways;
}

}  // namespace pipward::cross::detail
