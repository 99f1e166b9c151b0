// SPDX-License-Identifier: MIT
#include "pipward/clock/sigmoid_forcing.h"

#include <cmath>

namespace pipward::clock {

HeatSum sigmoid_forcing(Celsius hour) {
    if (hour.degrees <= 0) {
        return {};
    }
    return {28.4 / (1.0 + std::exp(-0.185 * (hour.degrees - 18.4)))};
}

}  // namespace pipward::clock
