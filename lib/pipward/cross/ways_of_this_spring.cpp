// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/meeting.h"
#include "pipward/cross/detail/meeting_days.h"
#include "pipward/cross/detail/way_view.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

void collect_and_use(WayOutlook& outlook, const WayView& view, const DonorTree& donor,
                     const MeetingDays& days) {
    const auto& crossing = view.crossing;
    collect_at(outlook, crossing, donor, crossing.anchor);
    outlook.collected_now = !crossing.next_season;
    outlook.row.collect_from = crossing.day(days.collect.first);
    outlook.row.collect_to = crossing.day(days.collect.last);
    outlook.row.use_from = crossing.day(days.use.first);
    outlook.row.use_to = crossing.day(days.use.last);
    outlook.row.collect_by_median = days.by_median;
    outlook.row.use_by_median = days.by_median;
}

void collect_fresh(WayOutlook& outlook, const WayView& view, const DonorTree& donor,
                   const MeetingDays& days) {
    collect_and_use(outlook, view, donor, days);
    outlook.row.store = Store::room;
    keep_until_use(outlook, *outlook.row.collect_from, view.assume().usable_germination);
    add_how(outlook, view);
}

void collect_and_store(WayOutlook& outlook, const WayView& view, const DonorTree& donor,
                       const MeetingDays& days) {
    collect_and_use(outlook, view, donor, days);
    const int wait = std::max(drying_days, days.use.last - days.collect.first);
    outlook.row.store = store_for(wait, view.assume().usable_germination);
    keep_until_use(outlook, *outlook.row.collect_from, view.assume().usable_germination);
    add_how(outlook, view);
}

}  // namespace

WayOutlook same_day_way(const WayView& view) {
    auto outlook = begin_way(view, PollenWay::same_day);
    const auto harvested = pick_donor(view.crossing, [&](const DonorTree& donor) {
        return chance_same_day(*view.crossing.seed_left, view.courses(donor));
    });
    outlook.meets = harvested.chance;
    outlook.row.chance = {outlook.meets * chance_usable(untested_pollen, view.assume().usable_germination)};
    outlook.sentences.push_back(meeting_text(view.crossing, *harvested.donor));
    const auto days =
        same_day_days(*view.crossing.seed_left, view.courses(*harvested.donor), view.assume().risk);
    if (days && outlook.row.chance.value >= no_chance) {
        collect_fresh(outlook, view, *harvested.donor, *days);
    }
    return outlook;
}

WayOutlook kept_this_spring_way(const WayView& view) {
    auto outlook = begin_way(view, PollenWay::kept_this_spring);
    const auto harvested = pick_donor(view.crossing, [&](const DonorTree& donor) {
        return chance_kept(*view.crossing.seed_left, view.courses(donor));
    });
    outlook.meets = harvested.chance;
    outlook.row.chance = {outlook.meets};
    if (harvested.chance < 0.5) {
        outlook.sentences.push_back(too_late_text(view.crossing, *harvested.donor));
    }
    const auto days = kept_days(*view.crossing.seed_left, view.courses(*harvested.donor), view.assume().risk);
    if (days && harvested.chance >= no_chance) {
        collect_and_store(outlook, view, *harvested.donor, *days);
    }
    return outlook;
}

}  // namespace pipward::cross::detail
