// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/quantity.h"

namespace pipward::clock {

/// One where the hour lies between 0 and 7.2 °C, both included, else none. Weinberger 1950, Proc.
/// Amer. Soc. Hort. Sci. 56:122-128, Bennett 1949 (from memory); the definition in Xue et al. 2016, Am. J.
/// Plant Sci. 7:1407.
ChillingHours chilling_hours(Celsius hour);

/// The older American count: one for every hour of 45 degrees F or less, frost included (University of
/// California note on chill portions). Not comparable with the count above where winters freeze.
ChillingHours chilling_hours_below_45f(Celsius hour);

}  // namespace pipward::clock
