// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "pipward/value/quantity.h"

namespace pipward::cross::detail {

/// The stigma takes pollen for so many days from opening. Common practice, no source: flowers are pollinated
/// from balloon to some three days open; 3 to 5 days is said of good apple flowers in England.
inline constexpr double stigma_days = 5;

/// The effective pollination period in days: how old a flower may be when pollen comes and still set seed.
/// Williams 1965: the ovule's life less the tubes' journey, and no longer than the stigma's. 0 where the
/// tubes come too late.
double effective_pollination_days(double ovule_days, double tube_days, double receptive_days = stigma_days);

/// Days that an ovule lives from opening. Back-calculated from the effective periods of 'Comice' pear at 13
/// and 17 °C, 4 to 6 and 2 to 4 days (Tromp & Borsboom 1994, Sci. Hortic. 60:23), each taken at its middle,
/// plus the tubes' journey of 4 and 2 days (Williams 1970): 9 and 5 days. Linear between and held in greater
/// warmth. Below 13 degrees it goes on rising at half that pace to 11 days at 9 degrees: an extrapolation,
/// without which the 3 to 5 days told of good apple flowers in England's cool springs could not be.
/// Range 5..11.
double ovule_life_days(Celsius daily_mean);

/// The period for flowers pollinated on the first of these daily means, °C: ovule life by the mean of
/// the stigma's days, tubes by each day. 0 where the tubes are not home within the days given.
double effective_pollination_days(std::span<const double> daily_means_c);

}  // namespace pipward::cross::detail
