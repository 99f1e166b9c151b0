// SPDX-License-Identifier: MIT
#include "pipward/intake/days.h"

#include <gtest/gtest.h>

#include <vector>

namespace pipward::intake {
namespace {

DayOrder order(const std::vector<std::string>& texts) {
    return order_of(texts);
}

TEST(Days, AreReadInTheirOrderAndTheYearFirstInAny) {
    EXPECT_EQ(to_iso(*read_day("2026-04-12", DateFormat::month_day_year)), "2026-04-12");
    EXPECT_EQ(to_iso(*read_day("20260412", DateFormat::day_month_year)), "2026-04-12");
    EXPECT_EQ(to_iso(*read_day("03/04/2026 06:00", DateFormat::day_month_year)), "2026-04-03");
    EXPECT_EQ(to_iso(*read_day("3/4/2026", DateFormat::month_day_year)), "2026-03-04");
    EXPECT_FALSE(read_day("3.4.2026", DateFormat::month_day_year)) << "with dots the day comes first";
    EXPECT_FALSE(read_day("31/02/2026", DateFormat::day_month_year));
    EXPECT_FALSE(read_day("1/3/26", DateFormat::day_month_year));
}

TEST(Days, TheClockTimeOfMidnightIsNone) {
    EXPECT_FALSE(split_day("2026-03-01T00:00:00").has_clock_time);
    EXPECT_FALSE(split_day("3/1/2026 12:00:00 AM").has_clock_time);
    EXPECT_TRUE(split_day("2026-03-01 08:00").has_clock_time);
    EXPECT_EQ(split_day("12 March 2026").date, "12 March 2026");
}

TEST(Days, AColumnProvesItsOrderOrLeavesItInDoubt) {
    const auto proved = order({"03/04/2026", "2026-04-05", "13/04/2026"});
    EXPECT_EQ(proved.proved(), DateFormat::day_month_year);
    EXPECT_EQ(proved.day_first, 2U);
    EXPECT_EQ(proved.in_doubt, 0U);
    EXPECT_EQ(order({"04/13/2026"}).proved(), DateFormat::month_day_year);
    EXPECT_FALSE(order({"13/04/2026", "04/13/2026"}).proved());
    EXPECT_FALSE(order({"03/04/2026"}).proved());
    EXPECT_FALSE(order({"04/04/2026"}).in_doubt) << "the same day either way";
}

}  // namespace
}  // namespace pipward::intake
