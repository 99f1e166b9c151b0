// SPDX-License-Identifier: MIT
#include "pipward/seed/share_interval.h"

#include <gtest/gtest.h>

#include "testing.h"

namespace pipward::seed {
namespace {

TEST(WilsonInterval, AgreesWithTheTable) {
    for (const auto& row : testing::oracle_rows("seed-wilson.txt")) {
        const auto interval = wilson_interval(std::stoi(row[0]), std::stoi(row[1]));
        EXPECT_NEAR(interval.low, std::stod(row[2]), 0.00005) << row[0] << " of " << row[1];
        EXPECT_NEAR(interval.high, std::stod(row[3]), 0.00005) << row[0] << " of " << row[1];
    }
}

TEST(WilsonInterval, HoldsTheShareAndNarrowsWithTheCount) {
    double before = 1;
    for (const int of : {10, 20, 50, 200, 1000}) {
        const auto interval = wilson_interval(of * 3 / 10, of);
        EXPECT_LT(interval.low, 0.3);
        EXPECT_GT(interval.high, 0.3);
        EXPECT_LT(interval.high - interval.low, before);
        before = interval.high - interval.low;
    }
}

TEST(WilsonInterval, IsTheSameForTheOtherSideTurnedRound) {
    for (int hits = 0; hits <= 17; ++hits) {
        const auto some = wilson_interval(hits, 17);
        const auto others = wilson_interval(17 - hits, 17);
        EXPECT_NEAR(some.low, 1 - others.high, 1e-12);
    }
}

TEST(WilsonInterval, KnowsNothingOfNothing) {
    EXPECT_EQ(wilson_interval(0, 0).low, 0);
    EXPECT_EQ(wilson_interval(0, 0).high, 1);
}

}  // namespace
}  // namespace pipward::seed
