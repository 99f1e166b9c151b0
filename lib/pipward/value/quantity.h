// SPDX-License-Identifier: MIT
#pragma once

#include <compare>

#include "pipward/value/spoken.h"

namespace pipward::value {

/// A temperature reading in degrees Celsius. Two readings cannot be added: their difference is a step.
struct Celsius {
    double degrees = 0;  ///< °C

    auto operator<=>(const Celsius&) const = default;
};

/// A difference of two temperature readings, in kelvin.
struct CelsiusStep {
    double degrees = 0;  ///< kelvin, which are as large as °C

    auto operator<=>(const CelsiusStep&) const = default;
};

/// How much warmer `a` is than `b`; negative where it is colder.
constexpr CelsiusStep operator-(Celsius a, Celsius b) {
    return {a.degrees - b.degrees};
}
/// The reading that lies a step higher.
constexpr Celsius operator+(Celsius reading, CelsiusStep step) {
    return {reading.degrees + step.degrees};
}
/// A multiple of a step.
constexpr CelsiusStep operator*(CelsiusStep step, double factor) {
    return {step.degrees * factor};
}

/// Exact by definition: (F - 32) x 5 / 9.
constexpr Celsius from_fahrenheit(double degrees_fahrenheit) {
    return {(degrees_fahrenheit - 32.0) * 5.0 / 9.0};
}

/// A sum that grows with time and is only ever compared with sums of its own kind.
/// The kinds are not convertible into one another: Luedeling & Brown 2011 (Int. J. Biometeorol. 55:411)
/// found no usable ratio between chill models.
template <class Kind>
struct Sum {
    double value = 0;  ///< in the unit of its kind, below

    auto operator<=>(const Sum&) const = default;
    /// Adds what more time brought; never another kind.
    constexpr Sum& operator+=(Sum other) {
        value += other.value;
        return *this;
    }
    friend constexpr Sum operator+(Sum a, Sum b) { return {a.value + b.value}; }
    friend constexpr Sum operator-(Sum a, Sum b) { return {a.value - b.value}; }
};

using ChillingHours = Sum<struct ChillingHoursKind>;  ///< hours between 0 and 7.2 °C
using UtahUnits = Sum<struct UtahUnitsKind>;          ///< Richardson et al. 1974; may be negative
using ChillPortions = Sum<struct ChillPortionsKind>;  ///< Dynamic Model
using DegreeDays = Sum<struct DegreeDaysKind>;        ///< °C x days
using DegreeHours = Sum<struct DegreeHoursKind>;      ///< growing degree hours, °C x hours
using HeatSum = Sum<struct HeatSumKind>;              ///< the sum of one named heat curve, its own unit

/// A length or height on the ground.
struct Metres {
    double value = 0;  ///< m; below 0 for a height below sea level

    auto operator<=>(const Metres&) const = default;
};

/// A part of a whole, 0 to 1.
struct Share {
    double value = 0;  ///< 0..1; not checked

    auto operator<=>(const Share&) const = default;
};

/// A mass, such as of pollen.
struct Milligrams {
    double value = 0;  ///< mg, not negative

    auto operator<=>(const Milligrams&) const = default;
};

/// Degrees north, -90 to 90.
struct Latitude {
    double degrees = 0;  ///< negative in the south

    auto operator<=>(const Latitude&) const = default;
};

}  // namespace pipward::value
