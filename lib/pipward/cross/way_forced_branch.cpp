// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/forced_branch.h"
#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/way_view.h"
#include "pipward/cross/detail/why.h"

namespace pipward::cross::detail {
namespace {

void force(WayOutlook& outlook, const WayView& view, const DonorTree& donor, const ForcedDays& days) {
    const auto& crossing = view.crossing;
    collect_at(outlook, crossing, donor, crossing.anchor);
    outlook.collected_now = !crossing.next_season;
    outlook.days_in_the_room = days.days_in_the_room;
    outlook.row.store = Store::refrigerator;
    outlook.row.use_from = crossing.day(days.use.first);
    outlook.row.use_to = crossing.day(days.use.last);
    outlook.row.use_by_median = days.use_by_median;
    keep_until_use(outlook, crossing.day(days.ready), view.assume().usable_germination);
}

void cut(WayOutlook& outlook, const WayView& view, const DonorTree& donor, const ForcedDays& days) {
    force(outlook, view, donor, days);
    outlook.row.collect_from = view.crossing.day(days.cut.first);
    outlook.row.collect_to = view.crossing.day(days.cut.last);
    add_how(outlook, view);
}

// A branch that stands in water already, by the day on which it was cut.
std::optional<SeasonDay> cut_on(const WayView& view) {
    const auto& cut = view.bench.stock.done.cut;
    const auto found = cut.find(view.crossing.donor);
    return found == cut.end() || view.crossing.next_season
               ? std::nullopt
               : std::optional{found->second - view.crossing.anchor};
}

// Nothing where the branch comes too late.
std::optional<WayOutlook> branch_in_water(const WayView& view, SeasonDay day) {
    const auto& crossing = view.crossing;
    const Cutting when{day, crossing.donor_chill};
    const auto& donor = crossing.donors.front();
    const auto days = days_of_cut_branch(*crossing.seed_left, *donor.whole, when, view.assume().risk);
    if (!days) {
        return std::nullopt;
    }
    auto outlook = begin_way(view, PollenWay::forced_branch);
    outlook.meets = chance_forced(*crossing.seed_left, *donor.whole, when) * forcing_success;
    force(outlook, view, donor, *days);
    add_how(outlook, view);
    return outlook;
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
    if (const auto day = cut_on(view)) {
        if (auto outlook = branch_in_water(view, *day)) {
            return std::move(*outlook);
        }
    }
    auto outlook = begin_way(view, PollenWay::forced_branch);
    const Cutting from{crossing.from, crossing.donor_chill};
    const auto harvested = pick_donor(crossing, [&](const DonorTree& donor) {
        return chance_forced(*crossing.seed_left, *donor.whole, from);
    });
    outlook.meets = harvested.chance * forcing_success;
    outlook.row.chance = {outlook.meets};
    const auto days = forced_days(*crossing.seed_left, *harvested.donor->whole, from, view.assume().risk);
    if (days && outlook.row.chance.value >= no_chance) {
        cut(outlook, view, *harvested.donor, *days);
    } else {
        outlook.sentences.push_back(missed_text(view, *harvested.donor));
    }
    return outlook;
}

}  // namespace pipward::cross::detail
