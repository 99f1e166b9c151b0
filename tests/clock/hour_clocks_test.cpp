// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>

#include "clock/number_table.h"
#include "pipward/clock/arrhenius_forcing.h"
#include "pipward/clock/asymcur.h"
#include "pipward/clock/chilling_hours.h"
#include "pipward/clock/gdh_richardson.h"
#include "pipward/clock/linear_forcing.h"
#include "pipward/clock/pear_development.h"
#include "pipward/clock/sigmoid_forcing.h"
#include "pipward/clock/utah_units.h"

namespace pipward::clock {
namespace {

using testing::numbers_in;
using testing::oracle_rows;
using testing::regression_rows;

TEST(ChillingHours, CountFromZeroToSevenPointTwoInclusive) {
    EXPECT_EQ(chilling_hours(Celsius{-0.1}).value, 0);
    EXPECT_EQ(chilling_hours(Celsius{0}).value, 1);
    EXPECT_EQ(chilling_hours(Celsius{7.2}).value, 1);
    EXPECT_EQ(chilling_hours(Celsius{7.3}).value, 0);
}

TEST(ChillingHours, OlderCountTakesFrostAndFortyFiveFahrenheit) {
    EXPECT_EQ(chilling_hours_below_45f(Celsius{-20}).value, 1);
    EXPECT_EQ(chilling_hours_below_45f(from_fahrenheit(45)).value, 1);
    EXPECT_EQ(chilling_hours_below_45f(from_fahrenheit(45.1)).value, 0);
}

TEST(UtahUnits, EveryWholeFahrenheitDegreeFallsIntoItsOriginalClass) {
    for (const auto& row : numbers_in(oracle_rows("clock-utah-fahrenheit.txt"))) {
        for (double f = *row[0]; f <= *row[1]; f += 1) {
            EXPECT_EQ(utah_units(from_fahrenheit(f)).value, *row[2]) << f << " F";
        }
    }
}

TEST(UtahUnits, EveryPrintedTenthOfADegreeFallsIntoItsClass) {
    for (const auto& row : numbers_in(oracle_rows("clock-utah-celsius.txt"))) {
        for (long tenths = std::lround(*row[0] * 10); tenths <= std::lround(*row[1] * 10); ++tenths) {
            const double t = static_cast<double>(tenths) / 10;
            EXPECT_EQ(utah_units(Celsius{t}).value, *row[2]) << t;
        }
    }
}

TEST(UtahUnits, AWarmAutumnLeavesNoDebtWhenCountedFromTheMinimum) {
    std::vector<Celsius> hours(100, Celsius{25});
    hours.insert(hours.end(), 50, Celsius{5});
    hours.insert(hours.end(), 10, Celsius{20});
    const auto sums = utah_units_from_minimum(hours);
    ASSERT_EQ(sums.size(), hours.size());
    EXPECT_EQ(sums[99].value, 0);
    EXPECT_EQ(sums[149].value, 50);
    EXPECT_EQ(sums[159].value, 40);
}

TEST(GrowingDegreeHours, MatchTheFixedPoints) {
    for (const auto& row : numbers_in(regression_rows("clock-growing-degree-hours.txt"))) {
        EXPECT_NEAR(asymcur(Celsius{*row[0]}).value, *row[1], 0.5001e-4) << *row[0];
        EXPECT_NEAR(gdh_richardson(Celsius{*row[0]}).value, *row[2], 1e-12) << *row[0];
    }
}

TEST(Asymcur, IsNothingOutsideAndContinuousInside) {
    EXPECT_EQ(asymcur(Celsius{-10}).value, 0);
    EXPECT_EQ(asymcur(Celsius{3.999}).value, 0);
    EXPECT_EQ(asymcur(Celsius{36.001}).value, 0);
    for (double t = 0; t < 40; t += 0.01) {
        EXPECT_LT(std::abs(asymcur(Celsius{t + 0.01}).value - asymcur(Celsius{t}).value), 0.04) << t;
    }
}

TEST(Asymcur, RisesToTheOptimumAndFallsAfterIt) {
    for (double t = 4; t < 24.9; t += 0.1) {
        EXPECT_LT(asymcur(Celsius{t}).value, asymcur(Celsius{t + 0.1}).value) << t;
    }
    for (double t = 25; t < 35.8; t += 0.1) {
        EXPECT_GT(asymcur(Celsius{t}).value, asymcur(Celsius{t + 0.1}).value) << t;
    }
}

TEST(Asymcur, AreaUnderTheRiseIsHalfTheRectangle) {
    double area = 0;
    constexpr int steps = 21000;
    for (int i = 0; i < steps; ++i) {
        area += asymcur(Celsius{4 + 21 * (i + 0.5) / steps}).value * 21 / steps;
    }
    EXPECT_NEAR(area, 220.5, 1e-6);
}

TEST(Asymcur, ADayAtTenDegreesIsWorthNearlyNinetyFive) {
    EXPECT_NEAR(24 * asymcur(Celsius{10}).value, 94.88, 0.005);
}

TEST(LinearForcing, IsFlatOutsideItsThresholds) {
    EXPECT_EQ(linear_forcing(Celsius{3}, Celsius{4}, Celsius{25}).value, 0);
    EXPECT_EQ(linear_forcing(Celsius{4}, Celsius{4}, Celsius{25}).value, 0);
    EXPECT_EQ(linear_forcing(Celsius{10}, Celsius{4}, Celsius{25}).value, 6);
    EXPECT_EQ(linear_forcing(Celsius{40}, Celsius{4}, Celsius{25}).value, 21);
}

TEST(SigmoidForcing, IsHalfItsCeilingAtTheInflectionAndNothingInFrost) {
    EXPECT_NEAR(sigmoid_forcing(Celsius{18.4}).value, 14.2, 1e-12);
    EXPECT_EQ(sigmoid_forcing(Celsius{0}).value, 0);
    EXPECT_EQ(sigmoid_forcing(Celsius{-5}).value, 0);
    EXPECT_GT(sigmoid_forcing(Celsius{0.01}).value, 0.9);
    EXPECT_LT(sigmoid_forcing(Celsius{45}).value, 28.4);
    // Symmetric about the inflection.
    EXPECT_NEAR(sigmoid_forcing(Celsius{10}).value + sigmoid_forcing(Celsius{26.8}).value, 28.4, 1e-12);
}

TEST(ArrheniusForcing, IsOneAtTwentyFiveDegreesAndFollowsTheActivationEnergy) {
    EXPECT_NEAR(arrhenius_forcing(Celsius{25}).value, 1, 1e-15);
    // The slope of ln(rate) against 1/kelvin is the activation energy over the gas constant.
    const double slope =
        (std::log(arrhenius_forcing(Celsius{15}).value) - std::log(arrhenius_forcing(Celsius{5}).value)) /
        (1 / 278.15 - 1 / 288.15);
    EXPECT_NEAR(slope * 8.314, 70000, 1e-6);
}

TEST(PearDevelopment, ChillBranchesMeetAtSixAndEndAtTwelve) {
    EXPECT_EQ(pear_chill_rate(Celsius{0}).value, 0);
    EXPECT_EQ(pear_chill_rate(Celsius{0.1}).value, 1.333e-3);
    EXPECT_NEAR(pear_chill_rate(Celsius{6}).value, pear_chill_rate(Celsius{6 + 1e-9}).value, 1e-6);
    EXPECT_NEAR(pear_chill_rate(Celsius{9}).value, pear_chill_rate(Celsius{9 + 1e-9}).value, 2e-6);
    EXPECT_EQ(pear_chill_rate(Celsius{12}).value, 0);
    EXPECT_EQ(pear_chill_rate(Celsius{15}).value, 0);
    for (double t = -5; t < 20; t += 0.05) {
        EXPECT_GE(pear_chill_rate(Celsius{t}).value, 0) << t;
    }
}

TEST(PearDevelopment, HeatBranchesMeetWithinThreeInAHundredAtTwenty) {
    EXPECT_NEAR(pear_heat_rate(Celsius{20}).value, 2.463e-3, 0.5e-6);
    EXPECT_NEAR(pear_heat_rate(Celsius{20 + 1e-9}).value, 2.390e-3, 0.5e-6);
    EXPECT_LT(pear_heat_rate(Celsius{5}).value, pear_heat_rate(Celsius{15}).value);
    EXPECT_LT(pear_heat_rate(Celsius{21}).value, pear_heat_rate(Celsius{30}).value);
}

TEST(PearDevelopment, ChillStageTakesSevenHundredAndFiftyHoursInTheCold) {
    double done = 0;
    int hours = 0;
    for (; done < 1; ++hours) {
        done += pear_chill_rate(Celsius{4}).value;
    }
    EXPECT_EQ(hours, 751);  // 1 / 1.333e-3 = 750.2
}

}  // namespace
}  // namespace pipward::clock
