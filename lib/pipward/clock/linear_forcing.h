// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/quantity.h"

namespace pipward::clock {

/// Growing degree hours of one hour on a straight line: nothing up to `lower`, then degrees above it, no more
/// above `upper`. Range 0..upper - lower.
DegreeHours linear_forcing(Celsius hour, Celsius lower, Celsius upper);

}  // namespace pipward::clock
