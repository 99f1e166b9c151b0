// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/pollen_tube.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "testing.h"

namespace pipward::cross {
namespace {

TEST(TubeIndex, IsWilliamsTableAtWholeDegrees) {
    int checked = 0;
    for (const auto& row : testing::oracle_rows("cross-williams-tube.txt")) {
        const auto index = detail::tube_index({std::stod(row.at(0))});
        EXPECT_DOUBLE_EQ(index.per_day, std::stod(row.at(1)));
        EXPECT_TRUE(index.inside_table);
        ++checked;
    }
    EXPECT_EQ(checked, 11);
}

TEST(TubeIndex, RunsStraightBetweenWholeDegrees) {
    EXPECT_DOUBLE_EQ(detail::tube_index({9.5}).per_day, 13);
    EXPECT_DOUBLE_EQ(detail::tube_index({14.5}).per_day, 42.5);
}

TEST(TubeIndex, SaysWhenATemperatureLiesOutsideTheTable) {
    EXPECT_EQ(detail::tube_index({20}).per_day, 50);
    EXPECT_FALSE(detail::tube_index({20}).inside_table);
    EXPECT_EQ(detail::tube_index({4.9}).per_day, 0);
    EXPECT_FALSE(detail::tube_index({4.9}).inside_table);
    EXPECT_EQ(detail::tube_index({std::numeric_limits<double>::quiet_NaN()}).per_day, 0);
}

TEST(TubeIndex, NeverFallsAsItGetsWarmer) {
    double before = 0;
    for (double mean = -5; mean < 30; mean += 0.1) {
        EXPECT_GE(detail::tube_index({mean}).per_day, before) << mean;
        before = detail::tube_index({mean}).per_day;
    }
}

TEST(TubeJourney, TakesOneHundredByTheIndexAtASteadyTemperature) {
    int checked = 0;
    for (const auto& row : testing::regression_rows("cross-williams-tube.txt")) {
        if (row.at(0) != "steady") {
            continue;
        }
        const auto journey = detail::tube_journey(std::vector<double>(30, std::stod(row.at(1))));
        ASSERT_TRUE(journey);
        EXPECT_NEAR(journey->days, std::stod(row.at(2)), 0.0501) << row[1];
        ++checked;
    }
    EXPECT_EQ(checked, 11);
}

TEST(TubeJourney, IsHomeOnTheDayThatTheIndicesReachOneHundred) {
    int checked = 0;
    for (const auto& row : testing::regression_rows("cross-williams-tube.txt")) {
        if (row.at(0) != "run") {
            continue;
        }
        std::vector<double> means;
        for (std::size_t i = 2; i < row.size(); ++i) {
            means.push_back(std::stod(row[i]));
        }
        const auto journey = detail::tube_journey(means);
        ASSERT_TRUE(journey);
        EXPECT_EQ(journey->home_on_day, std::stoi(row.at(1)));
        EXPECT_LE(journey->days, journey->home_on_day);
        EXPECT_GT(journey->days, journey->home_on_day - 1);
        ++checked;
    }
    EXPECT_EQ(checked, 4);
}

TEST(TubeJourney, CountsTheLastDayByThePartNeeded) {
    const std::vector<double> means{10, 11, 13, 14, 15};
    EXPECT_DOUBLE_EQ(detail::tube_journey(means)->days, 4 + 9.0 / 50);
}

TEST(TubeJourney, EndsNowhereWhenTheDaysRunOutOrAreTooCold) {
    EXPECT_FALSE(detail::tube_journey(std::vector<double>{10, 11}));
    EXPECT_FALSE(detail::tube_journey(std::vector<double>(100, 4)));
    EXPECT_FALSE(detail::tube_journey({}));
}

TEST(TubeJourney, RemembersThatADayLayOutsideTheTable) {
    EXPECT_FALSE(detail::tube_journey(std::vector<double>{12, 22, 22})->inside_table);
    EXPECT_TRUE(detail::tube_journey(std::vector<double>{12, 15, 15})->inside_table);
}

}  // namespace
}  // namespace pipward::cross
