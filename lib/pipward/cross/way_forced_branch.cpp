// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/cross/detail/forced_branch.h"
#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/way_view.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

void cut(WayOutlook& outlook, const WayView& view, const DonorTree& donor, const ForcedDays& days) {
    const auto& crossing = view.crossing;
    collect_at(outlook, crossing, donor);
    outlook.collected_now = !crossing.next_season;
    outlook.row.store = Store::refrigerator;
    outlook.row.collect_from = crossing.day(days.cut.first);
    outlook.row.collect_to = crossing.day(days.cut.last);
    outlook.row.use_from = crossing.day(days.use.first);
    outlook.row.use_to = crossing.day(days.use.last);
    outlook.by_median = days.use_by_median;
    outlook.sentences.push_back(
        say("Cut branches from {} to {} and force them in water at about 20 °C: about {} until the anthers "
            "open, then {} of drying. Yields pollen in about {} of cases.",
            to_iso(*outlook.row.collect_from), to_iso(*outlook.row.collect_to),
            days_text(days.days_in_the_room), days_text(drying_days), percent_text(forcing_success)));
}

bool at_balloon(const WayView& view, const DonorTree& donor) {
    const auto first = first_day(*donor.whole, &BloomCourse::balloon, 0.5);
    return !view.crossing.next_season && first && *first <= view.crossing.from;
}

// A cut in time would have had to be made in the past; or no cut can be in time.
Sentence missed_text(const WayView& view, const DonorTree& donor) {
    const auto& crossing = view.crossing;
    const Cutting at_best{season_first, crossing.donor_chill};
    if (at_balloon(view, donor)) {
        return say("{} is at balloon stage or beyond: there is nothing left to force.", crossing.donor);
    }
    const double chance = chance_forced(*crossing.seed_whole, *donor.whole, at_best);
    const auto deadline = last_cut(*crossing.seed_whole, *donor.whole, at_best, 1 - view.assume().risk);
    if (deadline && chance >= no_chance && *deadline < crossing.from) {
        return say("A branch of {} would have had to be cut by {}.", crossing.donor,
                   to_iso(crossing.day(*deadline)));
    }
    return say("A branch of {} cannot be forced in time: the wood has its chill too late.", crossing.donor);
}

}  // namespace

WayOutlook forced_branch_way(const WayView& view) {
    const auto& crossing = view.crossing;
    auto outlook = begin_way(view, PollenWay::forced_branch);
    const Cutting from{crossing.from, crossing.donor_chill};
    const auto harvested = pick_donor(crossing, [&](const DonorTree& donor) {
        return chance_forced(*crossing.seed_left, *donor.whole, from);
    });
    outlook.row.chance = {harvested.chance * forcing_success};
    const auto days = forced_days(*crossing.seed_left, *harvested.donor->whole, from, view.assume().risk);
    if (days && outlook.row.chance.value >= no_chance) {
        cut(outlook, view, *harvested.donor, *days);
    } else {
        outlook.sentences.push_back(missed_text(view, *harvested.donor));
    }
    return outlook;
}

}  // namespace pipward::cross::detail
