// SPDX-License-Identifier: MIT
#pragma once

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
    std::optional<LotOutlook> lot;    ///< the pollen is in hand; else it is to be collected or cut
    bool collected_now = false;       ///< to be collected in the forecast's season, for this or the next
    const Tree* tree = nullptr;       ///< where to collect or cut
    bool early_tree = false;          ///< chosen because it blooms before the tree that stands for the donor
    double germination = 0;           ///< expected at use, 0..1
    bool by_median = false;           ///< the last days are medians: the risk would leave no time
    bool borrowed = false;            ///< rests on the bloom of an accession that has no notes of its own
};

/// Every way for one goal and one donor, each at least once: a way that has both a lot in hand and flowers to
/// collect stands twice. Chance, dates, store and reasons are filled; amounts and the choice are not.
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
