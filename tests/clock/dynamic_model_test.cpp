// SPDX-License-Identifier: MIT
#include "pipward/clock/dynamic_model.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <numeric>

#include "clock/number_table.h"

namespace pipward::clock {
namespace {

using testing::numbers_in;
using testing::regression_rows;

constexpr double half_of_fourth_digit = 0.5e-4 * 1.001;
constexpr double half_of_sixth_digit = 0.5e-6 * 1.001;

std::vector<Celsius> constant(double degrees, std::size_t hours) {
    return std::vector<Celsius>(hours, Celsius{degrees});
}

std::vector<Celsius> cycle(double cold, int cold_hours, double warm, int warm_hours, std::size_t hours) {
    std::vector<Celsius> readings;
    for (std::size_t i = 0; i < hours; ++i) {
        const bool is_cold = static_cast<int>(i) % (cold_hours + warm_hours) < cold_hours;
        readings.push_back(Celsius{is_cold ? cold : warm});
    }
    return readings;
}

double portions(const std::vector<Celsius>& hours) {
    return chill_portions(hours).back().value;
}

/// The first hour, counted from 1, in which a portion is completed; 0 where there is none.
int first_portion_hour(double degrees, int hours) {
    DynamicModel model;
    for (int hour = 1; hour <= hours; ++hour) {
        if (model.hour(Celsius{degrees}).value > 0) {
            return hour;
        }
    }
    return 0;
}

TEST(DynamicModel, MatchesTheConstantTemperatureTable) {
    for (const auto& row : numbers_in(regression_rows("clock-dynamic-model-constant.txt"))) {
        const double t = *row[0];
        EXPECT_EQ(first_portion_hour(t, 1000), static_cast<int>(row[4].value_or(0))) << t;
        EXPECT_NEAR(portions(constant(t, 100)), *row[5], half_of_fourth_digit) << t;
        EXPECT_NEAR(portions(constant(t, 240)), *row[6], half_of_fourth_digit) << t;
        EXPECT_NEAR(portions(constant(t, 480)), *row[7], half_of_fourth_digit) << t;
        EXPECT_NEAR(portions(constant(t, 1000)), *row[8], half_of_fourth_digit) << t;
    }
}

TEST(DynamicModel, CompletesTheFirstPortionWhenTheClosedFormSays) {
    for (const auto& row : numbers_in(regression_rows("clock-dynamic-model-constant.txt"))) {
        if (*row[1] <= 1) {
            continue;  // the precursor never reaches one
        }
        const double hours = -std::log(1 - 1 / *row[1]) / *row[2];
        EXPECT_EQ(first_portion_hour(*row[0], 100), static_cast<int>(std::ceil(hours))) << *row[0];
    }
}

TEST(DynamicModel, PrecursorSettlesAtTheEquilibriumWhereNoPortionIsCompleted) {
    for (const auto& row : numbers_in(regression_rows("clock-dynamic-model-constant.txt"))) {
        if (*row[1] > 1) {
            continue;
        }
        DynamicModel model;
        for (int hour = 0; hour < 1000; ++hour) {
            model.hour(Celsius{*row[0]});
        }
        EXPECT_NEAR(model.precursor(), *row[1], 0.5e-5 * 1.001) << *row[0];
    }
}

TEST(DynamicModel, FollowsTheHourlyTraceAtSixDegrees) {
    DynamicModel model;
    int hour = 0;
    for (const auto& row : numbers_in(regression_rows("clock-dynamic-model-trace.txt"))) {
        ChillPortions portion;
        for (; hour < *row[0]; ++hour) {
            portion = model.hour(Celsius{6});
        }
        EXPECT_NEAR(portion.value, *row[1], half_of_sixth_digit) << hour;
        EXPECT_NEAR(model.precursor(), *row[2], half_of_sixth_digit) << hour;
    }
}

TEST(DynamicModel, MatchesTheDailyCyclesTable) {
    for (const auto& row : numbers_in(regression_rows("clock-dynamic-model-cycles.txt"))) {
        const auto hours = cycle(*row[0], static_cast<int>(*row[1]), *row[2], static_cast<int>(*row[3]), 960);
        const auto totals = chill_portions(hours);
        EXPECT_NEAR(totals[479].value, *row[4], half_of_fourth_digit) << *row[2];
        EXPECT_NEAR(totals[959].value, *row[5], half_of_fourth_digit) << *row[2];
    }
}

TEST(DynamicModel, KelvinIsDegreesPlus273AndNot27315) {
    for (const auto& row : numbers_in(regression_rows("clock-dynamic-model-kelvin.txt"))) {
        const auto hours = static_cast<std::size_t>(*row[1]);
        EXPECT_GT(std::abs(portions(constant(*row[0], hours)) - *row[2]), 0.04) << *row[0];
        // A reading warmer by the 0.15 that separates the two conventions must give the careless figure.
        EXPECT_NEAR(portions(constant(*row[0] + 0.15, hours)), *row[2], half_of_fourth_digit) << *row[0];
    }
}

TEST(DynamicModel, SineDaysGiveTheRecomputedPortions) {
    const auto sine_days = [](double mean, double amplitude) {
        std::vector<Celsius> hours;
        for (int hour = 0; hour < 20 * 24; ++hour) {
            hours.push_back(Celsius{mean + amplitude * std::sin(2 * std::numbers::pi * (hour - 9) / 24)});
        }
        return portions(hours);
    };
    EXPECT_NEAR(sine_days(6, 4), 15.8579, half_of_fourth_digit);
    EXPECT_NEAR(sine_days(8, 6), 13.4299, half_of_fourth_digit);
}

// Erez, Fishman, Linsley-Noakes & Allan 1990, Acta Hort. 276: the behaviour that the model was made for.
TEST(DynamicModel, FrostAndWarmthEarnNothingAndSixToEightDegreesEarnMost) {
    const double best = portions(constant(7, 1000));
    EXPECT_LT(portions(constant(-2, 1000)), 0.01 * best);
    EXPECT_EQ(portions(constant(14, 1000)), 0);
    for (const double t : {-2.0, 0.0, 2.0, 4.0, 10.0, 12.0}) {
        EXPECT_LT(portions(constant(t, 1000)), portions(constant(6, 1000))) << t;
        EXPECT_LT(portions(constant(t, 1000)), portions(constant(8, 1000))) << t;
    }
}

TEST(DynamicModel, AboutTwentyEightHoursAtSixDegreesMakeAPortion) {
    const double hours_a_portion = 1000 / portions(constant(6, 1000));
    EXPECT_GT(hours_a_portion, 28);
    EXPECT_LT(hours_a_portion, 30);
}

TEST(DynamicModel, ModerateWarmthEnhancesChillAndHeatUndoesIt) {
    const double cold_alone = portions(constant(6, 320));
    EXPECT_GT(portions(cycle(6, 16, 12, 8, 480)), cold_alone);
    EXPECT_GT(portions(cycle(6, 16, 15, 8, 480)), cold_alone);
    EXPECT_LT(portions(cycle(6, 16, 20, 8, 480)), cold_alone);
    EXPECT_EQ(portions(cycle(6, 16, 24, 8, 480)), 0);
}

TEST(DynamicModel, TotalNeverFallsAndIsTheSumOfItsPortions) {
    DynamicModel model;
    double sum = 0;
    for (int hour = 0; hour < 5000; ++hour) {
        const double before = model.total().value;
        sum += model.hour(Celsius{5 + 12 * std::sin(hour * 0.37) + 6 * std::sin(hour * 0.011)}).value;
        EXPECT_GE(model.total().value, before);
        EXPECT_NEAR(model.total().value, sum, 1e-9);
    }
    EXPECT_GT(sum, 1);
}

TEST(DynamicModel, StaysFiniteFromDeepFrostToDesertHeat) {
    DynamicModel model;
    for (int t = -40; t <= 50; ++t) {
        for (int hour = 0; hour < 24; ++hour) {
            model.hour(Celsius{static_cast<double>(t)});
        }
        EXPECT_TRUE(std::isfinite(model.precursor())) << t;
        EXPECT_TRUE(std::isfinite(model.total().value)) << t;
    }
}

TEST(DynamicModel, NoHoursGiveNoTotals) {
    EXPECT_TRUE(chill_portions({}).empty());
}

}  // namespace
}  // namespace pipward::clock
