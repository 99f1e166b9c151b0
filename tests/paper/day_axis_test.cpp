// SPDX-License-Identifier: MIT
#include "pipward/paper/day_axis.h"

#include <gtest/gtest.h>

#include "paper/made_up_season.h"

using namespace pipward;
using namespace pipward::paper;
using namespace pipward::testing;

namespace {

TEST(Weekday, AgreesWithCalendarsOnTheWall) {
    EXPECT_EQ(weekday_name(day(1970, 1, 1)), "Thu");
    EXPECT_EQ(weekday_name(day(2026, 4, 12)), "Sun");
    EXPECT_EQ(weekday_name(day(2024, 2, 29)), "Thu");
    EXPECT_EQ(weekday_name(day(1945, 5, 8)), "Tue");
}

TEST(Weekday, MondayIsTheSameDayOrUpToSixBefore) {
    for (int i = -400; i < 400; ++i) {
        const Day any{i};
        EXPECT_EQ(weekday_of(monday_of(any)), 1);
        EXPECT_GE(any - monday_of(any), 0);
        EXPECT_LE(any - monday_of(any), 6);
    }
}

TEST(DayAxis, GrowsWithTheDayAndFillsItsWidth) {
    const DayAxis axis{april(6), april(19), 10, 150};
    EXPECT_DOUBLE_EQ(axis.start_of(axis.from), 10);
    EXPECT_DOUBLE_EQ(axis.end_of(axis.to), 150);
    EXPECT_DOUBLE_EQ(axis.day_width(), 10);
    for (Day any = axis.from; any < axis.to; any = any + 1) {
        EXPECT_LT(axis.middle_of(any), axis.middle_of(any + 1));
        EXPECT_DOUBLE_EQ(axis.end_of(any), axis.start_of(any + 1));
    }
}

TEST(DayAxis, ListsItsMondays) {
    const DayAxis axis{april(7), april(28), 0, 1};
    const auto mondays = mondays_of(axis);
    ASSERT_EQ(mondays.size(), 3u);
    EXPECT_EQ(to_iso(mondays.front()), "2026-04-13");
    EXPECT_EQ(to_iso(mondays.back()), "2026-04-27");
}

TEST(DayAxis, CutsTheMonthsAtItsEndsAndAcrossANewYear) {
    const auto months = months_of({day(2026, 12, 28), day(2027, 2, 3), 0, 1});
    ASSERT_EQ(months.size(), 3u);
    EXPECT_EQ(months[0].name, "Dec");
    EXPECT_EQ(to_iso(months[0].first), "2026-12-28");
    EXPECT_EQ(months[1].year, 2027);
    EXPECT_EQ(to_iso(months[1].last), "2027-01-31");
    EXPECT_EQ(to_iso(months[2].last), "2027-02-03");
}

}  // namespace
