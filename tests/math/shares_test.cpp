// SPDX-License-Identifier: MIT
#include "pipward/math/shares.h"

#include <gtest/gtest.h>

#include <random>

#include "testing.h"

namespace pipward::math {
namespace {

TEST(WilsonInterval, AgreesWithTheTable) {
    for (const auto& row : testing::all_rows("math-wilson.txt")) {
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

// The lady tasting tea, three of four right: Fisher 1935, The Design of Experiments, ch. 2: 34 of 140.
TEST(FisherExact, AgreesWithTheTeaTasting) {
    EXPECT_NEAR(fisher_exact({3, 4}, {1, 4}), 34.0 / 70, 1e-9);
    EXPECT_NEAR(fisher_exact({4, 4}, {0, 4}), 2.0 / 70, 1e-9);
}

TEST(FisherExact, IsOneWhereThereIsNothingToTell) {
    EXPECT_NEAR(fisher_exact({5, 10}, {5, 10}), 1, 1e-9);
    EXPECT_EQ(fisher_exact({0, 0}, {5, 10}), 1);
    EXPECT_NEAR(fisher_exact({0, 12}, {0, 9}), 1, 1e-9);
}

TEST(FisherExact, IsTheSameTurnedRoundAndForThoseThatFailed) {
    for (int a = 0; a <= 7; ++a) {
        for (int b = 0; b <= 9; ++b) {
            EXPECT_NEAR(fisher_exact({a, 7}, {b, 9}), fisher_exact({b, 9}, {a, 7}), 1e-9);
            EXPECT_NEAR(fisher_exact({a, 7}, {b, 9}), fisher_exact({7 - a, 7}, {9 - b, 9}), 1e-9);
        }
    }
}

TEST(SmallestPossibleP, TellsThatThreeAndThreeSeedsCannotDecide) {
    EXPECT_NEAR(smallest_possible_p(3, 3), 0.1, 1e-9);
    EXPECT_LT(smallest_possible_p(4, 4), 0.05);
}

// 80 % power at 5 %: 0.6 against 0.4 needs 97 in each; Fleiss, Levin & Paik 2003, Table A.4, without the
// continuity correction, from memory and recomputed.
TEST(NumberToSettle, AgreesWithTheHandCalculation) {
    EXPECT_EQ(number_to_settle(0.6, 0.4), 97);
    EXPECT_EQ(number_to_settle(0.4, 0.6), 97);
}

// Drawn trials of the size it asks for show the difference about as often as it says.
TEST(NumberToSettle, GivesThePowerItPromises) {
    std::mt19937 source(20261125);
    const int number = number_to_settle(0.55, 0.75);
    std::binomial_distribution<int> fewer(number, 0.55);
    std::binomial_distribution<int> more(number, 0.75);
    int shown = 0;
    constexpr int draws = 500;
    for (int i = 0; i < draws; ++i) {
        shown += fisher_exact({fewer(source), number}, {more(source), number}) < 0.05 ? 1 : 0;
    }
    // Fisher's test is a little shy: the plain formula is for the normal test.
    EXPECT_GT(shown, draws * 0.70);
    EXPECT_LT(shown, draws * 0.86);
}

// Holm 1979: the smallest of m is multiplied by m, the next by m - 1 ..., never falling.
TEST(HolmAdjusted, FollowsTheRule) {
    const std::vector<double> p{0.01, 0.04, 0.03, 0.005};
    const std::vector<double> expected{0.03, 0.06, 0.06, 0.02};
    const auto adjusted = holm_adjusted(p);
    for (std::size_t i = 0; i < p.size(); ++i) {
        EXPECT_NEAR(adjusted[i], expected[i], 1e-12);
    }
    EXPECT_TRUE(holm_adjusted({}).empty());
}

}  // namespace
}  // namespace pipward::math
