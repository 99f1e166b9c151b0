// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "pipward/record/orchard.h"
#include "pipward/value/day.h"
#include "pipward/value/quantity.h"

namespace pipward::cross::detail {

/// Months of the pollen figures are this many days.
inline constexpr double days_a_month = 30.44;

/// The share of its starting germination that dry pollen keeps after `months` in a store: exp(-(k t)^b).
/// k and b are fitted to three apple cultivars over six months (Calic et al. 2021, Front. Plant Sci.
/// 12:709231, Table 2; its +20, +4, -20 and -80 °C stand for room, refrigerator, freezer and deep
/// freezer). Beyond six months the curve is followed on: at a year it agrees with pear pollen at 4 and -20
/// °C (Quinet, Troubles in pear pollination), on the low side. Range 0..1; 1 at 0 months or before.
double germination_kept(Store store, double months);
/// One standard deviation of that share, by the fit's departures from the table.
double germination_kept_sd(Store store);

/// A lot's time in one store.
struct Stay {
    Store store = Store::refrigerator;
    Day from;  ///< its first day there
};

/// Of pollen that was moved from store to store: what each store leaves is multiplied as if the pollen had
/// always been there and come as far on its curve (cumulative exposure: Nelson 1980, IEEE Transactions on
/// Reliability 29:107). `stays` by day, the first from the day it was collected, never empty. Range 0..1.
double germination_kept(std::span<const Stay> stays, Day day);

/// Germination of a sample of pollen as a share of its grains, and one standard deviation of it.
struct Germination {
    double mean = 0;  ///< 0..1
    double sd = 0;    ///< of the mean, what is not known of it; not of single grains
};

/// Fresh, dried, never tested: the mean and spread of four apple cultivars at month 0 (Calic et al. 2021: 79,
/// 98, 68 and 59 %). Ten others had a mean of 85 % (Zebro, Kang & Heo 2023, Bragantia).
inline constexpr Germination untested_pollen{0.76, 0.17};

/// Germination of pollen until `use`, by its stays in stores, from its tests up to `as_of`. The latest test is
/// carried forward along the stores' curves from the pollen's age at the test;
/// tests within a fortnight before it are carried forward too and weighed by their grains, older ones are
/// superseded. The spread joins the counting error (Agresti & Coull 1998) and the curve's. Without a test it
/// starts as untested pollen. The spread of a curve is that of the last store.
Germination germination_at(std::span<const Stay> stays, std::span<const PollenTest> tests, Day as_of, Day use);
/// The same of pollen that has stood in one store since it was collected.
Germination germination_at(Store store, Day collected_on, std::span<const PollenTest> tests, Day as_of,
                           Day use);

/// The chance that at least `usable` of the grains germinate, by the normal curve. Range 0..1.
double chance_usable(Germination germination, Share usable);

/// The latest test of the pollen up to `as_of`; nothing without one.
std::optional<Day> last_tested(Day collected_on, std::span<const PollenTest> tests, Day as_of);

}  // namespace pipward::cross::detail
