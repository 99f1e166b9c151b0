// SPDX-License-Identifier: MIT
#include "pipward/clock/degree_days.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <functional>
#include <limits>
#include <numbers>

#include "clock/number_table.h"
#include "pipward/value/finding.h"

namespace pipward::clock {
namespace {

using testing::number_in;
using testing::oracle_rows;
using testing::regression_rows;

// The formulas do not know the scale: Fahrenheit figures go in and come out as they are.
DayRange range(double low, double high) {
    return {Celsius{low}, Celsius{high}};
}

Thresholds above(double lower) {
    return {Celsius{lower}};
}

Thresholds between(double lower, double upper, CutOff cut_off) {
    return {Celsius{lower}, Celsius{upper}, cut_off};
}

/// Half of the last printed digit, and a little for the binary fraction.
double half_digit(const std::string& text) {
    const auto point = text.find('.');
    const int digits = point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
    return 0.5 * std::pow(10.0, -digits) * 1.001;
}

void expect_printed(double value, const std::string& printed, const std::string& what) {
    if (printed != "-") {
        EXPECT_NEAR(value, std::stod(printed), half_digit(printed)) << what;
    }
}

/// A small generator of our own, so that the cases are the same everywhere.
class Dice {
  public:
    double between(double low, double high) {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        return low + (high - low) * static_cast<double>(state_ >> 11) / 9007199254740992.0;
    }

