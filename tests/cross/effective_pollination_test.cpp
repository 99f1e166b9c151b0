// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/effective_pollination.h"

#include <gtest/gtest.h>

#include <cmath>

#include "pipward/cross/detail/pollen_tube.h"
#include "testing.h"

namespace pipward::cross {
namespace {

double period_at(double mean_c) {
    return detail::effective_pollination_days(std::vector<double>(30, mean_c));
}

TEST(EffectivePollination, AgreesWithTheWorkedExamples) {
    int checked = 0;
    for (const auto& row : testing::regression_rows("cross-effective-pollination.txt")) {
        const double tube = detail::tube_journey(std::vector<double>(30, std::stod(row.at(2))))->days;
        EXPECT_NEAR(detail::effective_pollination_days(std::stod(row[1]), tube, std::stod(row[3])),
                    std::stod(row[4]), 0.05);
        ++checked;
    }
    EXPECT_EQ(checked, 2);
}

TEST(EffectivePollination, LiesWithinWhatWasMeasured) {
    int checked = 0;
    for (const auto& row : testing::oracle_rows("cross-effective-pollination.txt")) {
        if (row.at(0) == "comice") {
            EXPECT_GE(period_at(std::stod(row.at(1))), std::stod(row.at(2)));
            EXPECT_LE(period_at(std::stod(row.at(1))), std::stod(row.at(3)));
            ++checked;
        } else if (row.at(0) == "england") {
            EXPECT_GE(period_at(10.5), std::stod(row.at(1)));
            EXPECT_LE(period_at(10.5), std::stod(row.at(2)));
            ++checked;
        }
    }
    EXPECT_EQ(checked, 3);
}

TEST(EffectivePollination, DwindlesInTheCool) {
    EXPECT_GT(period_at(9), 2);
    EXPECT_LT(period_at(8), 2);
    EXPECT_GT(period_at(8), 0);
}

TEST(EffectivePollination, IsNothingInTheCold) {
    EXPECT_EQ(period_at(5), 0);
    EXPECT_EQ(period_at(3), 0);
    EXPECT_EQ(detail::effective_pollination_days(std::vector<double>{}), 0);
    EXPECT_EQ(detail::effective_pollination_days(std::vector<double>{12, 12}), 0);
}

TEST(EffectivePollination, IsShorterInTheHeatButNeverLongerThanTheStigmaLives) {
    EXPECT_LT(period_at(17), period_at(13));
    for (double mean = 0; mean < 35; mean += 0.5) {
        EXPECT_GE(period_at(mean), 0);
        EXPECT_LE(period_at(mean), detail::stigma_days);
    }
}

TEST(OvuleLife, RisesSlowlyInTheCoolAndIsHeldInTheCold) {
    EXPECT_EQ(detail::ovule_life_days({2}), 11);
    EXPECT_EQ(detail::ovule_life_days({9}), 11);
    EXPECT_EQ(detail::ovule_life_days({11}), 10);
    EXPECT_EQ(detail::ovule_life_days({13}), 9);
    EXPECT_EQ(detail::ovule_life_days({15}), 7);
    EXPECT_EQ(detail::ovule_life_days({17}), 5);
    EXPECT_EQ(detail::ovule_life_days({30}), 5);
}

}  // namespace
}  // namespace pipward::cross
