// SPDX-License-Identifier: MIT
#include "pipward/weather/season_weather.h"
#include "days.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "pipward/weather/gaps.h"
#include "weather/hourly_file.h"

namespace pipward::weather {
namespace {

using testing::day;

DailySeries observed(Day first, Day last) {
    DailySeries series{first, {}};
    for (Day one = first; one <= last; one = one + 1) {
        const double low = static_cast<double>(day_of_year(one)) / 10;
        series.days.push_back(DailyTemperature{Celsius{low}, Celsius{low + 10}, DayOrigin::observed});
    }
    return series;
}

void clear(DailySeries& series, Day first, int days) {
    for (int i = 0; i < days; ++i) {
        series.days[static_cast<std::size_t>(first - series.first + i)].reset();
    }
}

void mark_forecast(DailySeries& series, Day first) {
    for (Day one = first; one < series.end(); one = one + 1) {
        series.days[static_cast<std::size_t>(one - series.first)]->origin = DayOrigin::forecast;
    }
}

bool mentions(const Findings& findings, Level level, const std::string& row, const std::string& words) {
    return std::ranges::any_of(findings, [&](const Finding& finding) {
        return finding.level == level && finding.row == row &&
               finding.message.text().find(words) != std::string::npos;
    });
}

TEST(PastSeasons, AreWholeAndEndBeforeTheDayAskedFor) {
    const auto report =
        past_seasons(observed(day(2019, 9, 1), day(2023, 8, 1)), Hemisphere::north, day(2023, 6, 30));
    ASSERT_EQ(report.seasons.size(), 3u);  // 2023 ends on the very day
    EXPECT_EQ(report.seasons[0].season, Season{2020});
    EXPECT_EQ(report.seasons[0].first, day(2019, 10, 1));
    EXPECT_EQ(report.seasons[0].days.size(), static_cast<std::size_t>(season_length));
    EXPECT_EQ(report.seasons[2].season, Season{2022});
    EXPECT_NEAR(report.seasons[2].days[0].t_min.degrees, 27.4, 1e-12);
    EXPECT_TRUE(report.findings.empty());
}

TEST(PastSeasons, ARecordThatBeginsInWinterLosesThatSeasonWithAReason) {
    const auto report =
        past_seasons(observed(day(2020, 1, 1), day(2022, 12, 31)), Hemisphere::north, day(2026, 1, 1));
    ASSERT_EQ(report.seasons.size(), 2u);
    EXPECT_TRUE(mentions(report.findings, Level::warning, "season 2020", "begins only on 2020-01-01"));
    EXPECT_TRUE(mentions(report.findings, Level::warning, "season 2023", "ends on 2022-12-31"));
}

TEST(PastSeasons, ALongGapBeforeMayRefusesTheSeasonAndALaterOneCutsIt) {
    auto series = observed(day(2019, 10, 1), day(2021, 9, 1));
    clear(series, day(2020, 2, 1), 29);
    clear(series, day(2021, 5, 10), 10);
    const auto report = past_seasons(series, Hemisphere::north, day(2026, 1, 1));
    ASSERT_EQ(report.seasons.size(), 1u);
    EXPECT_EQ(report.seasons[0].season, Season{2021});
    EXPECT_EQ(report.seasons[0].first + static_cast<int>(report.seasons[0].days.size()), day(2021, 5, 10));
    EXPECT_TRUE(
        mentions(report.findings, Level::warning, "season 2020", "29 days from 2020-02-01 to 2020-02-29"));
}

TEST(PastSeasons, TheLastNeededDayIsThirtyApril) {
    auto series = observed(day(2020, 10, 1), day(2021, 9, 1));
    clear(series, day(2021, 5, 1), 10);
    EXPECT_EQ(past_seasons(series, Hemisphere::north, day(2026, 1, 1)).seasons.size(), 1u);
    clear(series, day(2021, 4, 30), 1);
    EXPECT_TRUE(past_seasons(series, Hemisphere::north, day(2026, 1, 1)).seasons.empty());
}

TEST(PastSeasons, ForecastRowsAreNotUsed) {
    auto series = observed(day(2020, 10, 1), day(2021, 6, 30));
    mark_forecast(series, day(2021, 4, 1));
    const auto report = past_seasons(series, Hemisphere::north, day(2026, 1, 1));
    EXPECT_TRUE(report.seasons.empty());
    EXPECT_TRUE(mentions(report.findings, Level::warning, "season 2021", "ends on 2021-03-31"));
}

TEST(PastSeasons, ShortGapsAreFilledAndCounted) {
    auto series = observed(day(2020, 10, 1), day(2021, 6, 30));
    clear(series, day(2021, 1, 10), 2);
    clear(series, day(2021, 3, 1), 3);
    const auto report = past_seasons(series, Hemisphere::north, day(2026, 1, 1));
    ASSERT_EQ(report.seasons.size(), 1u);
    EXPECT_TRUE(mentions(report.findings, Level::notice, "season 2021", "5 missing days"));
}

TEST(PastSeasons, TenDaysInWinterDoNotCostTheSeasonAndSixInSpringDo) {
    for (const auto& [first, length, whole] :
         {std::tuple{day(2020, 12, 1), 10, true}, std::tuple{day(2021, 1, 25), 7, true},
          std::tuple{day(2021, 1, 26), 7, false}, std::tuple{day(2021, 3, 1), 6, false},
          std::tuple{day(2020, 11, 1), 15, false}}) {
        auto series = observed(day(2020, 10, 1), day(2021, 6, 30));
        clear(series, first, length);
        EXPECT_EQ(past_seasons(series, Hemisphere::north, day(2026, 1, 1)).seasons.size(), whole ? 1U : 0U)
            << to_iso(first);
    }
}

TEST(PastSeasons, ADayThatLacksAtTheSeasonsEdgeSpoilsNothing) {
    for (const auto& [first, last, whole] : {std::tuple{day(2020, 10, 2), day(2021, 6, 30), true},
                                             std::tuple{day(2020, 10, 6), day(2021, 6, 30), true},
                                             std::tuple{day(2020, 10, 7), day(2021, 6, 30), false},
                                             std::tuple{day(2020, 10, 1), day(2021, 4, 29), true},
                                             std::tuple{day(2020, 10, 1), day(2021, 4, 28), false}}) {
        const auto report = past_seasons(observed(first, last), Hemisphere::north, day(2026, 1, 1));
        ASSERT_EQ(report.seasons.size(), whole ? 1U : 0U) << to_iso(first) << " to " << to_iso(last);
        if (whole) {
            EXPECT_EQ(report.seasons[0].first, day(2020, 10, 1));
        }
    }
}

TEST(PastSeasons, SouthernSeasonsBeginAtTheEndOfMarchOrOnFirstApril) {
    const auto report =
        past_seasons(observed(day(2020, 3, 31), day(2022, 3, 31)), Hemisphere::south, day(2022, 4, 1));
    ASSERT_EQ(report.seasons.size(), 2u);
    EXPECT_EQ(report.seasons[0].season, Season{2020});
    EXPECT_EQ(report.seasons[0].first, day(2020, 3, 31));  // a leap year
    EXPECT_EQ(report.seasons[1].first, day(2021, 4, 1));
}

TEST(PastSeasons, AnEmptyRecordHasNone) {
    EXPECT_TRUE(past_seasons({}, Hemisphere::north, day(2026, 1, 1)).seasons.empty());
}

TEST(PastSeasons, BadajozLosesTheSeasonsOfItsThirteenMissingFebruaries) {
    const auto text = testing::shared_weather("badajoz-daily-1955-2015.csv");
    if (!text) {
        GTEST_SKIP() << "The shared record of Badajoz is not here.";
    }
    std::vector<WeatherDay> rows;
    std::istringstream lines(*text);
    std::string line;
    std::getline(lines, line);
    while (std::getline(lines, line)) {
        const auto cells = testing::split(line, ',');
        rows.push_back({.station = "Badajoz",
                        .day = *parse_iso_day(cells[0]),
                        .t_min = Celsius{std::stod(cells[1])},
                        .t_max = Celsius{std::stod(cells[2])}});
    }
    const auto series = daily_series(rows, "Badajoz");
    const auto gaps = fill_gaps(series).gaps;
    EXPECT_EQ(std::ranges::count_if(gaps, [](const Gap& gap) { return !gap.filled; }), 13);
    EXPECT_EQ(std::ranges::count_if(gaps, [](const Gap& gap) { return gap.filled && gap.length == 2; }), 4);
    EXPECT_EQ(gaps.size(), 17u);

    const auto report = past_seasons(series, Hemisphere::north, day(2016, 12, 31));
    std::set<int> lost;
    for (int year = 1955; year <= 2016; ++year) {
        lost.insert(year);
    }
    for (const SeasonWeather& season : report.seasons) {
        lost.erase(season.season.year);
    }
    // The thirteen Februaries, and the first and last season, of which half lies outside the record.
    EXPECT_EQ(lost, (std::set<int>{1955, 1958, 1962, 1967, 1969, 1970, 1971, 1973, 1979, 1981, 1989, 1994,
                                   1995, 1999, 2016}));
    EXPECT_EQ(std::ranges::count(report.findings, Level::warning, &Finding::level), 15);
}

TEST(CurrentSeason, HoldsTheObservedDaysToTheDayAskedForAndThenTheForecast) {
    auto series = observed(day(2025, 9, 1), day(2026, 3, 25));
    mark_forecast(series, day(2026, 3, 16));
    const auto current = current_season(series, {2026}, Hemisphere::north, day(2026, 3, 15));
    EXPECT_EQ(current.weather.first, day(2025, 10, 1));
    EXPECT_EQ(current.observed_days, day(2026, 3, 15) - day(2025, 10, 1) + 1);
    EXPECT_EQ(current.weather.days.size(), static_cast<std::size_t>(current.observed_days) + 10);
    EXPECT_TRUE(current.findings.empty());
}

TEST(CurrentSeason, DoesNotLookPastTheDayAskedFor) {
    auto series = observed(day(2009, 10, 1), day(2012, 12, 31));
    const auto current = current_season(series, {2010}, Hemisphere::north, day(2010, 3, 1));
    EXPECT_EQ(current.observed_days, day(2010, 3, 1) - day(2009, 10, 1) + 1);
    EXPECT_EQ(current.weather.days.size(), static_cast<std::size_t>(current.observed_days));
    // A gap that only later readings could close is not closed.
    clear(series, day(2010, 2, 27), 4);
    const auto poorer = current_season(series, {2010}, Hemisphere::north, day(2010, 3, 1));
    EXPECT_EQ(poorer.weather.days.size(), static_cast<std::size_t>(current.observed_days) - 3);
    EXPECT_TRUE(mentions(poorer.findings, Level::warning, "season 2010", "last 3 days, up to 2010-03-01"));
}

TEST(CurrentSeason, ALongGapInsideIsAnErrorThatNamesEveryOne) {
    auto series = observed(day(2025, 10, 1), day(2026, 3, 25));
    clear(series, day(2025, 12, 1), 15);
    clear(series, day(2026, 1, 10), 20);
    clear(series, day(2026, 2, 10), 2);
    try {
        current_season(series, {2026}, Hemisphere::north, day(2026, 3, 25));
        FAIL() << "no error";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::input);
        ASSERT_EQ(error.findings().size(), 2u);
        EXPECT_NE(error.findings()[0].message.text().find("15 days from 2025-12-01"), std::string::npos);
        EXPECT_NE(error.findings()[1].message.text().find("20 days from 2026-01-10"), std::string::npos);
        EXPECT_FALSE(error.findings()[0].remedy.empty());
    }
}

TEST(CurrentSeason, ARecordThatBeginsAfterTheSeasonIsAnError) {
    EXPECT_THROW(current_season(observed(day(2026, 1, 1), day(2026, 3, 1)), {2026}, Hemisphere::north,
                                day(2026, 3, 1)),
                 Error);
}

TEST(CurrentSeason, AShortGapBeforeTheForecastIsBridgedAndCountsAsForecast) {
    auto series = observed(day(2025, 10, 1), day(2026, 3, 25));
    mark_forecast(series, day(2026, 3, 16));
    clear(series, day(2026, 3, 12), 4);
    const auto current = current_season(series, {2026}, Hemisphere::north, day(2026, 3, 15));
    EXPECT_EQ(current.observed_days, day(2026, 3, 11) - day(2025, 10, 1) + 1);
    EXPECT_EQ(current.weather.first + static_cast<int>(current.weather.days.size()), day(2026, 3, 26));
    EXPECT_TRUE(mentions(current.findings, Level::notice, "season 2026", "4 missing days"));
}

TEST(CurrentSeason, AForecastBeyondALongGapIsNotUsed) {
    auto series = observed(day(2025, 10, 1), day(2026, 3, 25));
    mark_forecast(series, day(2026, 3, 16));
    clear(series, day(2026, 3, 6), 10);
    const auto current = current_season(series, {2026}, Hemisphere::north, day(2026, 3, 15));
    EXPECT_EQ(current.weather.first + static_cast<int>(current.weather.days.size()), day(2026, 3, 6));
    EXPECT_TRUE(mentions(current.findings, Level::warning, "season 2026", "last 10 days"));
}

TEST(CurrentSeason, IsEmptyWithAWarningWhereTheRecordStopsBeforeIt) {
    const auto current = current_season(observed(day(2024, 1, 1), day(2025, 9, 20)), {2026},
                                        Hemisphere::north, day(2025, 10, 10));
    EXPECT_TRUE(current.weather.days.empty());
    EXPECT_EQ(current.observed_days, 0);
    EXPECT_TRUE(mentions(current.findings, Level::warning, "season 2026", "last 10 days"));
    EXPECT_EQ(current_season({}, {2026}, Hemisphere::north, day(2025, 10, 10)).observed_days, 0);
}

TEST(CurrentSeason, NeverHasMoreDaysThanASeason) {
    const auto current = current_season(observed(day(2025, 1, 1), day(2026, 12, 31)), {2026},
                                        Hemisphere::north, day(2026, 9, 1));
    EXPECT_EQ(current.weather.days.size(), static_cast<std::size_t>(season_length));
    EXPECT_EQ(current.observed_days, season_length);
}

}  // namespace
}  // namespace pipward::weather
