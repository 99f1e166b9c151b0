// SPDX-License-Identifier: MIT
#include "pipward/clock/dynamic_model.h"

#include <cmath>

namespace pipward::clock {
namespace {

// Rate constants of the model's two-step scheme: energies divided by the gas constant, in kelvin, and
// frequencies per hour. Fishman, Erez & Couvillon 1987.
constexpr double formation_energy = 4153.5;
constexpr double destruction_energy = 12888.8;
constexpr double formation_rate = 139500;
constexpr double destruction_rate = 2.567e18;
/// The sharpness and the middle, in kelvin, of the passage from precursor to fixed portion.
constexpr double transition_slope = 1.6;
constexpr double transition_kelvin = 277;
constexpr double rounded_kelvin_offset = 273;

double equilibrium(double kelvin) {
    return formation_rate / destruction_rate * std::exp((destruction_energy - formation_energy) / kelvin);
}

double decay_in_an_hour(double kelvin) {
    return std::exp(-destruction_rate * std::exp(-destruction_energy / kelvin));
}

double share_fixed(double kelvin) {
    const double exponent = transition_slope * transition_kelvin * (kelvin - transition_kelvin) / kelvin;
    return 1.0 / (1.0 + std::exp(-exponent));
}

}  // namespace

ChillPortions DynamicModel::hour(Celsius temperature) {
    const double kelvin = temperature.degrees + rounded_kelvin_offset;
    const double goal = equilibrium(kelvin);
    precursor_ = goal - (goal - precursor_) * decay_in_an_hour(kelvin);
    if (precursor_ < 1.0) {
        return {};
    }
    const ChillPortions portion{share_fixed(kelvin) * precursor_};
    precursor_ -= portion.value;
    total_ += portion;
    return portion;
}

std::vector<ChillPortions> chill_portions(std::span<const Celsius> hours) {
    DynamicModel model;
    std::vector<ChillPortions> totals;
    totals.reserve(hours.size());
    for (const Celsius hour : hours) {
        model.hour(hour);
        totals.push_back(model.total());
    }
    return totals;
}

}  // namespace pipward::clock
