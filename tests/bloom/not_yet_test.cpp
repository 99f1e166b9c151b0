// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/not_yet.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pipward::bloom {
namespace {

struct Moments {
    double mean = 0;
    double sd = 0;
};

// A normal departure known to be `least` or more, summed over a fine grid.
Moments by_brute_force(double least, double sd) {
    double total = 0;
    double sum = 0;
    double squares = 0;
    for (double x = least; x < least + 12 * sd; x += 1e-4) {
        const double density = std::exp(-x * x / (2 * sd * sd));
        total += density;
        sum += density * x;
        squares += density * x * x;
    }
    const double mean = sum / total;
    return {mean, std::sqrt(squares / total - mean * mean)};
}

TEST(ToldByWaiting, LeavesTheMomentsOfTheScenariosThatAreLeft) {
    for (const double least : {-4.0, -1.0, 0.0, 2.0, 5.0}) {
        constexpr double sd = 3;
        const auto told = detail::told_by_waiting(least, sd, 0);
        ASSERT_TRUE(told);
        const double precision = 1 / (sd * sd) + 1 / (told->sd * told->sd);
        const auto expected = by_brute_force(least, sd);
        EXPECT_NEAR(told->departure / (told->sd * told->sd) / precision, expected.mean, 1e-3);
        EXPECT_NEAR(1 / std::sqrt(precision), expected.sd, 1e-3);
    }
}

TEST(ToldByWaiting, NothingIsToldLongBeforeBloom) {
    EXPECT_FALSE(detail::told_by_waiting(-30, 3, 0));
}

TEST(ToldByWaiting, AVagueBoundTellsLess) {
    const auto sharp = detail::told_by_waiting(2, 3, 0);
    const auto vague = detail::told_by_waiting(2, 3, 2.5);
    const auto mean_left = [](const detail::ToldDeparture& told) {
        return told.departure / (1 + told.sd * told.sd / 9);
    };
    EXPECT_LT(mean_left(*vague), mean_left(*sharp));
    EXPECT_GT(mean_left(*vague), 0);
}

TEST(ToldByWaiting, StaysFiniteFarOut) {
    const auto told = detail::told_by_waiting(80, 3, 1);
    ASSERT_TRUE(told);
    EXPECT_TRUE(std::isfinite(told->departure));
    EXPECT_GT(told->sd, 0);
}

}  // namespace
}  // namespace pipward::bloom
