// SPDX-License-Identifier: MIT
#include "pipward/bloom/wandering_level.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "springs.h"

namespace pipward::bloom {
namespace {

std::vector<YearValue> noisy(int first, int count, double (*level)(int)) {
    testing::Noise noise(7);
    std::vector<YearValue> values;
    for (int i = 0; i < count; ++i) {
        values.push_back({first + i, level(first + i) + noise.next()});
    }
    return values;
}

double mean_of(const std::vector<YearValue>& values) {
    double sum = 0;
    for (const auto& value : values) {
        sum += value.value;
    }
    return sum / static_cast<double>(values.size());
}

TEST(WanderingLevel, KnowsNothingWithoutValues) {
    EXPECT_EQ(WanderingLevel().at(2020).mean, 0);
    EXPECT_EQ(WanderingLevel().at(2020).sd, 0);
}

TEST(WanderingLevel, OfARecordThatStandsStillIsItsMean) {
    const auto values = noisy(1961, 60, [](int) { return 5.0; });
    const WanderingLevel level(values, 1, 0.25);
    EXPECT_LT(level.pace(), 0.02);
    EXPECT_NEAR(level.at(2021).mean, mean_of(values), 0.35);
    EXPECT_LT(level.at(2021).sd, 0.5);
}

TEST(WanderingLevel, ForgetsWhatIsLongPastWhereTheLevelHasMoved) {
    const auto values = noisy(1961, 60, [](int year) { return year < 1990 ? 0.0 : 4.0; });
    const WanderingLevel level(values, 1, 0.25);
    EXPECT_NEAR(level.at(2021).mean, 4, 0.7);
    EXPECT_NEAR(level.at(1960).mean, 0, 0.7);
    EXPECT_GT(level.pace(), 0.03);
}

TEST(WanderingLevel, OfAYearIsToldByTheOtherYears) {
    auto values = noisy(1991, 30, [](int) { return 0.0; });
    const double before = WanderingLevel(values, 1, 0.25).at(2005).mean;
    values[14].value += 2;  // 2005 itself
    EXPECT_NEAR(WanderingLevel(values, 1, 0.25).at(2005).mean, before, 0.1);
    values[15].value += 2;  // 2006
    EXPECT_GT(WanderingLevel(values, 1, 0.25).at(2005).mean, before + 0.02);
}

TEST(WanderingLevel, ATrendThatTheRecordBearsOutGoesOn) {
    const std::vector<YearlyTrend> trends{{0, 0.5}, {0.1, 0.5}};
    const auto rising = noisy(1991, 30, [](int year) { return 0.1 * (year - 1991); });
    const auto still = noisy(1991, 30, [](int) { return 0.0; });
    EXPECT_NEAR(WanderingLevel(rising, 1, 0.25, trends).at(2031).mean, 4, 0.8);
    EXPECT_NEAR(WanderingLevel(still, 1, 0.25, trends).at(2031).mean, 0, 0.8);
}

TEST(WanderingLevel, IsLessSureTheFartherAhead) {
    const WanderingLevel level(noisy(1991, 30, [](int year) { return 0.1 * (year - 1991); }), 1, 0.25);
    double before = 0;
    for (int year = 2021; year < 2060; year += 5) {
        EXPECT_GE(level.at(year).sd, before);
        before = level.at(year).sd;
    }
}

TEST(WanderingLevel, OneWildValueHardlyMovesIt) {
    auto values = noisy(1991, 30, [](int) { return 0.0; });
    const double before = WanderingLevel(values, 1, 0.25).at(2021).mean;
    values[28].value = 60;
    EXPECT_NEAR(WanderingLevel(values, 1, 0.25).at(2021).mean, before, 3);
}

TEST(WanderingLevel, TheOrderOfTheValuesIsOfNoEffect) {
    auto values = noisy(1991, 12, [](int) { return 1.0; });
    const double forwards = WanderingLevel(values, 1, 0.25).at(2004).mean;
    std::ranges::reverse(values);
    EXPECT_EQ(WanderingLevel(values, 1, 0.25).at(2004).mean, forwards);
}

}  // namespace
}  // namespace pipward::bloom