  private:
    std::uint64_t state_ = 20260101;
};

/// The day's curve integrated by the midpoint rule, each moment weighted by `rate`.
double integrate(const std::function<double(double)>& curve, const std::function<double(double)>& rate) {
    constexpr int steps = 20000;
    double sum = 0;
    for (int i = 0; i < steps; ++i) {
        sum += rate(curve((i + 0.5) / steps));
    }
    return sum / steps;
}

std::function<double(double)> sine_day(double low, double high) {
    return [=](double share) {
        return (low + high) / 2 - (high - low) / 2 * std::cos(2 * std::numbers::pi * share);
    };
}

std::function<double(double)> triangle_day(double low, double high) {
    return [=](double share) { return low + (high - low) * (1 - std::abs(2 * share - 1)); };
}

std::function<double(double)> rate_of(double lower, double upper, CutOff cut_off) {
    return [=](double t) {
        const double full = std::max(0.0, t - lower);
        switch (cut_off) {
            case CutOff::none:
                return full;
            case CutOff::horizontal:
                return std::min(full, upper - lower);
            case CutOff::intermediate:
                return t > upper ? full - 2 * (t - upper) : full;
            case CutOff::vertical:
                return t > upper ? 0.0 : full;
        }
        return 0.0;
    };
}

TEST(DegreeDays, PublishedWorkedDaysOfTheMeanMethodsComeOut) {
    for (const auto& row : oracle_rows("clock-degree-days-published.txt")) {
        const DayRange day = range(std::stod(row[1]), std::stod(row[2]));
        const Celsius base{std::stod(row[3])};
        const double sum = row[0] == "mean"
                               ? daily_mean_degree_days(day, base).value
                               : modified_mean_degree_days(day, base, Celsius{std::stod(row[4])}).value;
        EXPECT_NEAR(sum, std::stod(row[5]), 1e-12) << row[6] << " " << row[1] << " " << row[2];
    }
}

TEST(DegreeDays, EveryMethodMatchesTheRecomputedTable) {
    for (const auto& row : regression_rows("clock-degree-days-formulas.txt")) {
        const DayRange day = range(std::stod(row[1]), std::stod(row[2]));
        const double base = std::stod(row[3]);
        const double upper = std::stod(row[4]);
        const std::string what = row[1] + " " + row[2] + " above " + row[3];
        const auto triangle = [&](CutOff cut_off) {
            return single_triangle_degree_days(day, between(base, upper, cut_off)).value;
        };
        const auto sine = [&](CutOff cut_off) {
            return single_sine_degree_days(day, between(base, upper, cut_off)).value;
        };
        expect_printed(daily_mean_degree_days(day, Celsius{base}).value, row[5], what);
        expect_printed(triangle(CutOff::none), row[6], what);
        expect_printed(sine(CutOff::none), row[7], what);
        expect_printed(triangle(CutOff::horizontal), row[8], what);
        expect_printed(sine(CutOff::horizontal), row[9], what);
        expect_printed(sine(CutOff::intermediate), row[10], what);
        expect_printed(sine(CutOff::vertical), row[11], what);
    }
}

TEST(DegreeDays, FourCaseRuleMatchesItsTableAndItsTwoMiddleCasesMeet) {
    for (const auto& row : regression_rows("clock-degree-days-four-case.txt")) {
        const double base = std::stod(row[2]);
        const DayRange day = range(std::stod(row[0]), std::stod(row[1]));
        EXPECT_NEAR(four_case_degree_days(day, Celsius{base}).value, std::stod(row[3]), 1e-12) << row[0];
    }
    // A hair either side of the base.
    EXPECT_NEAR(four_case_degree_days(range(0, 10), Celsius{5 - 1e-9}).value,
                four_case_degree_days(range(0, 10), Celsius{5 + 1e-9}).value, 1e-8);
}

TEST(DegreeDays, DoubleMethodsTakeTomorrowsMinimumForTheAfternoon) {
    EXPECT_NEAR(double_sine_degree_days(range(40, 65), Celsius{50}, above(50)).value, 6.4044, 0.5e-4);
    EXPECT_NEAR(double_triangle_degree_days(range(40, 65), Celsius{50}, above(50)).value, 6.0, 1e-12);
    // Tomorrow like today: the same as the single method.
    EXPECT_NEAR(double_sine_degree_days(range(40, 65), Celsius{40}, above(50)).value,
                single_sine_degree_days(range(40, 65), above(50)).value, 1e-12);
}

TEST(DegreeDays, ANightWarmerThanTheDayBeforeIsARise) {
    const double half_day = single_sine_degree_days(range(40, 45), above(42)).value / 2;
    const double half_night = single_sine_degree_days(range(45, 50), above(42)).value / 2;
    EXPECT_NEAR(double_sine_degree_days(range(40, 45), Celsius{50}, above(42)).value, half_day + half_night,
                1e-12);
}

TEST(DegreeDays, SineIsNeverBelowTriangleNorTriangleBelowMeanWhereTheBaseLiesBetweenTheExtremes) {
    Dice dice;
    for (int i = 0; i < 200000; ++i) {
        const double low = dice.between(-20, 20);
        const double high = low + dice.between(0.01, 25);
        const double base = dice.between(low, high);
        const double mean = daily_mean_degree_days(range(low, high), Celsius{base}).value;
        const double triangle = single_triangle_degree_days(range(low, high), above(base)).value;
        const double sine = single_sine_degree_days(range(low, high), above(base)).value;
        ASSERT_GE(sine, triangle - 1e-12) << low << " " << high << " " << base;
        ASSERT_GE(triangle, mean - 1e-12) << low << " " << high << " " << base;
    }
}

TEST(DegreeDays, AreasAgreeWithNumericIntegrationForEveryCutOff) {
    Dice dice;
    for (int i = 0; i < 60; ++i) {
        const double low = dice.between(-10, 25);
        const double high = low + dice.between(0.5, 20);
        const double lower = dice.between(0, 12);
        const double upper = lower + dice.between(1, 20);
        for (const CutOff cut_off : {CutOff::none, CutOff::horizontal, CutOff::vertical}) {
            const auto rate = rate_of(lower, upper, cut_off);
            EXPECT_NEAR(single_sine_degree_days(range(low, high), between(lower, upper, cut_off)).value,
                        integrate(sine_day(low, high), rate), 2e-3);
            EXPECT_NEAR(single_triangle_degree_days(range(low, high), between(lower, upper, cut_off)).value,
                        integrate(triangle_day(low, high), rate), 2e-3);
        }
        const auto falling = rate_of(lower, upper, CutOff::intermediate);
        EXPECT_NEAR(
            single_sine_degree_days(range(low, high), between(lower, upper, CutOff::intermediate)).value,
            std::max(0.0, integrate(sine_day(low, high), falling)), 2e-3);
    }
}

TEST(DegreeDays, CutOffsAreOrderedNoneHorizontalIntermediate) {
    Dice dice;
    for (int i = 0; i < 20000; ++i) {
        const double low = dice.between(-10, 35);
        const DayRange day = range(low, low + dice.between(0, 20));
        const auto sine = [&](CutOff cut_off) {
            return single_sine_degree_days(day, between(5, 25, cut_off)).value;
        };
        ASSERT_GE(sine(CutOff::none), sine(CutOff::horizontal) - 1e-12);
        ASSERT_GE(sine(CutOff::horizontal), sine(CutOff::intermediate) - 1e-12);
        ASSERT_GE(sine(CutOff::horizontal), sine(CutOff::vertical) - 1e-12);
        ASSERT_GE(sine(CutOff::intermediate), 0);
        ASSERT_GE(sine(CutOff::vertical), 0);
    }
}

TEST(DegreeDays, ADayWithoutRangeIsItsTemperatureAboveTheBase) {
    EXPECT_EQ(single_sine_degree_days(range(12, 12), above(5)).value, 7);
    EXPECT_EQ(single_triangle_degree_days(range(12, 12), above(5)).value, 7);
    EXPECT_EQ(single_sine_degree_days(range(5, 5), above(5)).value, 0);
    EXPECT_EQ(single_triangle_degree_days(range(3, 3), above(5)).value, 0);
}

TEST(DegreeDays, ExtremesOnTheBaseJoinTheirNeighbouringCases) {
    EXPECT_NEAR(single_sine_degree_days(range(5, 15), above(5)).value, 5, 1e-12);
    EXPECT_NEAR(single_sine_degree_days(range(5 - 1e-9, 15), above(5)).value, 5, 1e-6);
    EXPECT_EQ(single_sine_degree_days(range(-5, 5), above(5)).value, 0);
    EXPECT_NEAR(single_sine_degree_days(range(-5, 5 + 1e-9), above(5)).value, 0, 1e-6);
}

TEST(DegreeDays, ADayWhollyAboveTheUpperThresholdEarnsWhatItsCutOffSays) {
    const DayRange hot = range(30, 34);
    EXPECT_NEAR(single_sine_degree_days(hot, between(5, 25, CutOff::horizontal)).value, 20, 1e-12);
    EXPECT_NEAR(single_sine_degree_days(hot, between(5, 25, CutOff::vertical)).value, 0, 1e-12);
    EXPECT_NEAR(single_sine_degree_days(hot, between(5, 25, CutOff::intermediate)).value, 13, 1e-12);
    EXPECT_EQ(single_sine_degree_days(range(46, 50), between(5, 25, CutOff::intermediate)).value, 0);
    EXPECT_NEAR(modified_mean_degree_days(hot, Celsius{5}, Celsius{25}).value, 20, 1e-12);
}

TEST(DegreeDays, RefuseExtremesAndThresholdsInTheWrongOrder) {
    const double not_a_number = std::numeric_limits<double>::quiet_NaN();
    EXPECT_THROW(daily_mean_degree_days(range(10, 5), Celsius{5}), Error);
    EXPECT_THROW(single_sine_degree_days(range(10, 5), above(5)), Error);
    EXPECT_THROW(single_triangle_degree_days(range(not_a_number, 5), above(5)), Error);
    EXPECT_THROW(four_case_degree_days(range(0, not_a_number), Celsius{5}), Error);
    EXPECT_THROW(single_sine_degree_days(range(0, 10), between(20, 5, CutOff::horizontal)), Error);
    EXPECT_THROW(double_sine_degree_days(range(0, 10), Celsius{not_a_number}, above(5)), Error);
    EXPECT_THROW(modified_mean_degree_days(range(0, 10), Celsius{20}, Celsius{5}), Error);
    try {
        daily_mean_degree_days(range(10, 5), Celsius{5});
        FAIL() << "no error";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::input);
        EXPECT_EQ(error.findings().at(0).value, "10 and 5");
    }
}

TEST(DegreeDays, TheUpperThresholdIsIdleWithoutACutOff) {
    EXPECT_EQ(single_sine_degree_days(range(0, 30), between(10, 5, CutOff::none)).value,
              single_sine_degree_days(range(0, 30), above(10)).value);
}

}  // namespace
}  // namespace pipward::clock
