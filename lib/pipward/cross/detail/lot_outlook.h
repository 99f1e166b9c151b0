// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/detail/pollen_life.h"
#include "pipward/cross/detail/stock.h"
#include "pipward/cross/plan.h"

namespace pipward::cross::detail {

/// One pollen lot in hand, as it will be on the day of use.
struct LotOutlook {
    const PollenLot* lot = nullptr;  ///< never null
    Germination at_use;              ///< germination expected on the day of use
    double usable = 0;               ///< chance that the usable germination is reached
    std::optional<Day> tested;       ///< its latest test
    /// Of the donor, less what was used; nothing where the book tells no amount.
    std::optional<double> flowers_left;
    Store store = Store::refrigerator;  ///< where it is on the day of the plan
    Day use{};                          ///< the last day of use for which it is seen
    /// In the room, and used by then within the days in which pollen is used as it came.
    bool fresh = false;
};

/// Whose lots are asked for.
struct LotQuestion {
    std::string donor;  ///< an accession
    std::string blend;  ///< a lot of the whole blend serves too; empty for none
    Day first_use;      ///< the first day of use
    Day last_use;       ///< the last one; pollen kept in the room is used up before, where it can be
};

/// The lots in hand that hold anything: those of the blend first, for they serve all its members at once,
/// then by the day of collecting.
std::vector<LotOutlook> lots_in_hand(const Stock& stock, const LotQuestion& question,
                                     const CrossingAssumptions& assumptions);

/// One lot on another day of use.
LotOutlook lot_outlook(const Stock& stock, const PollenLot& lot, Day use,
                       const CrossingAssumptions& assumptions);

}  // namespace pipward::cross::detail
