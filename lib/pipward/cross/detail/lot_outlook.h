// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>

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
};

/// The seasons of which lots may come.
struct LotQuestion {
    std::string donor;                    ///< an accession
    std::string blend;                    ///< a lot of the whole blend serves too; empty for none
    std::optional<Day> collected_from;    ///< open where missing
    std::optional<Day> collected_before;  ///< open where missing
    Day use;                              ///< the day of use
};

/// The lot in hand that is likeliest to be usable on the day of use; of equals, the one collected first.
/// Nothing where there is none that holds anything.
std::optional<LotOutlook> best_lot(const Stock& stock, const LotQuestion& question,
                                   const CrossingAssumptions& assumptions);

}  // namespace pipward::cross::detail
