// SPDX-License-Identifier: MIT
#include "pipward/cross/normal.h"

#include <gtest/gtest.h>

namespace pipward::cross {
namespace {

TEST(Normal, HasTheQuantilesOfEveryTextbook) {
    EXPECT_NEAR(normal_quantile(0.95), 1.644854, 1e-6);
    EXPECT_NEAR(normal_quantile(0.975), 1.959964, 1e-6);
    EXPECT_NEAR(normal_quantile(0.5), 0, 1e-9);
    EXPECT_NEAR(normal_below(1.959964), 0.975, 1e-7);
}

TEST(Normal, QuantileAndChanceUndoEachOther) {
    for (double chance = 0.001; chance < 1; chance += 0.001) {
        EXPECT_NEAR(normal_below(normal_quantile(chance)), chance, 1e-9);
    }
}

TEST(Quantile, IsTheSmallestValueThatEnoughDoNotExceed) {
    EXPECT_EQ(quantile({3, 1, 2, 4}, 0.5), 2);
    EXPECT_EQ(quantile({3, 1, 2, 4}, 0.51), 3);
    EXPECT_EQ(quantile({3, 1, 2, 4}, 0), 1);
    EXPECT_EQ(quantile({3, 1, 2, 4}, 1), 4);
    EXPECT_EQ(quantile({10, 9, 8, 7, 6, 5, 4, 3, 2, 1}, 0.1), 1);
    EXPECT_EQ(quantile({}, 0.5), std::nullopt);
}

}  // namespace
}  // namespace pipward::cross
