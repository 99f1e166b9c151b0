// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/quantity.h"

/// The two-stage development rate of the pear 'Niitaka', after Sugiura (Atmosphere 2025, 16(9):996).
/// Each function gives the part of its stage done in one hour; a stage ends when its parts add up to one,
/// and the heat stage begins where the chill stage ends.
namespace pipward::clock {

/// Above 0 and up to 12 °C, else none. Range 0..0.00134.
Share pear_chill_rate(Celsius hour);
/// At every temperature; two curves that meet (within 3 %) at 20 °C.
Share pear_heat_rate(Celsius hour);

}  // namespace pipward::clock
