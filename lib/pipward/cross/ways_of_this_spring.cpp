// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/cross/detail/choice.h"
#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/meeting.h"
#include "pipward/cross/detail/meeting_days.h"
#include "pipward/cross/detail/way_view.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

// The refrigerator will do where it keeps pollen usable with this chance.
constexpr double safe_store = 0.90;

Store store_for(int days, Share usable) {
    const auto kept = kept_germination(Store::refrigerator, days);
    return chance_usable(kept, usable) >= safe_store ? Store::refrigerator : Store::freezer;
}

void collect_and_use(WayOutlook& outlook, const WayView& view, const DonorTree& donor,
                     const MeetingDays& days) {
    const auto& crossing = view.crossing;
    collect_at(outlook, crossing, donor);
    outlook.collected_now = !crossing.next_season;
    outlook.row.collect_from = crossing.day(days.collect.first);
    outlook.row.collect_to = crossing.day(days.collect.last);
    outlook.row.use_from = crossing.day(days.use.first);
    outlook.row.use_to = crossing.day(days.use.last);
    outlook.by_median = days.by_median;
}

// Days to collect by are those of the springs in which it works.
bool may_miss(const WayOutlook& outlook) {
    return outlook.row.chance.value < good_chance;
}

Sentence fresh_text(const WayOutlook& outlook) {
    const auto by = to_iso(*outlook.row.collect_to);
    const auto within = days_text(fresh_to_days);
    return may_miss(outlook)
               ? say("If bloom overlaps: collect at balloon stage by {}, dry for a day or two, use within {} "
                     "of collecting.",
                     by, within)
               : say("Collect at balloon stage by {}, dry for a day or two, use within {} of collecting.", by,
                     within);
}

Sentence kept_text(const WayOutlook& outlook, double germinating) {
    const auto by = to_iso(*outlook.row.collect_to);
    const auto store = store_text(*outlook.row.store);
    const auto until = to_iso(*outlook.row.use_to);
    const auto share = percent_text(germinating);
    return may_miss(outlook) ? say("If bloom overlaps: collect at balloon stage by {}, dry for a day or two, "
                                   "store in {} until {}: about {} should germinate then.",
                                   by, store, until, share)
                             : say("Collect at balloon stage by {}, dry for a day or two, store in {} until "
                                   "{}: about {} should germinate then.",
                                   by, store, until, share);
}

void collect_fresh(WayOutlook& outlook, const WayView& view, const DonorTree& donor,
                   const MeetingDays& days) {
    collect_and_use(outlook, view, donor, days);
    outlook.row.store = Store::room;
    outlook.sentences.push_back(fresh_text(outlook));
}

void collect_and_store(WayOutlook& outlook, const WayView& view, const DonorTree& donor,
                       const MeetingDays& days) {
    collect_and_use(outlook, view, donor, days);
    const int wait = std::max(drying_days, days.use.last - days.collect.first);
    const Store store = store_for(wait, view.assume().usable_germination);
    const auto germination = kept_germination(store, wait);
    outlook.row.store = store;
    outlook.germination = germination.mean;
    outlook.row.chance.value *= chance_usable(germination, view.assume().usable_germination);
    outlook.sentences.push_back(kept_text(outlook, germination.mean));
}

}  // namespace

WayOutlook same_day_way(const WayView& view) {
    auto outlook = begin_way(view, PollenWay::same_day);
    const auto harvested = pick_donor(view.crossing, [&](const DonorTree& donor) {
        return chance_same_day(*view.crossing.seed_left, view.courses(donor));
    });
    outlook.row.chance = {harvested.chance *
                          chance_usable(untested_pollen, view.assume().usable_germination)};
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
    outlook.row.chance = {harvested.chance};
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
