// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "pipward/cross/detail/way_outlook.h"

/// The ways one by one, and what they have in common.
namespace pipward::cross::detail {

/// A crossing seen on the days on which its seed parent can be worked.
struct WayView {
    const Bench& bench;        ///< lent
    const Crossing& crossing;  ///< lent
    DayRun working;            ///< season days of use, as working_days() has them
    bool by_median = false;    ///< the last of them is a median
    double workable = 0;       ///< chance that there is such a day at all

    /// Of the bench.
    const CrossingAssumptions& assume() const { return bench.assumptions; }
    /// Of the season of use, from its first day that is not over.
    const BloomCourses& courses(const DonorTree& donor) const {
        return crossing.next_season ? *donor.whole : *donor.left;
    }
};

/// Below this chance a way gets reasons, but no dates to collect by.
inline constexpr double no_chance = 0.02;

/// A way with the seed parent's own days and untested pollen; its chance is 0 so far.
WayOutlook begin_way(const WayView& view, PollenWay way);
/// A way that is closed because the donor has no living tree.
WayOutlook way_without_tree(const WayView& view, PollenWay way);
/// The donor must have a living tree.
WayOutlook same_day_way(const WayView& view);
/// Likewise.
WayOutlook kept_this_spring_way(const WayView& view);
/// Likewise.
WayOutlook forced_branch_way(const WayView& view);
/// Collected in what is left of this spring, frozen, for the season to come.
WayOutlook kept_for_next_season_way(const WayView& view);
/// One a lot in hand, in the order of lots_in_hand(): collected in the season of use, or before it.
std::vector<WayOutlook> lot_ways(const WayView& view);

/// Germination of untested pollen after so many days in a store.
Germination kept_germination(Store store, int days);
/// The warmest store that keeps untested pollen usable for so many days.
Store store_for(int days, Share usable);

/// The donor's tree with the best chance; there must be one. Another than the first must be better by more
/// than two in a hundred: trees of one accession hardly differ, and the one that stands for it is the surest
/// guess.
struct PickedDonor {
    const DonorTree* donor = nullptr;  ///< never null
    double chance = 0;                 ///< as asked
};
/// `chance_of` gives a donor tree's chance, 0..1.
template <class Chance>
PickedDonor pick_donor(const Crossing& crossing, Chance chance_of) {
    constexpr double worth_another_tree = 0.02;
    PickedDonor best{&crossing.donors.front(), chance_of(crossing.donors.front())};
    for (const auto& donor : std::span(crossing.donors).subspan(1)) {
        const double chance = chance_of(donor);
        if (chance > best.chance + worth_another_tree) {
            best = {&donor, chance};
        }
    }
    return best;
}

/// Days to collect balloon flowers, safe at the risk. Empty where none come.
DayRun balloon_collecting(const BloomCourses& donor, double risk);
/// Notes the tree to collect at, and when it is likely to stand at balloon; `anchor` is day 0 of the season
/// in which that is done.
void collect_at(WayOutlook& outlook, const Crossing& crossing, const DonorTree& donor, Day anchor);
/// Notes how the way's pollen germinates on its last day of use when it comes into its store on a day, and
/// the chance that follows.
void keep_until_use(WayOutlook& outlook, Day stored_on, Share usable);
/// Tells how the pollen is obtained, by the row as it stands.
void add_how(WayOutlook& outlook, const WayView& view);

}  // namespace pipward::cross::detail
