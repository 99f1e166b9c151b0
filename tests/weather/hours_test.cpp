// SPDX-License-Identifier: MIT
#include "pipward/weather/hours.h"
#include "days.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "pipward/weather/day_length.h"
#include "testing.h"

namespace pipward::weather {
namespace {

using testing::day;

DayExtremes extremes(double low, double high) {
    return {Celsius{low}, Celsius{high}};
}

/// Days that go up and down without a random draw.
std::vector<DayExtremes> wavy_days(int count) {
    std::vector<DayExtremes> days;
    for (int i = 0; i < count; ++i) {
        const double low = 4 + 8 * std::sin(i * 0.7) + 3 * std::sin(i * 0.13);
        days.push_back(extremes(low, low + 6 + 5 * std::cos(i * 0.4)));
    }
    return days;
}

constexpr Latitude orchard{47.6};

TEST(Hours, LinvillsCurveMatchesItsTable) {
    const DayExtremes today = extremes(2, 12);
    const DayExtremes tomorrow = extremes(4, 10);
    for (const auto& row : testing::regression_rows("weather-linvill.txt")) {
        const double clock = std::stod(row[0]);
        const Celsius t = clock < 24 ? temperature_at(clock, {today, today, tomorrow}, {6, 18})
                                     : temperature_at(clock - 24, {today, tomorrow, tomorrow}, {6, 18});
        EXPECT_NEAR(t.degrees, std::stod(row[1]), 0.5001e-4) << clock;
    }
}

TEST(Hours, AreTwentyFourADayInTheMiddleOfEachHour) {
    const auto days = wavy_days(30);
    const auto hours = hourly_temperatures(days, day(2026, 3, 1), orchard);
    ASSERT_EQ(hours.size(), 30u * 24u);
    for (std::size_t i = 1; i + 1 < days.size(); ++i) {
        const SunTimes sun = sun_times(day(2026, 3, 1) + static_cast<int>(i), orchard);
        for (std::size_t hour = 0; hour < 24; ++hour) {
            const Celsius one =
                temperature_at(static_cast<double>(hour) + 0.5, {days[i - 1], days[i], days[i + 1]}, sun);
            // The series knows yesterday's sunset and tomorrow's sunrise, a minute or two from today's.
            EXPECT_NEAR(hours[i * 24 + hour].degrees, one.degrees, 0.15) << i << " " << hour;
        }
    }
}

TEST(Hours, NeverLeaveTheExtremesAroundThem) {
    const auto days = wavy_days(365);
    const auto hours = hourly_temperatures(days, day(2025, 1, 1), orchard);
    for (std::size_t i = 0; i < hours.size(); ++i) {
        double low = days[i / 24].t_min.degrees;
        double high = days[i / 24].t_max.degrees;
        for (const std::size_t other :
             {i / 24 == 0 ? 0 : i / 24 - 1, std::min(i / 24 + 1, days.size() - 1)}) {
            low = std::min(low, days[other].t_min.degrees);
            high = std::max(high, days[other].t_max.degrees);
        }
        EXPECT_GE(hours[i].degrees, low - 1e-9) << i;
        EXPECT_LE(hours[i].degrees, high + 1e-9) << i;
    }
}

TEST(Hours, AreWarmestTwoHoursAfterNoonAndColdestAboutSunrise) {
    const std::vector<DayExtremes> days(3, extremes(2, 12));
    const auto hours = hourly_temperatures(days, day(2026, 3, 20), orchard);
    const auto first = hours.begin() + 24;
    const auto warmest = std::max_element(first, first + 24) - first;
    const auto coldest = std::min_element(first, first + 24) - first;
    EXPECT_TRUE(warmest == 13 || warmest == 14) << warmest;
    EXPECT_NEAR(static_cast<double>(coldest), 6, 1);
    EXPECT_NEAR(first[13].degrees, 12, 0.1);
}

TEST(Hours, ARiseOfBothExtremesRaisesEveryHourAlike) {
    auto days = wavy_days(40);
    const auto before = hourly_temperatures(days, day(2026, 1, 1), orchard);
    for (DayExtremes& one : days) {
        one = {one.t_min + CelsiusStep{3}, one.t_max + CelsiusStep{3}};
    }
    const auto after = hourly_temperatures(days, day(2026, 1, 1), orchard);
    for (std::size_t i = 0; i < before.size(); ++i) {
        EXPECT_NEAR((after[i] - before[i]).degrees, 3, 1e-9);
    }
}

TEST(Hours, ShapesMadeBeforehandGiveTheSameHours) {
    const auto days = wavy_days(60);
    const auto shapes = day_shapes(day(2025, 10, 1), 90, orchard);
    EXPECT_EQ(hourly_temperatures(days, shapes), hourly_temperatures(days, day(2025, 10, 1), orchard));
}

TEST(Hours, FirstAndLastDayBorrowTheirOwnNeighbour) {
    const std::vector<DayExtremes> one{extremes(3, 13)};
    const std::vector<DayExtremes> three(3, extremes(3, 13));
    const auto alone = hourly_temperatures(one, day(2026, 4, 2), orchard);
    const auto among = hourly_temperatures(three, day(2026, 4, 1), orchard);
    for (std::size_t hour = 0; hour < 24; ++hour) {
        EXPECT_NEAR(alone[hour].degrees, among[24 + hour].degrees, 0.01) << hour;
    }
    EXPECT_TRUE(hourly_temperatures({}, day(2026, 4, 2), orchard).empty());
}

TEST(Hours, PolarDaysAndNightsStayFiniteAndWithinTheExtremes) {
    const std::vector<DayExtremes> days(400, extremes(-5, 5));
    for (const double latitude : {-90.0, -70.0, 66.5, 67.0, 75.0, 90.0}) {
        for (const Celsius t : hourly_temperatures(days, day(2024, 1, 1), Latitude{latitude})) {
            ASSERT_TRUE(t.degrees >= -5 - 1e-9 && t.degrees <= 5 + 1e-9) << latitude << " " << t.degrees;
        }
    }
}

TEST(Hours, TheNightCurveIsContinuousAtSunsetAndSunrise) {
    const DayExtremes today = extremes(1, 15);
    const DayExtremes next = extremes(5, 12);
    const auto at = [&](double hour) {
        return temperature_at(hour, {today, today, next}, {6.5, 17.5}).degrees;
    };
    EXPECT_NEAR(at(17.5), at(17.5 + 1e-9), 1e-6);
    EXPECT_NEAR(at(6.5), at(6.5 - 1e-9), 1e-6);
    EXPECT_NEAR(temperature_at(24, {today, today, next}, {6.5, 17.5}).degrees,
                temperature_at(0, {today, next, next}, {6.5, 17.5}).degrees, 1e-9);
}

}  // namespace
}  // namespace pipward::weather
