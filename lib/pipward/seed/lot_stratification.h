// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/seed/lot_course.h"
#include "pipward/seed/next_work.h"
#include "pipward/seed/stratification_clock.h"
#include "pipward/value/finding.h"

namespace pipward::seed {

/// Seed that has had its cold for so long germinates in the bag and breaks when it is sown (common practice,
/// no source).
inline constexpr int days_to_sow = 30;

/// Where the cold of one lot stands.
struct LotStratification {
    const LotCourse* course = nullptr;  ///< never null
    CrossStratificationNeed need{};     ///< of the seed of its cross
    StratificationSum sum{};            ///< the cold it has had; reached: first the least need, then the full
    std::optional<Day> first_ready{};   ///< the least need is met, that day or forecast
    std::optional<Day> ready{};         ///< the full need
    bool assumed_store = false;         ///< neither the lot nor a log tells the store's temperature
    Sentence state{};                   ///< for people: where it stands, and what disturbed it
};

/// The cold of a lot that is in it, up to a day: by the store's log, else by the one temperature noted with
/// the lot, else by a usual store's.
LotStratification stratification_of_lot(const LotCourse& course, const CrossStratificationNeed& need,
                                        const std::optional<StoreLog>& log, Day as_of);

/// Whether a lot has gone into stratification by that day and, unless wanted, is not over it.
bool is_in_stratification(const LotCourse& course, Day as_of, bool also_done);

/// Which lots are asked about.
struct ColdQuestion {
    std::optional<StoreLog> log;  ///< of the store's thermometer
    Day as_of;
    bool also_done = false;  ///< lots whose cold is over as well
};

/// The cold of every lot that is in it, by the day on which it is ready. A note about each lot with seed left
/// that is not in stratification as far as its record tells. Points into `courses`.
std::vector<LotStratification> lots_in_cold(const std::vector<LotCourse>& courses, const Orchard& orchard,
                                            const ColdQuestion& question, Findings& findings);

}  // namespace pipward::seed
