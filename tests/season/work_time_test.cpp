// SPDX-License-Identifier: MIT
#include "pipward/season/work_time.h"

#include <gtest/gtest.h>

namespace pipward::season {
namespace {

constexpr Day today{20000};

FieldWorkItem item(std::optional<Day> from, std::optional<Day> to) {
    FieldWorkItem work;
    work.from = from;
    work.to = to;
    return work;
}

TEST(WorkTime, CountsFromTodayToTheLastDay) {
    EXPECT_EQ(work_time(item(today - 9, today - 1), today), WorkTime::late);
    EXPECT_EQ(work_time(item(today - 9, today), today), WorkTime::today);
    EXPECT_EQ(work_time(item(today - 9, today + 1), today), WorkTime::this_week);
    EXPECT_EQ(work_time(item(today + 7, today + 7), today), WorkTime::this_week);
    EXPECT_EQ(work_time(item(today + 8, today + 8), today), WorkTime::later);
}

TEST(WorkTime, IsNotThisWeekOnlyBecauseTheWorkCanBegin) {
    EXPECT_EQ(work_time(item(today, today + 8), today), WorkTime::later);
}

TEST(WorkTime, TakesTheFirstDayWhereThereIsNoLastOne) {
    EXPECT_EQ(work_time(item(today + 3, std::nullopt), today), WorkTime::this_week);
    EXPECT_EQ(work_time(item(std::nullopt, std::nullopt), today), WorkTime::later);
}

TEST(WorkTime, KnowsWhatIsLateAndWhatIsMissed) {
    auto work = item(today - 9, today + 30);
    work.late = true;
    EXPECT_EQ(work_time(work, today), WorkTime::late);
    work.possible = false;
    EXPECT_EQ(work_time(work, today), WorkTime::missed);
}

}  // namespace
}  // namespace pipward::season
