// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/climate.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "springs.h"

namespace pipward::bloom {
namespace {

using testing::spring_weather;

std::vector<weather::SeasonWeather> seasons(int count, double warmer_since_2000) {
    std::vector<weather::SeasonWeather> made;
    for (int year = 2020 - count; year < 2020; ++year) {
        made.push_back(spring_weather(year, year < 2000 ? 0 : warmer_since_2000));
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
    const auto lent = detail::lent_seasons(seasons(40, 3), {2020});
    EXPECT_NEAR(mean_move(lent, 1990, 1998), 3, 1);
    EXPECT_NEAR(mean_move(lent, 2004, 2019), 0, 0.5);
}

TEST(LentSeasons, WhereTheClimateStandsStillTheyStayAboutAsTheyWere) {
    for (const auto& [season, warmer] : detail::lent_seasons(seasons(40, 0), {2020})) {
        EXPECT_NEAR(warmer.degrees, 0, 1.2) << season.year;
    }
}

TEST(LentSeasons, AreTheNearestAndNeverTheOneForecast) {
    const auto all = seasons(50, 0);
    const auto ahead = detail::lent_seasons(all, {2020});
    ASSERT_EQ(ahead.size(), static_cast<std::size_t>(detail::most_members));
    EXPECT_EQ(ahead.front().season.year, 1990);
    EXPECT_EQ(ahead.back().season.year, 2019);
    const auto amid = detail::lent_seasons(all, {2000});
    EXPECT_EQ(amid.size(), static_cast<std::size_t>(detail::most_members));
    EXPECT_TRUE(
        std::ranges::none_of(amid, [](const detail::LentSeason& lent) { return lent.season.year == 2000; }));
}

TEST(LentSeasons, AnOddYearDoesNotTellOfItsOwnClimate) {
    auto odd = seasons(30, 0);
    const auto before = detail::lent_seasons(odd, {2020});
    odd[10] = spring_weather(odd[10].season.year, 8);
    const auto after = detail::lent_seasons(odd, {2020});
    EXPECT_LT(std::abs(after[10].warmer.degrees - before[10].warmer.degrees), 1);
}

TEST(LentSeasons, OneSpringLendsItselfAsItIs) {
    const auto lent = detail::lent_seasons(seasons(1, 0), {2020});
    ASSERT_EQ(lent.size(), 1U);
    EXPECT_EQ(lent.front().warmer.degrees, 0);
}

}  // namespace
}  // namespace pipward::bloom
