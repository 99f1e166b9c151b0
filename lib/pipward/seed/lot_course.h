// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/seed/germination.h"
#include "pipward/seed/log_rank.h"

namespace pipward::seed {

/// What the book tells of one seed lot up to a day. Counts that were not made are unknown, never zero.
struct LotCourse {
    const SeedLot* lot = nullptr;  ///< never null
    std::optional<Day> from;       ///< day 0 of its counts: into stratification, else washed; unknown without
    std::vector<GerminationPoint> points;  ///< its counts, by day; empty without a day 0
    std::optional<int> germinated;         ///< in all; unknown before the first count
    std::optional<Day> counted_on;         ///< the last count
    int out = 0;                           ///< seeds that left the lot
    int out_ungerminated = 0;              ///< of them for certain not germinated yet
    GerminationTimes times;                ///< by seed, for tests of pace; empty without a day 0
};

/// Of every seed lot of the book, in its order.
std::vector<LotCourse> lot_courses(const Orchard& orchard, Day as_of);

/// Seeds that have not left the lot.
int on_hand(const LotCourse& course);
/// Those of them to give away or to sow: seed that germinated and was not taken out yet is none.
int not_germinated(const LotCourse& course);
/// Seed that germinated and has not left the lot.
int germinated_in_lot(const LotCourse& course);
/// Since when the lot is there: washed, else stratified.
std::optional<Day> there_since(const LotCourse& course);

/// The lots that have seed left and are there on `as_of`, the oldest first; only those of a cross where one
/// is named by its code. Points into `courses`.
std::vector<const LotCourse*> lots_on_hand(const std::vector<LotCourse>& courses, const std::string& cross,
                                           Day as_of);

}  // namespace pipward::seed
