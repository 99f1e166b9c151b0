// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/cross/forcing.h"
#include "pipward/cross/meeting.h"
#include "pipward/cross/way_view.h"
#include "pipward/cross/why.h"

namespace pipward {
namespace {

// A branch is cut within so many days before the last safe one: earlier it gives pollen that only waits.
constexpr int cutting_days = 14;

void cut(WayOutlook& outlook, const WayView& view, const DonorTree& donor) {
    const auto& crossing = view.crossing;
    const auto deadline = last_cut(*crossing.seed_left, *donor.whole, crossing.from, crossing.donor_chill,
                                   1 - view.assume().risk);
    const SeasonDay to = deadline.value_or(crossing.from);
    gather_at(outlook, crossing, donor);
    outlook.gathered_now = !crossing.next_season;
    outlook.row.store = Store::refrigerator;
    const SeasonDay earliest = std::max(crossing.from, to - cutting_days);
    outlook.row.gather_from =
        crossing.day(std::min(to, median_useful_cut(*donor.whole, earliest, crossing.donor_chill)));
    outlook.row.gather_to = crossing.day(to);
    outlook.sentences.push_back(
        fmt::format("Cut branches from {} to {} and force them in water at about 20 C: about {} to open "
                    "anthers, then {} of "
                    "drying. Gives pollen in about {} of cases.",
                    to_iso(*outlook.row.gather_from), to_iso(*outlook.row.gather_to),
                    days_text(median_days_in_the_room(*donor.whole, to, crossing.donor_chill)),
                    days_text(drying_days), percent_text(forcing_success)));
}

bool at_balloon(const WayView& view, const DonorTree& donor) {
    const auto first = first_day(*donor.whole, &BloomCourse::balloon, 0.5);
    return !view.crossing.next_season && first && *first <= view.crossing.from;
}

// A cut in time would have had to be made in the past; or no cut can be in time.
std::string missed_text(const WayView& view, const DonorTree& donor) {
    const auto& crossing = view.crossing;
    const auto chill = crossing.donor_chill;
    if (at_balloon(view, donor)) {
        return fmt::format("{} stands at balloon or beyond: there is nothing left to force.", crossing.donor);
    }
    const double at_best = chance_forced(*crossing.seed_whole, *donor.whole, season_first, chill);
    const auto deadline =
        last_cut(*crossing.seed_whole, *donor.whole, season_first, chill, 1 - view.assume().risk);
    if (deadline && at_best >= no_chance && *deadline < crossing.from) {
        return fmt::format("A branch of {} would have had to be cut by {}.", crossing.donor,
                           to_iso(crossing.day(*deadline)));
    }
    return fmt::format("A branch of {} cannot be forced in time: the wood has its chill too late.",
                       crossing.donor);
}

}  // namespace

WayOutlook forced_branch_way(const WayView& view) {
    const auto& crossing = view.crossing;
    auto outlook = begin_way(view, PollenWay::forced_branch);
    const auto picked = pick_donor(crossing, [&](const DonorTree& donor) {
        return chance_forced(*crossing.seed_left, *donor.whole, crossing.from, crossing.donor_chill);
    });
    outlook.row.chance = {picked.chance * forcing_success};
    if (outlook.row.chance.value >= no_chance) {
        cut(outlook, view, *picked.donor);
    } else {
        outlook.sentences.push_back(missed_text(view, *picked.donor));
    }
    return outlook;
}

}  // namespace pipward
