// SPDX-License-Identifier: MIT
#include "pipward/math/robust.h"

#include <gtest/gtest.h>

#include <vector>

#include "pipward/math/distributions.h"

namespace pipward::math {
namespace {

TEST(RobustSd, IsThatOfNormalValuesAndForgetsASlip) {
    std::vector<double> values;
    for (int i = 0; i < 999; ++i) {
        values.push_back(3 * normal_quantile((i + 0.5) / 999));
    }
    EXPECT_NEAR(robust_sd(values), 3, 0.01);
    values.back() = 10000;
    EXPECT_NEAR(robust_sd(values), 3, 0.01);
    EXPECT_EQ(robust_sd({}), 0);
}

TEST(Weights, FallAsTheirTextSays) {
    EXPECT_EQ(student_weight(1), 1);
    EXPECT_NEAR(student_weight(3), 5.0 / 13, 1e-12);
    EXPECT_NEAR(student_weight(8), 5.0 / 68, 1e-12);
    EXPECT_EQ(slip_weight(-unlikely_deviations), 1);
    EXPECT_NEAR(slip_weight(8), 0.037, 0.001);
    EXPECT_EQ(huber_weight(-1.5, 1), 1);
    EXPECT_NEAR(huber_weight(6, 2), 0.5, 1e-12);
}

// The weight is what turns the square into the loss: w r^2 has half of the loss's slope.
TEST(HuberLoss, BendsFromASquareIntoALine) {
    EXPECT_EQ(huber_loss(2, 3), 4);
    EXPECT_EQ(huber_loss(-3, 3), 9);
    EXPECT_EQ(huber_loss(5, 3), 21);
    for (const double residual : {-7.0, 0.4, 2.9, 5.0}) {
        const double slope = (huber_loss(residual + 1e-6, 1.5) - huber_loss(residual - 1e-6, 1.5)) / 2e-6;
        EXPECT_NEAR(huber_weight(residual, 1) * residual, slope / 2, 1e-6);
    }
}

}  // namespace
}  // namespace pipward::math
