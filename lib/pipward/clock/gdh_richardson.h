// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/quantity.h"

namespace pipward::clock {

/// Growing degree hours of one hour: degrees above 4.5 °C, no more above 25 (20.5 at most).
/// Richardson, Seeley, Walker, Anderson & Ashcroft 1975, HortScience 10:236-237 (from memory).
DegreeHours gdh_richardson(Celsius hour);

}  // namespace pipward::clock
