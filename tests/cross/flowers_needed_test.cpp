// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/flowers_needed.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "testing.h"

namespace pipward::cross {
namespace {

detail::FlowerFate fate_in(const std::vector<std::string>& row) {
    return {std::stod(row.at(1)), std::stod(row.at(2)), std::stod(row.at(3)), std::stod(row.at(4))};
}

TEST(FlowersNeeded, AgreesWithTheFiveWorkedRows) {
    const auto rows = testing::regression_rows("cross-flowers-needed.txt");
    EXPECT_EQ(rows.size(), 5U);
    for (const auto& row : rows) {
        EXPECT_NEAR(detail::seedlings_per_flower(fate_in(row)), std::stod(row.at(5)), 1e-9);
        EXPECT_EQ(detail::flowers_needed(std::stoi(row.at(0)), fate_in(row), 0.95), std::stoi(row.at(6)));
    }
}

TEST(FlowersNeeded, AtEvenOddsIsTheMeanRoundedUp) {
    EXPECT_EQ(detail::flowers_needed(100, {0.30, 5, 5, 0.80}, 0.5), 84);
}

TEST(FlowersNeeded, GrowsWithWhatIsWantedAndWithConfidence) {
    const detail::FlowerFate fate{0.3, 5, 5, 0.72};
    int before = 0;
    for (int wanted = 1; wanted < 300; ++wanted) {
        EXPECT_GE(detail::flowers_needed(wanted, fate, 0.95), before);
        EXPECT_GE(detail::flowers_needed(wanted, fate, 0.99), detail::flowers_needed(wanted, fate, 0.95));
        before = detail::flowers_needed(wanted, fate, 0.95);
    }
}

TEST(FlowersNeeded, AnswersTheEdges) {
    EXPECT_EQ(detail::flowers_needed(0, {0.3, 5, 5, 0.72}, 0.95), 0);
    EXPECT_EQ(detail::flowers_needed(10, {0, 5, 5, 0.72}, 0.95), -1);
    EXPECT_EQ(detail::flowers_needed(10, {1, 1, 0, 1}, 0.95), 10);
}

// Crosses drawn one by one, each with a set of its own, each fruit with its own seeds (a Poisson number of
// mean and variance 5), each seed with its own chance: by a generator with a fixed start.
double share_that_reaches(int wanted, int flowers, const detail::FlowerFate& fate) {
    std::mt19937 draw(20260412);
    const double size = fate.fruit_set * (1 - fate.fruit_set) / (fate.fruit_set_sd * fate.fruit_set_sd) - 1;
    std::gamma_distribution<double> one(fate.fruit_set * size, 1);
    std::gamma_distribution<double> other((1 - fate.fruit_set) * size, 1);
    constexpr int crosses = 20000;
    int reached = 0;
    for (int i = 0; i < crosses; ++i) {
        const double a = one(draw);
        const double set = a / (a + other(draw));
        const int fruits = std::binomial_distribution<int>(flowers, set)(draw);
        const int seeds =
            fruits == 0 ? 0 : std::poisson_distribution<int>(fruits * fate.seeds_per_fruit)(draw);
        reached += std::binomial_distribution<int>(seeds, fate.seed_to_seedling)(draw) >= wanted ? 1 : 0;
    }
    return static_cast<double>(reached) / crosses;
}

TEST(FlowersNeeded, ReachTheirConfidenceWhereSetVariesFromCrossToCross) {
    for (const double set : {0.15, 0.30, 0.50}) {
        for (const int wanted : {10, 50, 150}) {
            const detail::FlowerFate fate{set, 5, 5, 0.72, 0.12};
            auto alike = fate;
            alike.fruit_set_sd = 0;
            const double reached =
                share_that_reaches(wanted, detail::flowers_needed(wanted, fate, 0.95), fate);
            EXPECT_GE(reached, 0.945) << set << " " << wanted;
            EXPECT_LE(reached, 0.965) << set << " " << wanted;
            const double before =
                share_that_reaches(wanted, detail::flowers_needed(wanted, alike, 0.95), fate);
            EXPECT_LT(before, set < 0.4 ? 0.90 : 0.94) << set << " " << wanted << ": one set for all";
        }
    }
}

TEST(PlantsNeeded, AgreesWithTheExactBinomialTable) {
    const auto rows = testing::regression_rows("cross-plants-needed.txt");
    EXPECT_EQ(rows.size(), 53U);
    for (const auto& row : rows) {
        EXPECT_EQ(detail::plants_needed(std::stoi(row.at(2)), 1 / std::stod(row.at(0)), std::stod(row.at(1))),
                  std::stoi(row.at(3)))
            << "1/" << row[0] << " " << row[1] << " r " << row[2];
    }
}

TEST(PlantsNeeded, IsRoundedUpBecauseOneLessMissesTheTarget) {
    EXPECT_GT(std::pow(0.75, 10), 0.05);
    EXPECT_LE(std::pow(0.75, detail::plants_needed(1, 0.25, 0.95)), 0.05);
    EXPECT_GT(std::pow(0.75, 16), 0.01);
    EXPECT_LE(std::pow(0.75, detail::plants_needed(1, 0.25, 0.99)), 0.01);
}

}  // namespace
}  // namespace pipward::cross
