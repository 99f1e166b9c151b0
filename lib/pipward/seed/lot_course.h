// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/seed/log_rank.h"
#include "pipward/seed/sprouting.h"

namespace pipward::seed {

/// What the book tells of one seed lot up to a day. Counts that were not made are unknown, never zero.
struct LotCourse {
    const SeedLot* lot = nullptr;     ///< never null
    std::optional<Day> from;          ///< day 0 of its counts: into the cold, else washed; unknown without
    std::vector<SproutPoint> points;  ///< its counts, by day; empty without a day 0
    std::optional<int> sprouted;      ///< in all; unknown before the first count
    std::optional<Day> counted_on;    ///< the last count
    int out = 0;                      ///< seeds that left the lot
    int out_unsprouted = 0;           ///< of them for certain not sprouted yet
    SproutTimes times;                ///< by seed, for tests of pace; empty without a day 0
};

/// Of every seed lot of the book, in its order.
std::vector<LotCourse> lot_courses(const Orchard& orchard, Day as_of);

}  // namespace pipward::seed
