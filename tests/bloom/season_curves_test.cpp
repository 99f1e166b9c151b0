// SPDX-License-Identifier: MIT
#include "pipward/bloom/season_curves.h"

#include <gtest/gtest.h>

#include "pipward/clock/dynamic_model.h"
#include "springs.h"

namespace pipward::bloom {
namespace {

using testing::orchard_latitude;
using testing::spring_weather;

SeasonCurves curves_with(const weather::SeasonWeather& weather, double offset = 0) {
    return season_curves(weather.days, weather.first, orchard_latitude, {offset});
}

TEST(SeasonCurves, EverySumIsWholeAndNeverFalls) {
    const auto curves = curves_with(spring_weather(2020));
    for (const auto* sums : running_sums(curves)) {
        ASSERT_EQ(sums->size(), static_cast<std::size_t>(season_length));
        EXPECT_GE(sums->front(), 0);
        for (std::size_t i = 1; i < sums->size(); ++i) {
            ASSERT_GE((*sums)[i], (*sums)[i - 1]) << "season day " << season_first + static_cast<int>(i);
        }
    }
    EXPECT_EQ(curves.mean_temperature.size(), static_cast<std::size_t>(season_length));
    EXPECT_EQ(curves.known_days, season_length);
}

TEST(SeasonCurves, ChillAtNoonIsThatOfTheHoursBefore) {
    const auto weather = spring_weather(2020);
    const auto hours = weather::hourly_temperatures(weather.days, weather.first, orchard_latitude);
    const auto portions = clock::chill_portions(hours);
    const auto curves = curves_with(weather);
    for (const int day : {1, 50, 120, 200}) {
        EXPECT_DOUBLE_EQ(curves.chill[day], portions[24 * day + 11].value);
    }
}

TEST(SeasonCurves, ConstantWarmthGathersInProportionToTime) {
    const std::vector<weather::DayExtremes> days(season_length, {{14.5}, {14.5}});
    const auto curves =
        season_curves(days, anchor_of({2020}, Hemisphere::north) + season_first, orchard_latitude, {0});
    EXPECT_NEAR(value_at(curves.ladder, season_first + 10), 10.5 * 14.5, 1e-9);
    EXPECT_NEAR(value_at(curves.degree_days, season_first + 10), 10.5 * 10, 1e-9);
    EXPECT_NEAR(value_at(curves.asymcur, season_first + 10), 10.5 * 24 * 10.5, 1e-6);
    EXPECT_NEAR(value_at(curves.heat[2], season_first + 10), 10.5 * 24 * 10.5, 1e-9);
    EXPECT_NEAR(value_at(curves.heat[3], season_first + 10), 10.5 * 24 * 8.5, 1e-9);
    EXPECT_DOUBLE_EQ(curves.mean_temperature[10], 14.5);
}

TEST(SeasonCurves, AColderPlaceGathersLessHeat) {
    const auto weather = spring_weather(2020);
    const auto here = curves_with(weather);
    const auto higher = curves_with(weather, -0.65);
    for (int curve = 0; curve < heat_curve_count; ++curve) {
        EXPECT_LT(higher.heat[curve].back(), here.heat[curve].back());
    }
    EXPECT_LT(higher.ladder.back(), here.ladder.back());
}

TEST(SeasonCurves, UnknownDaysGoOnAtThePaceOfTheLastSeven) {
    const auto whole = spring_weather(2020);
    const auto cut = spring_weather(2020, 0, Hemisphere::north, 180);
    const auto known = curves_with(whole);
    const auto extended = curves_with(cut);
    EXPECT_EQ(extended.known_days, 180);
    EXPECT_DOUBLE_EQ(extended.heat[0][178], known.heat[0][178]);
    const double pace = (extended.ladder[179] - extended.ladder[172]) / 7;
    EXPECT_NEAR(extended.ladder[200], extended.ladder[179] + 21 * pace, 1e-9);
}

TEST(SeasonCurves, NoDaysAtAllAreASeasonWithoutWarmth) {
    const auto curves = season_curves({}, {}, orchard_latitude, {0});
    EXPECT_EQ(curves.known_days, 0);
    EXPECT_EQ(curves.heat[0].back(), 0);
    EXPECT_EQ(day_reaching(curves.heat[0], 1), season_last + 1);
}

TEST(SeasonCurves, ReadingAndReachingAreEachOthersInverse) {
    const auto curves = curves_with(spring_weather(2021));
    for (double day = 0; day < 170; day += 0.37) {
        const double sum = value_at(curves.heat[1], day);
        EXPECT_NEAR(day_reaching(curves.heat[1], sum), day, 1e-6);
    }
}

TEST(SeasonCurves, ReadingsBeyondTheEndsAreHeldThere) {
    const auto curves = curves_with(spring_weather(2021));
    EXPECT_EQ(value_at(curves.ladder, -500), curves.ladder.front());
    EXPECT_EQ(value_at(curves.ladder, 500), curves.ladder.back());
    EXPECT_EQ(day_reaching(curves.ladder, -1), season_first);
    EXPECT_EQ(day_reaching(curves.ladder, curves.ladder.back() + 1), season_last + 1);
}

TEST(SeasonCurves, ItsOwnRemainderGivesASeasonBack) {
    const auto curves = curves_with(spring_weather(2021));
    const auto joined = with_remainder(curves, curves, 150);
    const auto expected = running_sums(curves);
    const auto found = running_sums(joined);
    for (int which = 0; which < running_sum_count; ++which) {
        for (int i = 0; i < season_length; ++i) {
            ASSERT_NEAR((*found[which])[i], (*expected[which])[i], 1e-9);
        }
    }
}

TEST(SeasonCurves, ALentRemainderAddsItsDailyGains) {
    const auto now = curves_with(spring_weather(2021));
    const auto past = curves_with(spring_weather(2020));
    const auto joined = with_remainder(now, past, 150);
    EXPECT_EQ(joined.heat[0][149], now.heat[0][149]);
    EXPECT_NEAR(joined.heat[0][200] - joined.heat[0][149], past.heat[0][200] - past.heat[0][149], 1e-9);
    EXPECT_EQ(joined.mean_temperature[149], now.mean_temperature[149]);
    EXPECT_EQ(joined.mean_temperature[150], past.mean_temperature[150]);
}

TEST(SeasonCurves, ASeasonNotYetBegunIsThePastOne) {
    const auto past = curves_with(spring_weather(2020));
    const auto joined = with_remainder(season_curves({}, {}, orchard_latitude, {0}), past, 0);
    EXPECT_EQ(joined.chill, past.chill);
}

TEST(SeasonCurves, TheSouthReadsTheSameWeatherTheSameWay) {
    const auto north = spring_weather(2020, 0, Hemisphere::north);
    auto south = north;
    south.first = anchor_of({2020}, Hemisphere::south) + season_first;
    const auto here = curves_with(north);
    const auto there = season_curves(south.days, south.first, {-orchard_latitude.degrees}, {0});
    for (const double target : {500.0, 1500.0, 3000.0}) {
        EXPECT_NEAR(day_reaching(there.heat[0], target), day_reaching(here.heat[0], target), 0.3);
    }
    EXPECT_NEAR(value_at(there.chill, 59), value_at(here.chill, 59), 1.5);
}

}  // namespace
}  // namespace pipward::bloom
