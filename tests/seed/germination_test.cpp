// SPDX-License-Identifier: MIT
#include "pipward/seed/germination.h"

#include <gtest/gtest.h>

#include <sstream>

#include "testing.h"

namespace pipward::seed {
namespace {

std::vector<GerminationPoint> counted(const std::string& new_a_day) {
    std::vector<GerminationPoint> points;
    std::istringstream words(new_a_day);
    int all = 0;
    for (std::string word; std::getline(words, word, ',');) {
        all += std::stoi(word);
        points.push_back({static_cast<double>(points.size() + 1), all});
    }
    return points;
}

TEST(DaysToHalf, AgreesWithTheWorkedRows) {
    for (const auto& row : testing::regression_rows("seed-half-times.txt")) {
        const auto points = counted(row[0]);
        EXPECT_NEAR(days_to_half(points, HalfRule::coolbear).value(), std::stod(row[1]), 0.00005);
        EXPECT_NEAR(days_to_half(points, HalfRule::farooq).value(), std::stod(row[2]), 0.00005);
        EXPECT_NEAR(mean_germination_days(points).value(), std::stod(row[3]), 0.00005);
    }
}

TEST(DaysToHalf, IsUnknownWhereNoneGerminated) {
    EXPECT_FALSE(days_to_half({}, HalfRule::coolbear));
    EXPECT_FALSE(days_to_half(counted("0,0"), HalfRule::farooq));
    EXPECT_FALSE(mean_germination_days(counted("0,0")));
}

TEST(DaysToHalf, OfOneSeedIsTheDayItWasCounted) {
    EXPECT_EQ(days_to_half(counted("0,0,1"), HalfRule::coolbear), 3);
    EXPECT_EQ(mean_germination_days(counted("0,0,1")), 3);
}

TEST(DaysToHalf, LiesBetweenTheFirstAndTheLastGerminated) {
    for (const auto* course : {"1", "5,5", "0,3,0,0,9", "2,0,0,0,0,0,1", "40,1,1,1"}) {
        const auto points = counted(course);
        for (const auto rule : {HalfRule::coolbear, HalfRule::farooq}) {
            EXPECT_GE(days_to_half(points, rule).value(), 0) << course;
            EXPECT_LE(days_to_half(points, rule).value(), points.back().day) << course;
        }
    }
}

}  // namespace
}  // namespace pipward::seed
