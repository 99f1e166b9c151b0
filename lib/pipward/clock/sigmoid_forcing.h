// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/quantity.h"

namespace pipward::clock {

/// Heat units of one hour on the S-shaped curve: 28.4 / (1 + exp(-0.185 (T - 18.4))) above 0 °C, else
/// none. Range 0..28.4. Sarvas 1974; Haenninen 1990; Kramer 1994 (constants from memory).
HeatSum sigmoid_forcing(Celsius hour);

}  // namespace pipward::clock
