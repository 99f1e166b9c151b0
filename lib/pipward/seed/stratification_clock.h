// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "pipward/value/day.h"
#include "pipward/value/quantity.h"

namespace pipward::seed {

/// A cold store's hourly readings of one day; fewer than 24 where some are missing, none where all are.
using StoreDay = std::vector<Celsius>;
/// What the store was like on a day; nothing where it is not known.
using StoreLog = std::function<std::optional<StoreDay>(Day)>;

/// A store that keeps one temperature.
StoreLog steady_store(Celsius temperature);

/// Days in a row that were too warm or too cold for seed (seed/stratification_credit.h).
struct Spell {
    Day from;         ///< its first day
    Day to;           ///< its last; a day without a reading ends it
    Celsius extreme;  ///< its warmest or coldest reading
};

/// The cold a seed lot has had.
struct StratificationSum {
    double days = 0;         ///< credited, never below 0
    ChillPortions portions;  ///< Dynamic Model on the same readings
    int unknown_days = 0;    ///< without a reading: credited nothing
    /// Days with a reading of warm_for_seed or above, in order; extreme: the warmest.
    std::vector<Spell> warm;
    /// Days with a reading below frost_for_seed, in order; extreme: the coldest.
    std::vector<Spell> frost;
    /// First day on which the credited days reached the need of that place in `needs`; nothing before that.
    std::vector<std::optional<Day>> reached;
};

/// Counts from the first to the last day, both whole days in stratification. Shape of `reached`: as `needs`.
StratificationSum count_stratification(Day from, Day to, const StoreLog& store,
                                       const std::vector<double>& needs);

}  // namespace pipward::seed
