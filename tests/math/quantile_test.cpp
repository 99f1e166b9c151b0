// SPDX-License-Identifier: MIT
#include "pipward/math/quantile.h"

#include <gtest/gtest.h>

namespace pipward::math {
namespace {

TEST(Median, IsTheMiddleOrTheMeanOfTheMiddleTwo) {
    EXPECT_EQ(median({3, 1, 2}), 2);
    EXPECT_EQ(median({4, 1, 3, 2}), 2.5);
    EXPECT_EQ(median({7}), 7);
    EXPECT_EQ(median({}), 0);
}

TEST(MiddleValue, IsOneOfTheValues) {
    EXPECT_EQ(middle_value(std::vector{4, 1, 3, 2}), 3);
    EXPECT_EQ(middle_value(std::vector{5, 1, 3}), 3);
    EXPECT_EQ(in_place(std::vector{5, 1, 3}, 0), 1);
    EXPECT_EQ(in_place(std::vector{5, 1, 3}, 2), 5);
}

TEST(Mean, IsNoneOfNothing) {
    EXPECT_EQ(mean(std::vector{1.0, 2.0, 6.0}), 3);
    EXPECT_EQ(mean({}), 0);
}

TEST(Quantile, IsTheSmallestValueThatEnoughDoNotExceed) {
    const std::vector few{3, 1, 2, 4};
    EXPECT_EQ(quantile(few, 0.5), 2);
    EXPECT_EQ(quantile(few, 0.51), 3);
    EXPECT_EQ(quantile(few, 0), 1);
    EXPECT_EQ(quantile(few, 1), 4);
    EXPECT_EQ(quantile(std::vector{10, 9, 8, 7, 6, 5, 4, 3, 2, 1}, 0.1), 1);
    EXPECT_EQ(quantile(std::vector<int>{}, 0.5), std::nullopt);
}

// Type 5 of Hyndman & Fan 1996: of n values the i-th is the quantile of (i - 0.5) / n.
TEST(SampleQuantile, LiesBetweenTheValuesWhoseMiddlesEncloseIt) {
    std::vector<double> values{40, 10, 20, 30};
    EXPECT_NEAR(sample_quantile(values, 0.125), 10, 1e-12);
    EXPECT_NEAR(sample_quantile(values, 0.25), 15, 1e-12);
    EXPECT_NEAR(sample_quantile(values, 0.5), 25, 1e-12);
    EXPECT_NEAR(sample_quantile(values, 0.01), 10, 1e-12);
    EXPECT_NEAR(sample_quantile(values, 0.99), 40, 1e-12);
}

}  // namespace
}  // namespace pipward::math
