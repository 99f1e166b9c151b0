// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/climate.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "springs.h"

namespace pipward::bloom {
namespace {

using testing::spring_weather;

std::vector<weather::SeasonWeather> seasons(int count, double warmer_since_2012) {
    std::vector<weather::SeasonWeather> made;
    for (int year = 2020 - count; year < 2020; ++year) {
        made.push_back(spring_weather(year, year < 2012 ? 0 : warmer_since_2012));
    }
    return made;
}

double mean_move(const std::vector<detail::LentSeason>& lent, int from, int to) {
    double sum = 0;
    int count = 0;
    for (const auto& [season, warmer] : lent) {
        if (season.year >= from && season.year <= to) {
            sum += warmer.degrees;
            ++count;
        }
    }
    return sum / std::max(1, count);
}

TEST(LentSeasons, OldSpringsAreMovedToTheClimateThatIs) {
    const auto lent = detail::lent_seasons(seasons(40, 4), {2020});
    EXPECT_GT(mean_move(lent, 2005, 2008), 2);  // eight warm springs do not tell all of four kelvin
    EXPECT_LT(mean_move(lent, 2005, 2008), 5);
    EXPECT_NEAR(mean_move(lent, 2014, 2019), 0, 0.7);
}

TEST(LentSeasons, WhereTheClimateStandsStillTheyStayAboutAsTheyWere) {
    const auto lent = detail::lent_seasons(seasons(40, 0), {2020});
    for (int year = 2005; year < 2020; ++year) {
        EXPECT_NEAR(mean_move(lent, year, year), 0, 0.6) << year;
    }
}

TEST(LentSeasons, EachStandsAtTheWarmAndAtTheCoolEdgeOfWhatIsUsual) {
    const auto lent = detail::lent_seasons(seasons(40, 0), {2020});
    const double apart = lent[0].warmer.degrees - lent[1].warmer.degrees;
    EXPECT_GT(apart, 0.2);
    for (std::size_t i = 0; i < lent.size(); i += 2) {
        EXPECT_EQ(lent[i].season, lent[i + 1].season);
        EXPECT_NEAR(lent[i].warmer.degrees - lent[i + 1].warmer.degrees, apart, 0.11);
    }
}

TEST(LentSeasons, AreTheNearestAndNeverTheOneForecast) {
    const auto all = seasons(50, 0);
    const auto ahead = detail::lent_seasons(all, {2020});
    ASSERT_EQ(ahead.size(), 2U * detail::nearest_seasons);
    EXPECT_EQ(ahead.front().season.year, 2005);
    EXPECT_EQ(ahead.back().season.year, 2019);
    const auto amid = detail::lent_seasons(all, {2000});
    EXPECT_EQ(amid.size(), 2U * detail::nearest_seasons);
    EXPECT_TRUE(
        std::ranges::none_of(amid, [](const detail::LentSeason& lent) { return lent.season.year == 2000; }));
}

TEST(LentSeasons, AnOddYearDoesNotTellOfItsOwnClimate) {
    auto odd = seasons(30, 0);
    const auto before = detail::lent_seasons(odd, {2020});
    odd[20] = spring_weather(2010, 8);
    const auto after = detail::lent_seasons(odd, {2020});
    EXPECT_LT(std::abs(mean_move(after, 2010, 2010) - mean_move(before, 2010, 2010)), 1);
}

TEST(LentSeasons, WinterDoesNotTellOfTheClimateOfSprings) {
    auto cold = seasons(30, 0);
    const auto before = detail::lent_seasons(cold, {2020});
    for (auto& season : cold) {
        for (SeasonDay day = season_first; day < 45 && season.season.year < 2012; ++day) {
            auto& extremes = season.days[static_cast<std::size_t>(day - season_first)];
            extremes = {extremes.t_min + CelsiusStep{-5}, extremes.t_max + CelsiusStep{-5}};
        }
    }
    const auto after = detail::lent_seasons(cold, {2020});
    for (std::size_t i = 0; i < before.size(); ++i) {
        EXPECT_EQ(after[i].warmer.degrees, before[i].warmer.degrees);
    }
}

TEST(LentSeasons, OneSpringLendsItselfAsItIs) {
    const auto lent = detail::lent_seasons(seasons(1, 0), {2020});
    ASSERT_EQ(lent.size(), 1U);
    EXPECT_EQ(lent.front().warmer.degrees, 0);
}

}  // namespace
}  // namespace pipward::bloom
