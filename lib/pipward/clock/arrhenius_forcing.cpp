// SPDX-License-Identifier: MIT
#include "pipward/clock/arrhenius_forcing.h"

#include <cmath>

namespace pipward::clock {
namespace {

constexpr double activation_energy = 70000;  // J/mol
constexpr double gas_constant = 8.314;       // J/(mol K)
constexpr double standard_kelvin = 298.15;
constexpr double kelvin_offset = 273.15;

}  // namespace

HeatSum arrhenius_forcing(Celsius hour) {
    const double kelvin = hour.degrees + kelvin_offset;
    return {
        std::exp(activation_energy * (kelvin - standard_kelvin) / (gas_constant * kelvin * standard_kelvin))};
}

}  // namespace pipward::clock
