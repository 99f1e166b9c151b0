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

void gather_and_use(WayOutlook& outlook, const WayView& view, const DonorTree& donor,
                    const MeetingDays& days) {
    const auto& crossing = view.crossing;
    gather_at(outlook, crossing, donor);
    outlook.gathered_now = !crossing.next_season;
    outlook.row.gather_from = crossing.day(days.gather.first);
    outlook.row.gather_to = crossing.day(days.gather.last);
    outlook.row.use_from = crossing.day(days.use.first);
    outlook.row.use_to = crossing.day(days.use.last);
    outlook.by_median = days.by_median;
}

// Days to gather by are those of the springs in which it works.
bool may_miss(const WayOutlook& outlook) {
    return outlook.row.chance.value < good_chance;
}

Sentence fresh_text(const WayOutlook& outlook) {
    const auto by = to_iso(*outlook.row.gather_to);
    const auto within = days_text(fresh_to_days);
    return may_miss(outlook)
               ? say("Should they meet: gather at balloon by {}, dry a day or two, use within {} of "
                     "gathering.",
                     by, within)
               : say("Gather at balloon by {}, dry a day or two, use within {} of gathering.", by, within);
}

Sentence kept_text(const WayOutlook& outlook, double germinating) {
    const auto by = to_iso(*outlook.row.gather_to);
    const auto store = store_text(*outlook.row.store);
    const auto until = to_iso(*outlook.row.use_to);
    const auto share = percent_text(germinating);
    return may_miss(outlook) ? say("Should they meet: gather at balloon by {}, dry a day or two, keep in {} "
                                   "until {}: about {} should germinate then.",
                                   by, store, until, share)
                             : say("Gather at balloon by {}, dry a day or two, keep in {} until {}: about {} "
                                   "should germinate then.",
                                   by, store, until, share);
}

void gather_fresh(WayOutlook& outlook, const WayView& view, const DonorTree& donor, const MeetingDays& days) {
    gather_and_use(outlook, view, donor, days);
    outlook.row.store = Store::room;
    outlook.sentences.push_back(fresh_text(outlook));
}

void gather_and_keep(WayOutlook& outlook, const WayView& view, const DonorTree& donor,
                     const MeetingDays& days) {
    gather_and_use(outlook, view, donor, days);
    const int wait = std::max(drying_days, days.use.last - days.gather.first);
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
    const auto picked = pick_donor(view.crossing, [&](const DonorTree& donor) {
        return chance_same_day(*view.crossing.seed_left, view.courses(donor));
    });
    outlook.row.chance = {picked.chance * chance_usable(untested_pollen, view.assume().usable_germination)};
    outlook.sentences.push_back(meeting_text(view.crossing, *picked.donor));
    const auto days =
        same_day_days(*view.crossing.seed_left, view.courses(*picked.donor), view.assume().risk);
    if (days && outlook.row.chance.value >= no_chance) {
        gather_fresh(outlook, view, *picked.donor, *days);
    }
    return outlook;
}

WayOutlook kept_this_spring_way(const WayView& view) {
    auto outlook = begin_way(view, PollenWay::kept_this_spring);
    const auto picked = pick_donor(view.crossing, [&](const DonorTree& donor) {
        return chance_kept(*view.crossing.seed_left, view.courses(donor));
    });
    outlook.row.chance = {picked.chance};
    if (picked.chance < 0.5) {
        outlook.sentences.push_back(too_late_text(view.crossing, *picked.donor));
    }
    const auto days = kept_days(*view.crossing.seed_left, view.courses(*picked.donor), view.assume().risk);
    if (days && picked.chance >= no_chance) {
        gather_and_keep(outlook, view, *picked.donor, *days);
    }
    return outlook;
}

}  // namespace pipward::cross::detail
