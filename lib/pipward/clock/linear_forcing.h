// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/quantity.h"

namespace pipward::clock {

/// Growing degree hours of one hour on a straight line: nothing up to `lower`, then degrees above it, no more
/// above `upper`. Range 0..upper - lower. The line of Richardson et al. 1975 (HortScience 10:236-237, from
/// memory), whose limits are 4.5 and 25 °C, with limits of the caller's.
DegreeHours linear_forcing(Celsius hour, Celsius lower, Celsius upper);

}  // namespace pipward::clock
