// SPDX-License-Identifier: MIT
#include "pipward/weather/odd_days.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace pipward::weather {
namespace {

const Day begin = *make_day({2026, 3, 1});

/// Forty days of spring with tenths, whose weather swings by some degrees.
DailySeries spring() {
    DailySeries series{begin, {}};
    for (int i = 0; i < 40; ++i) {
        const double middle = std::round(10 * (6 + 0.1 * i + 3 * std::sin(i * 0.9))) / 10 + 0.03;
        series.days.push_back(DailyTemperature{{middle - 4.3}, {middle + 4.6}});
    }
    return series;
}

DailyTemperature& on(DailySeries& series, int day) {
    return *series.days[static_cast<std::size_t>(day)];
}

void expect_one(const DailySeries& series, int day, Oddity oddity) {
    const auto odd = odd_days(series);
    ASSERT_EQ(odd.size(), 1u);
    EXPECT_EQ(odd[0].day - begin, day);
    EXPECT_EQ(odd[0].oddity, oddity);
}

TEST(OddDays, AnOrdinarySpringHasNone) {
    EXPECT_TRUE(odd_days(spring()).empty());
    EXPECT_TRUE(odd_days({}).empty());
}

TEST(OddDays, ZerosForAMissingReading) {
    auto series = spring();
    on(series, 20) = {{0}, {0}};
    expect_one(series, 20, Oddity::zeros_for_missing);
    EXPECT_TRUE(is_no_reading(Oddity::zeros_for_missing));
}

TEST(OddDays, ZerosOnEndAreNoReadingsEvenInFrost) {
    auto series = spring();
    for (auto& day : series.days) {
        day->t_min = day->t_min + CelsiusStep{-9};
        day->t_max = day->t_max + CelsiusStep{-9};
    }
    on(series, 8) = {{0}, {0}};
    expect_one(series, 8, Oddity::both_zero);
    on(series, 9) = on(series, 10) = {{0}, {0}};
    const auto odd = odd_days(series);
    ASSERT_EQ(odd.size(), 3u);
    EXPECT_TRUE(
        std::ranges::all_of(odd, [](const OddDay& day) { return day.oddity == Oddity::zeros_for_missing; }));
}

TEST(OddDays, ALostDecimalPoint) {
    auto series = spring();
    on(series, 12).t_max = {45};
    on(series, 12).t_min = {4.5};
    expect_one(series, 12, Oddity::point_lost);
    series = spring();
    on(series, 2).t_min = {-25};
    expect_one(series, 2, Oddity::point_lost);
    EXPECT_TRUE(is_no_reading(Oddity::point_lost));
}

TEST(OddDays, AReadingFarOffIsToldAndMayBeTrue) {
    auto series = spring();
    on(series, 30).t_max = {39.5};
    expect_one(series, 30, Oddity::far_off);
    EXPECT_FALSE(is_no_reading(Oddity::far_off));
    EXPECT_LT(odd_days(series)[0].usual_highest.degrees, 20);
}

TEST(OddDays, AStuckThermometer) {
    auto series = spring();
    for (int i = 10; i < 16; ++i) {
        on(series, i) = on(series, 10);
    }
    expect_one(series, 10, Oddity::unchanging);
    EXPECT_EQ(odd_days(series)[0].days, 6);
    on(series, 15).t_max = {19.03};
    EXPECT_TRUE(odd_days(series).empty());
    for (int i = 10; i < 25; ++i) {
        on(series, i).t_min = {2.5};
    }
    expect_one(series, 10, Oddity::unchanging);
}

TEST(OddDays, AForecastIsNotJudged) {
    auto series = spring();
    on(series, 20) = {{0}, {0}, DayOrigin::forecast};
    EXPECT_TRUE(odd_days(series).empty());
}

}  // namespace
}  // namespace pipward::weather
