// SPDX-License-Identifier: MIT
#include "pipward/clock/clock_sums.h"

#include <gtest/gtest.h>

#include "pipward/clock/asymcur.h"
#include "pipward/clock/dynamic_model.h"
#include "pipward/value/finding.h"

namespace pipward::clock {
namespace {

const std::vector<DayRange> three_days{
    {Celsius{2}, Celsius{14}}, {Celsius{0}, Celsius{5}}, {Celsius{10}, Celsius{30}}};

/// Day by day: half the hours at the minimum, half at the maximum.
std::vector<Celsius> square_hours(const std::vector<DayRange>& days) {
    std::vector<Celsius> hours;
    for (const DayRange& day : days) {
        hours.insert(hours.end(), 12, day.low);
        hours.insert(hours.end(), 12, day.high);
    }
    return hours;
}

std::vector<ClockSums> sums(CutOff cut_off) {
    return clock_sums(three_days, square_hours(three_days), {Celsius{4.5}, Celsius{25}, cut_off});
}

TEST(ClockSums, RunOnFromDayToDay) {
    const auto result = sums(CutOff::none);
    ASSERT_EQ(result.size(), 3u);
    EXPECT_EQ(result[0].chilling_hours.value, 12);
    EXPECT_EQ(result[1].chilling_hours.value, 12 + 24);
    EXPECT_EQ(result[2].chilling_hours.value, 12 + 24);
    EXPECT_EQ(result[0].utah_units.value, 12 * 0.5 + 12 * 0.0);
    EXPECT_EQ(result[2].utah_units.value, 6 + 12 * 0.0 + 12 * 1.0 + 12 * 0.5 - 12);
    EXPECT_NEAR(result[2].gdd_mean->value, 3.5 + 0 + 15.5, 1e-12);
    EXPECT_NEAR(result[0].gdd_sine.value, 3.9951, 0.5e-4);
    EXPECT_NEAR(result[0].gdd_triangle.value, 3.7604, 0.5e-4);
    EXPECT_NEAR(result[2].gdh_linear.value, 12 * 9.5 + 12 * 0.5 + 12 * 5.5 + 12 * 20.5, 1e-9);
    EXPECT_NEAR(result[1].gdh_asymcur.value, 12 * (asymcur(Celsius{14}).value + asymcur(Celsius{5}).value),
                1e-9);
}

TEST(ClockSums, ChillPortionsCarryTheirStateOverMidnight) {
    const std::vector<DayRange> days(20, DayRange{Celsius{6}, Celsius{6}});
    const std::vector<Celsius> hours(20 * 24, Celsius{6});
    const auto result = clock_sums(days, hours, {Celsius{4.5}});
    EXPECT_EQ(result.back().chill_portions.value, chill_portions(hours).back().value);
    EXPECT_GT(result.back().chill_portions.value, 16);
}

TEST(ClockSums, MeanMethodKnowsOnlyTheHorizontalCutOff) {
    EXPECT_NEAR(sums(CutOff::horizontal)[2].gdd_mean->value, (9.25 - 4.5) + 0.25 + (17.5 - 4.5), 1e-12);
    EXPECT_FALSE(sums(CutOff::vertical)[2].gdd_mean);
    EXPECT_FALSE(sums(CutOff::intermediate)[2].gdd_mean);
}

TEST(ClockSums, CutOffsReachTheTriangleAndTheSine) {
    EXPECT_LT(sums(CutOff::horizontal)[2].gdd_sine, sums(CutOff::none)[2].gdd_sine);
    EXPECT_LT(sums(CutOff::vertical)[2].gdd_triangle, sums(CutOff::horizontal)[2].gdd_triangle);
    EXPECT_EQ(sums(CutOff::vertical)[1].gdd_triangle, sums(CutOff::none)[1].gdd_triangle);
}

TEST(ClockSums, RefuseHoursThatDoNotFitTheDays) {
    const std::vector<Celsius> one_short(71, Celsius{5});
    EXPECT_THROW(clock_sums(three_days, one_short, {Celsius{4.5}}), Error);
    EXPECT_TRUE(clock_sums({}, {}, {Celsius{4.5}}).empty());
}

}  // namespace
}  // namespace pipward::clock
