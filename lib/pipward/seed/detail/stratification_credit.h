// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/value/quantity.h"

namespace pipward::seed::detail {

/// What a day at a temperature counts towards the stratification that a seed needs: a whole day from 0.5 to 5
/// °C, falling to nothing at 9.5, none to 15; frost counts nothing, and from 15 up a day undoes one.
/// A rule of our own within published bounds: 0.5 and 4 degrees work alike and above 9 nothing does (Seed
/// Sci. Technol. 34(1), 2006, Malus sargentii); warmth from about 15 undoes cold (Abbott 1956, from memory).
/// The slopes between are common practice, no source.
double stratification_credit(Celsius temperature);

/// From here up a warm spell is told.
inline constexpr Celsius warm_for_seed{9.5};
/// Below this a frost is told: moist seed may be hurt (common practice, no source).
inline constexpr Celsius frost_for_seed{0};

}  // namespace pipward::seed::detail
