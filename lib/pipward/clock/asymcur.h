// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/quantity.h"

namespace pipward::clock {

/// Growing degree hours of one hour on the asymmetric curve: a slow cosine rise from 4 to 25 °C, a
/// fast fall to nothing at 36. Range 0..21, without plant stress (stress factor 1). Anderson, Richardson &
/// Kesner 1986, Acta Hort. 184:71-78 (from memory).
DegreeHours asymcur(Celsius hour);

}  // namespace pipward::clock
