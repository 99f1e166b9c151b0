// SPDX-License-Identifier: MIT
#include "pipward/math/distributions.h"

#include <gtest/gtest.h>

#include <cmath>

#include "testing.h"

namespace pipward::math {
namespace {

TEST(Distributions, HaveTheQuantilesOfEveryTextbook) {
    const auto rows = testing::oracle_rows("math-quantiles.txt");
    EXPECT_EQ(rows.size(), 11U);
    for (const auto& row : rows) {
        const double freedom = std::stod(row[1]);
        const double chance = std::stod(row[2]);
        const double value = std::stod(row[3]);
        if (row[0] == "normal") {
            EXPECT_NEAR(normal_quantile(chance), value, 5e-7);
            EXPECT_NEAR(normal_below(value), chance, 1e-7);
        } else if (row[0] == "student") {
            EXPECT_NEAR(student_quantile(chance, freedom), value, 5e-7);
        } else {
            EXPECT_NEAR(chi_square_above(value, freedom), 1 - chance, 1e-7);
        }
    }
}

TEST(Normal, QuantileAndChanceUndoEachOther) {
    for (double chance = 0.001; chance < 1; chance += 0.001) {
        EXPECT_NEAR(normal_below(normal_quantile(chance)), chance, 1e-12);
    }
}

TEST(Normal, DensityIsTheSlopeOfTheChance) {
    constexpr double step = 1e-4;
    for (const double off : {-2.0, -0.3, 0.0, 1.1}) {
        const double sd = 0.7;
        const double slope = (normal_below((off + step) / sd) - normal_below((off - step) / sd)) / (2 * step);
        EXPECT_NEAR(normal_density(off, sd), slope, 1e-7);
    }
}

// Shaw 2006, J. Comput. Finance 9(4):37: Student's t with 4 degrees of freedom in closed form (from memory).
TEST(Student, AgreesWithTheClosedFormForFourDegreesOfFreedom) {
    for (double chance = 0.01; chance < 1; chance += 0.07) {
        const double root = std::sqrt(4 * chance * (1 - chance));
        const double ratio = std::cos(std::acos(root) / 3) / root;
        const double quantile = std::copysign(2 * std::sqrt(ratio - 1), chance - 0.5);
        EXPECT_NEAR(student_quantile(chance, 4), quantile, 1e-9);
    }
}

TEST(Binomial, CountsByHand) {
    // Of three tosses of a coin none, at most one, at most two heads: 1, 4 and 7 of 8.
    EXPECT_EQ(binomial_fewer(0, 3, 0.5), 0);
    EXPECT_NEAR(binomial_fewer(1, 3, 0.5), 1.0 / 8, 1e-15);
    EXPECT_NEAR(binomial_fewer(2, 3, 0.5), 4.0 / 8, 1e-15);
    EXPECT_NEAR(binomial_fewer(3, 3, 0.5), 7.0 / 8, 1e-15);
    EXPECT_EQ(binomial_fewer(4, 3, 0.5), 1);
}

TEST(Hypergeometric, CountsByHand) {
    // Two of the four aces among two drawn of 52: 6 of 1326.
    EXPECT_NEAR(hypergeometric(2, 4, 2, 52), 6.0 / 1326, 1e-15);
    EXPECT_NEAR(hypergeometric(0, 4, 2, 52) + hypergeometric(1, 4, 2, 52) + hypergeometric(2, 4, 2, 52), 1,
                1e-12);
}

}  // namespace
}  // namespace pipward::math
