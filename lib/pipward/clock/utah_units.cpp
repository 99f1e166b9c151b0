// SPDX-License-Identifier: MIT
#include "pipward/clock/utah_units.h"

#include <algorithm>
#include <array>

namespace pipward::clock {
namespace {

struct UtahClass {
    double below;  ///< °C, the edge itself belongs to the next class
    double units;
};

constexpr std::array<UtahClass, 5> classes{UtahClass{1.4, 0}, UtahClass{2.5, 0.5}, UtahClass{9.2, 1},
                                           UtahClass{12.5, 0.5}, UtahClass{16, 0}};

}  // namespace

UtahUnits utah_units(Celsius hour) {
    for (const UtahClass& entry : classes) {
        if (hour.degrees < entry.below) {
            return {entry.units};
        }
    }
    return {hour <= from_fahrenheit(65) ? -0.5 : -1.0};
}

std::vector<UtahUnits> utah_units_from_minimum(std::span<const Celsius> hours) {
    std::vector<UtahUnits> sums;
    sums.reserve(hours.size());
    UtahUnits sum;
    for (const Celsius hour : hours) {
        sum = std::max(UtahUnits{}, sum + utah_units(hour));
        sums.push_back(sum);
    }
    return sums;
}

}  // namespace pipward::clock
