// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/forcing.h"

#include <gtest/gtest.h>

#include "pipward/bloom/stage_ladder.h"
#include "testing.h"

namespace pipward::cross {
namespace {

TEST(Forcing, TakesTheDaysOfTheHandbookByStage) {
    int checked = 0;
    for (const auto& row : testing::regression_rows("cross-forcing.txt")) {
        if (row.at(0) == "stage") {
            const auto days = detail::forcing_days({std::stoi(row.at(1))});
            EXPECT_EQ(days.least, std::stoi(row.at(2))) << row[1];
            EXPECT_EQ(days.most, std::stoi(row.at(3))) << row[1];
            ++checked;
        }
    }
    EXPECT_EQ(checked, 7);
    EXPECT_EQ(detail::forcing_days({65}).most, 0);
}

TEST(Forcing, CountsBackFromTheWantedDayToTheCut) {
    int checked = 0;
    for (const auto& row : testing::regression_rows("cross-forcing.txt")) {
        if (row.at(0) == "plan") {
            const Day wanted = parse_iso_day(row.at(1)).value();
            EXPECT_EQ(to_iso(detail::cut_by(wanted, std::stoi(row.at(2)))), row.at(3));
            ++checked;
        }
    }
    EXPECT_EQ(checked, 1);
}

TEST(Forcing, MeetsTheLongerLineOfTheTableWhereAStageStandsOnTheLadder) {
    for (const int stage : {51, 55, 57, 59, 60}) {
        EXPECT_NEAR(detail::forcing_days_at(bloom::ladder_place({stage}, {})->after_full),
                    detail::forcing_days({stage}).most, 1e-9);
    }
}

TEST(Forcing, NeverTakesLongerTheFurtherTheTreeIs) {
    EXPECT_EQ(detail::forcing_days_at({-1000}), 28);
    EXPECT_EQ(detail::forcing_days_at({100}), 0);
    double before = 28;
    for (double place = -500; place <= 50; place += 1) {
        EXPECT_LE(detail::forcing_days_at({place}), before);
        before = detail::forcing_days_at({place});
    }
}

}  // namespace
}  // namespace pipward::cross
