// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/meeting_days.h"

#include <gtest/gtest.h>

#include "cross/made_orchard.h"

namespace pipward::cross {
namespace {

using testing::MadeOrchard;

// Two accessions of one spring.
struct Two {
    MadeOrchard made{"2026-03-01", {12}};
    detail::BloomCourses seed;
    detail::BloomCourses donor;

    explicit Two(double donor_at, double season_sd = 2, double own_sd = 1.5) {
        made.season_sd = season_sd;
        made.own_sd = own_sd;
        made.accession({"Seed", 120}).accession({"Donor", donor_at});
        seed = detail::bloom_courses(made.forecast, made.forecast.windows[0]);
        donor = detail::bloom_courses(made.forecast, made.forecast.windows[1]);
    }
};

TEST(MeetingDays, CollectBeforeTheyUseAndNeverEndBeforeTheyBegin) {
    for (double donor_at = 95; donor_at < 140; donor_at += 1) {
        const Two two(donor_at);
        for (const auto& days :
             {detail::same_day_days(two.seed, two.donor, 0.1), detail::kept_days(two.seed, two.donor, 0.1)}) {
            if (days) {
                EXPECT_LE(days->collect.first, days->collect.last) << donor_at;
                EXPECT_LE(days->use.first, days->use.last) << donor_at;
                EXPECT_LT(days->collect.first, days->use.first) << donor_at;
                EXPECT_LT(days->collect.last, days->use.last) << donor_at;
            }
        }
    }
}

TEST(MeetingDays, OfFreshPollenLieWithinThreeDaysOfEachOther) {
    const Two two(112);
    const auto days = detail::same_day_days(two.seed, two.donor, 0.1);
    ASSERT_TRUE(days);
    EXPECT_LE(days->use.first - days->collect.first, detail::fresh_to_days);
    EXPECT_LE(days->use.last - days->collect.last, detail::fresh_to_days + 1);
}

TEST(MeetingDays, OfKeptPollenBeginWithTheDonorsFirstBalloons) {
    const Two two(100);
    const auto kept = detail::kept_days(two.seed, two.donor, 0.1);
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->collect.first, detail::first_day(two.donor, &detail::BloomCourse::balloon, 0.1));
    EXPECT_EQ(kept->collect.last, detail::last_day(two.donor, &detail::BloomCourse::balloon, 0.1));
    EXPECT_FALSE(kept->by_median);
}

TEST(MeetingDays, AreMediansWhereTheRiskLeavesNoTimeAndSaySo) {
    const Two vague(120, 9);
    const auto vague_days = detail::same_day_days(vague.seed, vague.donor, 0.1);
    ASSERT_TRUE(vague_days);
    EXPECT_TRUE(vague_days->by_median);
    EXPECT_GT(vague_days->use.last, vague_days->use.first);
    const Two sure(120, 1, 0.5);
    EXPECT_FALSE(detail::same_day_days(sure.seed, sure.donor, 0.1)->by_median);
}

TEST(MeetingDays, AreNothingWhereTheTwoNeverMeet) {
    const Two apart(170);
    EXPECT_FALSE(detail::same_day_days(apart.seed, apart.donor, 0.1));
    EXPECT_FALSE(detail::kept_days(apart.seed, apart.donor, 0.1));
}

}  // namespace
}  // namespace pipward::cross
