// SPDX-License-Identifier: MIT
#include "pipward/clock/gdh_richardson.h"

#include "pipward/clock/linear_forcing.h"

namespace pipward::clock {

DegreeHours gdh_richardson(Celsius hour) {
    return linear_forcing(hour, Celsius{4.5}, Celsius{25});
}

}  // namespace pipward::clock
