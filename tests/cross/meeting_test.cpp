// SPDX-License-Identifier: MIT
#include "pipward/cross/detail/meeting.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "cross/made_orchard.h"

namespace pipward::cross {
namespace {

using testing::courses_at;
using testing::MadeOrchard;

TEST(BloomCourses, StandForEveryMemberAndEveryNode) {
    EXPECT_EQ(courses_at(120).each.size(),
              3 * bloom::residual_nodes().size() * bloom::residual_nodes().size());
}

TEST(BloomCourses, PutBalloonBeforeBloomAndWorkAroundIt) {
    for (const auto& course : courses_at(120, {12}).each) {
        EXPECT_LT(course.balloon.first, course.full_bloom);
        EXPECT_LT(course.balloon.first, course.working.first);
        EXPECT_LT(course.working.first, course.full_bloom);
        EXPECT_GT(course.working.last, course.full_bloom);
        EXPECT_LT(course.balloon.last, course.working.last);
    }
}

TEST(BloomCourses, HoldAtLeastATenthAtBalloonOnEachCollectingDay) {
    const auto courses = courses_at(120, {12});
    for (const auto& course : courses.each) {
        for (SeasonDay day = course.balloon.first - 1; day <= course.balloon.last + 1; ++day) {
            const double place = (day - course.full_bloom) * (12 - bloom::ladder_base.degrees);
            const double at_balloon = bloom::share_opened({place + detail::balloon_lasts.value}, {}).value -
                                      bloom::share_opened({place}, {}).value;
            const bool inside = day >= course.balloon.first && day <= course.balloon.last;
            EXPECT_EQ(at_balloon >= detail::least_at_once.value, inside) << day;
        }
    }
}

TEST(BloomCourses, HaveNoWorkingDayWhenItIsTooColdForTubes) {
    const auto cold = courses_at(120, {5});
    EXPECT_EQ(cold.too_cold, 1);
    EXPECT_EQ(detail::share_with(cold, &detail::BloomCourse::working), 0);
    EXPECT_EQ(courses_at(120, {12}).too_cold, 0);
    EXPECT_NEAR(courses_at(120, {5, 12}).too_cold, 0.5, 1e-12);
}

TEST(BloomCourses, LoseTheDaysThatAreOver) {
    const auto whole = courses_at(120);
    const auto left = detail::from_day(whole, 121);
    for (const auto& course : left.each) {
        EXPECT_TRUE(course.working.empty() || course.working.first >= 121);
        EXPECT_TRUE(course.balloon.empty() || course.balloon.first >= 121);
    }
    EXPECT_LT(detail::share_with(left, &detail::BloomCourse::balloon), 1);
    EXPECT_EQ(detail::share_with(detail::from_day(whole, season_last + 50), &detail::BloomCourse::working),
              0);
    EXPECT_EQ(detail::share_with(detail::from_day(whole, season_first - 50), &detail::BloomCourse::working),
              1);
}

TEST(Meeting, ChancesLieBetweenNeverAndAlways) {
    const auto seed = courses_at(120);
    for (double donor_at = 80; donor_at < 170; donor_at += 3) {
        const auto donor = courses_at(donor_at);
        for (const double chance : {detail::chance_same_day(seed, donor), detail::chance_kept(seed, donor)}) {
            EXPECT_GE(chance, 0);
            EXPECT_LE(chance, 1);
        }
    }
}

TEST(Meeting, SameDayIsBestWhenBothBloomTogetherAndFallsTheFurtherTheyStandApart) {
    const auto seed = courses_at(120);
    const auto chance = [&](double apart) { return detail::chance_same_day(seed, courses_at(120 + apart)); };
    EXPECT_GT(chance(0), 0.99);
    // Balloons come before open flowers, so a donor a day or two later does as well.
    for (double apart = 2; apart < 40; apart += 1) {
        EXPECT_LE(chance(apart), chance(apart - 1)) << apart;
        EXPECT_LE(chance(1 - apart), chance(2 - apart)) << 1 - apart;
    }
    EXPECT_EQ(chance(40), 0);
    EXPECT_EQ(chance(-40), 0);
}

TEST(Meeting, KeepingNeverSuffersFromAnEarlierDonor) {
    const auto seed = courses_at(120);
    double before = 1;
    for (double donor_at = 80; donor_at < 160; donor_at += 1) {
        const double chance = detail::chance_kept(seed, courses_at(donor_at));
        EXPECT_LE(chance, before) << donor_at;
        before = chance;
    }
    EXPECT_EQ(before, 0);
}

TEST(Meeting, FeelsASharedSpringTheSameOnBothSides) {
    MadeOrchard shared("2026-03-01", {12});
    shared.season_sd = 8;
    shared.own_sd = 0.1;
    shared.accession({"Seed", 120}).accession({"Donor", 120});
    const auto seed = detail::bloom_courses(shared.forecast, shared.forecast.windows[0]);
    const auto donor = detail::bloom_courses(shared.forecast, shared.forecast.windows[1]);
    EXPECT_EQ(detail::chance_same_day(seed, donor), 1);
}

// The chances are sums over a few fixed nodes; random draws from the spreads themselves must tell the same.
TEST(Meeting, ChancesAgreeWithRandomDrawsFromTheSpreads) {
    constexpr int draws = 500;
    constexpr double season_sd = 3;
    constexpr double own_sd = 2.5;
    std::mt19937 dice(20260401);
    std::student_t_distribution<double> student(4);
    const auto residual = [&](double sd) {
        return sd * student(dice) / std::sqrt(2.0);
    };  // variance of t4 is 2
    for (const double donor_at : {108.0, 116.0, 121.0, 130.0}) {
        MadeOrchard nodes("2026-03-01", {12});
        nodes.season_sd = season_sd;
        nodes.own_sd = own_sd;
        nodes.accession({"Seed", 120}).accession({"Donor", donor_at});
        MadeOrchard drawn("2026-03-01", std::vector<double>(draws, 12));
        drawn.season_sd = 0;
        drawn.own_sd = 0;
        drawn.accession({"Seed", 120}).accession({"Donor", donor_at});
        for (int i = 0; i < draws; ++i) {
            const double season = residual(season_sd);
            drawn.forecast.windows[0].full_bloom[i] += season + residual(own_sd);
            drawn.forecast.windows[1].full_bloom[i] += season + residual(own_sd);
        }
        const auto courses = [](const MadeOrchard& made, int window) {
            return detail::bloom_courses(made.forecast, made.forecast.windows[window]);
        };
        constexpr double three_standard_errors = 0.067;
        EXPECT_NEAR(detail::chance_same_day(courses(nodes, 0), courses(nodes, 1)),
                    detail::chance_same_day(courses(drawn, 0), courses(drawn, 1)), three_standard_errors)
            << donor_at;
        EXPECT_NEAR(detail::chance_kept(courses(nodes, 0), courses(nodes, 1)),
                    detail::chance_kept(courses(drawn, 0), courses(drawn, 1)), three_standard_errors)
            << donor_at;
    }
}

}  // namespace
}  // namespace pipward::cross
