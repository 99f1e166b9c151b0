// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/value/quantity.h"

namespace pipward::clock {

/// Chill units of one hour, -1..1. Richardson, Seeley & Walker 1974, HortScience 9:331-332 (from memory).
/// Classes hold their lower edge, not their upper one: below 1.4 °C none, from 1.4 a half, from 2.5
/// one, from 9.2 a half, from 12.5 none, from 16 minus a half up to and including 65 degrees F (18.33), above
/// it minus one. These edges agree with every whole Fahrenheit degree of the original and with its Celsius
/// table to the tenth, but for 18.1 to 18.3, which that table rounds away.
UtahUnits utah_units(Celsius hour);

/// The running sum after each hour, counted from its lowest point so far: autumn's warm hours cannot run up a
/// debt that the winter must first pay. Common practice (from memory). Shape: as many as `hours`; never
/// negative.
std::vector<UtahUnits> utah_units_from_minimum(std::span<const Celsius> hours);

}  // namespace pipward::clock
