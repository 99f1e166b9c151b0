// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/cross/detail/way_view.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

// What is not used as it came, its germination judges.
Day usable_until(const WayView& view, const LotOutlook& lot) {
    return lot.fresh ? lot.lot->collected_on + fresh_to_days : view.crossing.day(season_length);
}

// Pollen of the day must dry before it is used.
double chance_between(const WayView& view, Day dry, Day last) {
    const auto& courses = view.crossing.seed_left->each;
    const auto in_time = std::ranges::count_if(courses, [&](const BloomCourse& course) {
        return !course.working.empty() && view.crossing.day(course.working.last) >= dry &&
               view.crossing.day(course.working.first) <= last;
    });
    return static_cast<double>(in_time) / static_cast<double>(std::max<std::size_t>(1, courses.size()));
}

WayOutlook lot_way(const WayView& view, const LotOutlook& lot) {
    const bool of_this_season = lot.lot->collected_on >= view.crossing.day(season_first);
    auto outlook =
        begin_way(view, of_this_season ? PollenWay::kept_this_spring : PollenWay::kept_from_last_year);
    const Day dry = lot.lot->collected_on + fresh_from_days;
    outlook.lot = lot;
    outlook.row.lot = lot.lot->code;
    outlook.row.store = lot.store;
    outlook.row.use_from = std::max(*outlook.row.use_from, dry);
    outlook.row.use_to = std::max(lot.use, *outlook.row.use_from);
    outlook.meets = chance_between(view, dry, usable_until(view, lot));
    outlook.row.chance = {outlook.meets * lot.usable};
    outlook.germination = lot.at_use.mean;
    add_how(outlook, view);
    return outlook;
}

void freeze(WayOutlook& outlook, const WayView& view, const DonorTree& donor, DayRun days) {
    const auto& forecast = *view.bench.forecast;
    const Day anchor = anchor_of(forecast.season, forecast.hemisphere);
    collect_at(outlook, view.crossing, donor, anchor);
    outlook.collected_now = true;
    outlook.row.store = Store::freezer;
    outlook.row.collect_from = anchor + days.first;
    outlook.row.collect_to = anchor + days.last;
    keep_until_use(outlook, *outlook.row.collect_from, view.assume().usable_germination);
    add_how(outlook, view);
}

}  // namespace

std::vector<WayOutlook> lot_ways(const WayView& view) {
    const auto& crossing = view.crossing;
    const LotQuestion question{crossing.donor, crossing.blend ? crossing.goal->pollen_parent : std::string{},
                               crossing.day(view.working.first), crossing.day(view.working.last)};
    std::vector<WayOutlook> ways;
    for (const auto& lot : lots_in_hand(view.bench.stock, question, view.assume())) {
        ways.push_back(lot_way(view, lot));
    }
    return ways;
}

WayOutlook kept_for_next_season_way(const WayView& view) {
    auto outlook = begin_way(view, PollenWay::kept_from_last_year);
    const auto harvested = pick_donor(view.crossing, [&](const DonorTree& donor) {
        return share_with(*donor.left, &BloomCourse::balloon);
    });
    outlook.meets = harvested.chance * view.workable;
    outlook.row.chance = {outlook.meets};
    const auto days = balloon_collecting(*harvested.donor->left, view.assume().risk);
    if (days.empty() || harvested.chance < no_chance) {
        outlook.sentences.push_back(
            say("The balloon stage of {} is over this spring: no pollen can be stored for {}.",
                view.crossing.donor, view.crossing.goal->season.year));
        return outlook;
    }
    freeze(outlook, view, *harvested.donor, days);
    return outlook;
}

}  // namespace pipward::cross::detail
