// SPDX-License-Identifier: MIT
#include "pipward/clock/asymcur.h"

#include <cmath>
#include <numbers>

namespace pipward::clock {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double base = 4;
constexpr double optimum = 25;
constexpr double critical = 36;
constexpr double amplitude = optimum - base;

}  // namespace

DegreeHours asymcur(Celsius hour) {
    const double t = hour.degrees;
    if (t < base || t > critical) {
        return {};
    }
    if (t <= optimum) {
        return {amplitude / 2 * (1 + std::cos(pi + pi * (t - base) / (optimum - base)))};
    }
    return {amplitude * (1 + std::cos(pi / 2 + pi / 2 * (t - optimum) / (critical - optimum)))};
}

}  // namespace pipward::clock
