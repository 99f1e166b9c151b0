// SPDX-License-Identifier: MIT
#include "pipward/math/least_squares.h"

#include <gtest/gtest.h>

#include "testing.h"

namespace pipward::math {
namespace {

TEST(LeastSquares, FindsTheLineOfAnscombesFourSets) {
    const auto rows = testing::oracle_rows("math-anscombe.txt");
    ASSERT_EQ(rows.size(), 11U);
    for (const auto& [x, y] : {std::pair{0, 1}, {0, 2}, {0, 3}, {4, 5}}) {
        LeastSquares squares({1e6, 1e6});
        for (const auto& row : rows) {
            squares.add({1, std::stod(row[x])}, std::stod(row[y]), 1);
        }
        const auto line = squares.solve();
        EXPECT_NEAR(line[0], 3.0, 0.003);
        EXPECT_NEAR(line[1], 0.5, 0.003);
    }
}

TEST(LeastSquares, PullsWhatIsHardlyKnownTowardsZero) {
    // One value 6 of error 1, believed 0 with spread 1: the mean of both.
    LeastSquares one({1});
    EXPECT_EQ(one.solve(), std::vector<double>{0});
    one.add({1}, 6, 1);
    EXPECT_NEAR(one.solve()[0], 3, 1e-12);
    one.add({1}, 6, 10);
    EXPECT_NEAR(one.solve()[0], 5.5, 1e-12);
}

TEST(LeastSquares, WeighsAnEquationAsSoManyOfIt) {
    LeastSquares heavy({5, 7, 9});
    LeastSquares many({5, 7, 9});
    for (const double t : {-1.0, -0.2, 0.5, 1.0}) {
        heavy.add({1, t, t * t}, 2 - t, 3);
        for (int i = 0; i < 3; ++i) {
            many.add({1, t, t * t}, 2 - t, 1);
        }
    }
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(heavy.solve()[i], many.solve()[i], 1e-12);
    }
}

}  // namespace
}  // namespace pipward::math
