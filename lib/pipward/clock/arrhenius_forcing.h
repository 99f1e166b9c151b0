// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/quantity.h"

namespace pipward::clock {

/// The speed of a reaction with an activation energy of 70 kJ/mol, relative to 25 °C: one hour at 25
/// is one unit ("days transformed to standard temperature", in hours here). Always above zero. Aono &
/// Murakami 2017, Climate in Biosphere 17:25-33, after earlier work on cherry (energy from memory).
HeatSum arrhenius_forcing(Celsius hour);

}  // namespace pipward::clock
