// SPDX-License-Identifier: MIT
#include "pipward/seed/stratification_clock.h"
#include "days.h"

#include <gtest/gtest.h>

#include "pipward/seed/detail/stratification_credit.h"
#include "pipward/seed/stratification_need.h"

namespace pipward::seed {
namespace {

using testing::day_of;

// Malus sargentii, Seed Sci. Technol. 34(1), 2006: 0.5 and 4 degrees alike, above 9 no effect.
TEST(StratificationCredit, StaysWithinThePublishedBounds) {
    EXPECT_EQ(detail::stratification_credit({0.5}), 1);
    EXPECT_EQ(detail::stratification_credit({4}), 1);
    EXPECT_LT(detail::stratification_credit({9}), 0.12);
    EXPECT_EQ(detail::stratification_credit({9.5}), 0);
    EXPECT_EQ(detail::stratification_credit({12}), 0);
    EXPECT_EQ(detail::stratification_credit({-3}), 0);
    EXPECT_EQ(detail::stratification_credit({15}), -1);
}

TEST(StratificationCredit, FallsSteadilyAboveFiveDegrees) {
    for (double degrees = 5; degrees < 20; degrees += 0.25) {
        EXPECT_LE(detail::stratification_credit({degrees + 0.25}), detail::stratification_credit({degrees}));
    }
}

// 90 days from 2026-11-25 end on 2027-02-22: the seed is ready on the 23rd. 60 from 2026-12-10, 90 from
// 2027-12-01 over a leap day: calendar arithmetic.
TEST(StratificationClock, CountsWholeDaysInASteadyStore) {
    struct Case {
        const char* from;
        double days;
        const char* last;
    };
    for (const auto& it : {Case{"2026-11-25", 90, "2027-02-22"}, Case{"2026-12-10", 60, "2027-02-07"},
                           Case{"2027-12-01", 90, "2028-02-28"}}) {
        const auto sum =
            count_stratification(day_of(it.from), day_of(it.from) + 200, steady_store({4}), {it.days});
        ASSERT_TRUE(sum.reached[0]);
        EXPECT_EQ(to_iso(*sum.reached[0]), it.last);
        EXPECT_EQ(sum.unknown_days, 0);
    }
}

TEST(StratificationClock, TellsWarmSpellsAndFrostAndCountsThemAsTheyAre) {
    const Day from = day_of("2026-12-01");
    const StoreLog log = [&](Day day) -> std::optional<StoreDay> {
        const int since = day - from;
        return StoreDay(24, Celsius{since >= 10 && since < 13 ? 18.0 : since == 20 ? -2.0 : 4.0});
    };
    const auto sum = count_stratification(from, from + 29, log, {});
    EXPECT_NEAR(sum.days, 30 - 3 - 3 - 1, 1e-9);
    ASSERT_EQ(sum.warm.size(), 1U);
    EXPECT_EQ(sum.warm[0].from, from + 10);
    EXPECT_EQ(sum.warm[0].to, from + 12);
    EXPECT_EQ(sum.warm[0].extreme.degrees, 18);
    ASSERT_EQ(sum.frost.size(), 1U);
    EXPECT_EQ(sum.frost[0].from, from + 20);
}

TEST(StratificationClock, CreditsNothingForDaysWithoutAReadingAndSaysHowMany) {
    const Day from = day_of("2026-12-01");
    const StoreLog log = [&](Day day) {
        return (day - from) % 2 == 0 ? std::optional{StoreDay(24, Celsius{3})} : std::nullopt;
    };
    const auto sum = count_stratification(from, from + 9, log, {6});
    EXPECT_NEAR(sum.days, 5, 1e-9);
    EXPECT_EQ(sum.unknown_days, 5);
    EXPECT_FALSE(sum.reached[0]);
}

// Woody Plant Seed Manual, USDA Agriculture Handbook 727 (2008), Malus Table 4, Pyrus Table 3: looked up.
TEST(StratificationNeed, HasThePublishedRows) {
    EXPECT_EQ(stratification_need_of("Malus baccata")->full_days, 30);
    EXPECT_EQ(stratification_need_of("Malus coronaria")->least_days, 120);
    EXPECT_EQ(stratification_need_of("Malus domestica")->least_days, 60);
    EXPECT_EQ(stratification_need_of("Pyrus communis")->full_days, 90);
    EXPECT_EQ(stratification_need_of("Pyrus pyrifolia")->full_days, 170);
    EXPECT_EQ(stratification_need_of("Pyrus pashia")->least_days, 15);
}

TEST(StratificationNeed, TakesTheGenusWhereTheSpeciesIsNotListed) {
    EXPECT_EQ(stratification_need_of("Malus sylvestris")->species, "Malus domestica");
    EXPECT_EQ(stratification_need_of("Pyrus")->species, "Pyrus communis");
    EXPECT_FALSE(stratification_need_of("Prunus avium"));
}

}  // namespace
}  // namespace pipward::seed
