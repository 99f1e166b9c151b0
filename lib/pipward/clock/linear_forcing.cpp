// SPDX-License-Identifier: MIT
#include "pipward/clock/linear_forcing.h"

#include <algorithm>

namespace pipward::clock {

DegreeHours linear_forcing(Celsius hour, Celsius lower, Celsius upper) {
    const CelsiusStep above = std::min(hour, upper) - lower;
    return {std::max(0.0, above.degrees)};
}

}  // namespace pipward::clock
