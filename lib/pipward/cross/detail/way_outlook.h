// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/detail/crossing.h"
#include "pipward/cross/detail/lot_outlook.h"
#include "pipward/cross/plan.h"

namespace pipward::cross::detail {

/// A way in the making: its row, and what the plan still asks of it.
struct WayOutlook {
    CrossWay row;                     ///< what the plan shows of it
    std::vector<Sentence> sentences;  ///< why, in the order in which they are read
    /// Which of them tells how the pollen is obtained: it is told again when the days and the store are
    /// decided.
    std::optional<std::size_t> how;
    int turn = 0;                   ///< of the ways that are followed: 1 first; 0 for one that is not
    std::optional<LotOutlook> lot;  ///< the pollen is in hand; else it is to be collected or cut
    bool collected_now = false;     ///< to be collected in the forecast's season, for this or the next
    const Tree* tree = nullptr;     ///< where to collect or cut
    bool early_tree = false;        ///< chosen because it blooms before the tree that stands for the donor
    double meets = 0;               ///< chance that it is on hand in time, germination apart, 0..1
    double germination = 0;         ///< expected on the last day of use, 0..1
    int days_in_the_room = 0;       ///< of a branch, from cutting to open anthers
    bool borrowed = false;          ///< rests on the bloom of an accession that has no notes of its own
};

/// The first way that fits; null where none does.
template <class Fits>
WayOutlook* way_that(std::vector<WayOutlook>& ways, Fits fits) {
    const auto found = std::ranges::find_if(ways, fits);
    return found == ways.end() ? nullptr : &*found;
}

/// Every way for one goal and one donor, each at least once, and once more for every lot in hand: those of a
/// whole blend first, then by the day of collecting. Chance, dates, store and reasons are filled; amounts and
/// the choice are not.
std::vector<WayOutlook> way_outlooks(const Bench& bench, const Crossing& crossing);

/// Days on which the seed parent can be worked: from the median first day to the last that is safe at the
/// risk, or to the median last where the risk leaves less than two days.
struct WorkingDays {
    DayRun days;             ///< empty where no course has one
    bool by_median = false;  ///< the last is a median
};
/// Range of risk: 0..1.
WorkingDays working_days(const BloomCourses& seed_parent, double risk);

}  // namespace pipward::cross::detail
