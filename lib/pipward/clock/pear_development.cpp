// SPDX-License-Identifier: MIT
#include "pipward/clock/pear_development.h"

#include <algorithm>
#include <cmath>

namespace pipward::clock {

Share pear_chill_rate(Celsius hour) {
    const double t = hour.degrees;
    if (t <= 0 || t > 12) {
        return {};
    }
    if (t <= 6) {
        return {1.333e-3};
    }
    if (t <= 9) {
        return {2.276e-3 - 1.571e-4 * t};
    }
    // The printed line ends a hair below zero at 12.
    return {std::max(0.0, 3.448e-3 - 2.874e-4 * t)};
}

Share pear_heat_rate(Celsius hour) {
    const double kelvin = hour.degrees + 273;
    return {hour.degrees <= 20 ? std::exp(35.27 - 12094 / kelvin) : std::exp(5.82 - 3474 / kelvin)};
}

}  // namespace pipward::clock
