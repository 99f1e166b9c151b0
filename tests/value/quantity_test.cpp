// SPDX-License-Identifier: MIT
#include "pipward/value/quantity.h"

#include <gtest/gtest.h>

#include <concepts>

namespace pipward {
namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
    a < b;
};

// What must not compile: two readings added, sums of different clocks mixed.
static_assert(!Addable<Celsius, Celsius>);
static_assert(Addable<Celsius, CelsiusStep>);
static_assert(!Addable<ChillPortions, ChillingHours>);
static_assert(!Comparable<ChillPortions, UtahUnits>);
static_assert(!std::convertible_to<double, Celsius>);
static_assert(!std::convertible_to<CelsiusStep, Celsius>);

TEST(Celsius, FixedPointsOfTheFahrenheitScale) {
    EXPECT_DOUBLE_EQ(from_fahrenheit(32).degrees, 0);
    EXPECT_DOUBLE_EQ(from_fahrenheit(212).degrees, 100);
    EXPECT_DOUBLE_EQ(from_fahrenheit(-40).degrees, -40);
}

TEST(Celsius, ADifferenceOfReadingsIsAStep) {
    EXPECT_DOUBLE_EQ((Celsius{12} - Celsius{4.5}).degrees, 7.5);
    EXPECT_DOUBLE_EQ((Celsius{4.5} + CelsiusStep{7.5}).degrees, 12);
}

}  // namespace
}  // namespace pipward
