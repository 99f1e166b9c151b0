// SPDX-License-Identifier: MIT
#include "pipward/weather/daily_series.h"

#include <gtest/gtest.h>

#include "pipward/weather/gaps.h"

namespace pipward::weather {
namespace {

Day day(int of_march) {
    return *make_day({2026, 3, of_march});
}

WeatherDay row(const std::string& station, int of_march, double low,
               WeatherSource source = WeatherSource::observed) {
    return {.station = station,
            .day = day(of_march),
            .t_min = Celsius{low},
            .t_max = Celsius{low + 10},
            .source = source};
}

DailySeries series_with_gap(int from, int to) {
    std::vector<WeatherDay> rows;
    for (int of_march = 1; of_march <= 31; ++of_march) {
        if (of_march < from || of_march > to) {
            rows.push_back(row("Barn", of_march, of_march));
        }
    }
    return daily_series(rows, "Barn");
}

TEST(DailySeries, PutsOneStationInDayOrderWithItsHolesOpen) {
    const auto series =
        daily_series({row("Barn", 5, 3), row("Hill", 4, 9), row("Barn", 2, 1), row("Barn", 3, 2)}, "Barn");
    EXPECT_EQ(series.first, day(2));
    ASSERT_EQ(series.days.size(), 4u);
    EXPECT_EQ(series.at(day(3))->t_min.degrees, 2);
    EXPECT_FALSE(series.at(day(4)));
    EXPECT_EQ(series.at(day(5))->t_max.degrees, 13);
}

TEST(DailySeries, HasNothingOutsideItsDaysNorForAnUnknownStation) {
    const auto series = daily_series({row("Barn", 5, 3)}, "Barn");
    EXPECT_FALSE(series.at(day(4)));
    EXPECT_FALSE(series.at(day(6)));
    EXPECT_TRUE(daily_series({row("Barn", 5, 3)}, "Hill").days.empty());
    EXPECT_FALSE(daily_series({}, "Barn").at(day(1)));
}

TEST(DailySeries, AnObservedReadingWinsOverAForecastWhicheverComesFirst) {
    const auto forecast = row("Barn", 5, 99, WeatherSource::forecast);
    const auto observed = row("Barn", 5, 3);
    for (const auto& rows : {std::vector{forecast, observed}, std::vector{observed, forecast}}) {
        const auto series = daily_series(rows, "Barn");
        EXPECT_EQ(series.at(day(5))->t_min.degrees, 3);
        EXPECT_EQ(series.at(day(5))->origin, DayOrigin::observed);
    }
    EXPECT_EQ(daily_series({forecast}, "Barn").at(day(5))->origin, DayOrigin::forecast);
}

TEST(Gaps, AShortGapIsFilledInAStraightLineAndMarked) {
    const auto report = fill_gaps(series_with_gap(10, 14));
    ASSERT_EQ(report.gaps.size(), 1u);
    EXPECT_EQ(report.gaps[0].first, day(10));
    EXPECT_EQ(report.gaps[0].length, 5);
    EXPECT_TRUE(report.gaps[0].filled);
    for (int of_march = 10; of_march <= 14; ++of_march) {
        EXPECT_NEAR(report.series.at(day(of_march))->t_min.degrees, of_march, 1e-12);
        EXPECT_NEAR(report.series.at(day(of_march))->t_max.degrees, of_march + 10, 1e-12);
        EXPECT_EQ(report.series.at(day(of_march))->origin, DayOrigin::interpolated);
    }
    EXPECT_EQ(report.series.at(day(9))->origin, DayOrigin::observed);
}

TEST(Gaps, ALongGapStaysOpenAndIsReported) {
    const auto report = fill_gaps(series_with_gap(10, 15));
    ASSERT_EQ(report.gaps.size(), 1u);
    EXPECT_EQ(report.gaps[0].length, 6);
    EXPECT_FALSE(report.gaps[0].filled);
    EXPECT_FALSE(report.series.at(day(12)));
    EXPECT_TRUE(fill_gaps(series_with_gap(10, 15), 6).gaps[0].filled);
}

TEST(Gaps, EndsAreNeverExtended) {
    DailySeries series = series_with_gap(10, 10);
    series.days.insert(series.days.begin(), 2, std::nullopt);
    series.first = series.first - 2;
    series.days.resize(series.days.size() + 3);
    const auto report = fill_gaps(series);
    EXPECT_EQ(report.gaps.size(), 1u);
    EXPECT_FALSE(report.series.days.front());
    EXPECT_FALSE(report.series.days.back());
    EXPECT_TRUE(fill_gaps({}).gaps.empty());
}

}  // namespace
}  // namespace pipward::weather
