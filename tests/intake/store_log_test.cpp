// SPDX-License-Identifier: MIT
#include "pipward/intake/store_log.h"

#include <gtest/gtest.h>

namespace pipward::intake {
namespace {

TEST(StoreLog, ReadsDaysAndTimesWithTheFirstNumberOfALine) {
    const auto log = read_store_log(
        "time;place;degrees\n2026-12-01 06:00;door;3,5\n2026-12-01T18:00;door;4.5\n"
        "2026-12-02 06:00;door;\n2026-12-03;door;-1\n",
        "store.csv");
    EXPECT_TRUE(log.findings.empty());
    ASSERT_EQ(log.days.size(), 2U);
    EXPECT_EQ(log.days.begin()->second.size(), 2U);
    EXPECT_EQ(log.days.begin()->second[0].degrees, 3.5);
    EXPECT_FALSE(log_of(log)(*parse_iso_day("2026-12-02")));
    EXPECT_EQ((*log_of(log)(*parse_iso_day("2026-12-03")))[0].degrees, -1);
}

TEST(StoreLog, TellsEveryLineThatCannotBeRead) {
    const auto log = read_store_log("day,degrees\nyesterday,4\n2026-13-01,4\n2026-12-01,400\n", "store.csv");
    ASSERT_EQ(log.findings.size(), 3U);
    EXPECT_EQ(log.findings[0].row, "line 2");
    EXPECT_EQ(log.findings[2].value, "400");
}

TEST(StoreLog, RefusesALogWithoutReadings) {
    EXPECT_TRUE(has_errors(read_store_log("day,degrees\n", "store.csv").findings));
    EXPECT_TRUE(has_errors(read_store_log("", "store.csv").findings));
}

}  // namespace
}  // namespace pipward::intake
