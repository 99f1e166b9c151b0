// SPDX-License-Identifier: MIT
#include "pipward/value/season.h"
#include "days.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

using testing::day;

TEST(Season, NorthernSeasonRunsFromFirstOctoberToTheEndOfJune) {
    EXPECT_EQ(anchor_of({2026}, Hemisphere::north) + season_first, day(2025, 10, 1));
    EXPECT_EQ(anchor_of({2026}, Hemisphere::north) + season_last, day(2026, 6, 30));
}

TEST(Season, SouthernSeasonIsTheSameSpan182DaysLater) {
    EXPECT_EQ(anchor_of({2026}, Hemisphere::south), day(2026, 7, 2));
    EXPECT_EQ(anchor_of({2026}, Hemisphere::south) + season_first, day(2026, 4, 1));
}

TEST(Season, EveryDayBelongsToOneSeasonAndSeasonsFollowEachOther) {
    for (const auto hemisphere : {Hemisphere::north, Hemisphere::south}) {
        Season last = season_of(day(2019, 1, 1), hemisphere);
        for (Day today = day(2019, 1, 1); today < day(2025, 1, 1); today = today + 1) {
            const Season season = season_of(today, hemisphere);
            const int into = today - anchor_of(season, hemisphere);
            EXPECT_GE(into, season_first) << to_iso(today);
            EXPECT_LT(into, 366 + season_first) << to_iso(today);
            EXPECT_TRUE(season == last || season.year == last.year + 1) << to_iso(today);
            last = season;
        }
    }
}

TEST(Season, AutumnDaysBelongToTheComingSpring) {
    EXPECT_EQ(season_of(day(2025, 9, 30), Hemisphere::north), Season{2025});
    EXPECT_EQ(season_of(day(2025, 10, 1), Hemisphere::north), Season{2026});
    EXPECT_EQ(season_of(day(2026, 4, 12), Hemisphere::north), Season{2026});
    EXPECT_EQ(season_of(day(2026, 3, 31), Hemisphere::south), Season{2025});
    EXPECT_EQ(season_of(day(2026, 9, 25), Hemisphere::south), Season{2026});
}

}  // namespace
}  // namespace pipward
