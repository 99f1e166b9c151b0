// SPDX-License-Identifier: MIT
#include "pipward/seed/trial.h"
#include "days.h"

#include <gtest/gtest.h>

namespace pipward::seed {
namespace {

using testing::day_of;

const Day into_stratification = day_of("2024-12-01");
const Day later = day_of("2025-07-01");

struct Arm {
    const char* treatment;
    int seeds;
    std::vector<int> germinated;  ///< in all, on every fourteenth day from day 70
};

Orchard orchard_with(const std::vector<Arm>& arms) {
    Orchard orchard;
    for (const auto& arm : arms) {
        const std::string code = "S-" + std::to_string(orchard.seed_lots.size() + 1);
        SeedLot lot;
        lot.code = code;
        lot.cross = "24-01";
        lot.seeds = arm.seeds;
        lot.stratified_from = into_stratification;
        lot.treatment = arm.treatment;
        lot.medium = "moist sand";
        orchard.seed_lots.push_back(lot);
        for (std::size_t i = 0; i < arm.germinated.size(); ++i) {
            orchard.germination_counts.push_back(
                {0, code, into_stratification + 70 + 14 * static_cast<int>(i), arm.germinated[i]});
        }
    }
    return orchard;
}

Trial only_trial(const std::vector<Arm>& arms) {
    auto trials = trials_of(orchard_with(arms), later);
    EXPECT_EQ(trials.size(), 1U);
    return trials.at(0);
}

TEST(Trial, TellsTheFullerLotFirstWithItsIntervalAndHalfTimes) {
    const auto trial = only_trial({{"dry", 100, {5, 20, 40}}, {"soaked", 100, {30, 60, 80}}});
    ASSERT_EQ(trial.arms.size(), 2U);
    EXPECT_EQ(trial.arms[0].treatment, "soaked");
    EXPECT_NEAR(trial.arms[0].interval.low, 0.7112, 0.0005);
    EXPECT_NEAR(*trial.arms[0].half_farooq, 70 + 14.0 * 10 / 30, 1e-9);
    ASSERT_EQ(trial.pairs.size(), 1U);
    EXPECT_EQ(trial.pairs[0].verdict, TrialVerdict::more_germinate);
    EXPECT_EQ(trial.pairs[0].words.text(),
              "Germination was higher with “soaked” in moist sand than with “dry” in moist sand: 80 % "
              "against 40 % (p = 1.1e-08).");
}

TEST(Trial, RefusesToConcludeFromTooFewSeeds) {
    const auto trial = only_trial({{"dry", 3, {0, 0, 0}}, {"soaked", 3, {3, 3, 3}}});
    EXPECT_EQ(trial.pairs[0].verdict, TrialVerdict::too_few);
}

TEST(Trial, SaysHowManySeedsWouldSettleIt) {
    const auto trial = only_trial({{"dry", 20, {2, 6, 8}}, {"soaked", 20, {2, 8, 12}}});
    EXPECT_EQ(trial.pairs[0].verdict, TrialVerdict::cannot_tell);
    EXPECT_EQ(trial.pairs[0].seeds_to_settle, 97);
    EXPECT_NE(trial.pairs[0].words.text().find("about 97 seeds in each"), std::string::npos);
}

TEST(Trial, SeesThatOneGerminationEarlierWhereTheEndIsAlike) {
    const auto trial = only_trial({{"slow", 60, {2, 4, 10, 30, 50}}, {"quick", 60, {30, 45, 50, 50, 50}}});
    const auto& pair = trial.pairs[0];
    EXPECT_EQ(pair.verdict, TrialVerdict::earlier);
    EXPECT_EQ(trial.arms[pair.a].treatment, "quick");
    EXPECT_LT(*pair.p_time, 0.001);
}

TEST(Trial, ComparesNoCoursesThatWereCountedOnOtherDays) {
    auto orchard = orchard_with({{"slow", 60, {2, 4, 10}}, {"quick", 60, {10, 11, 12}}});
    orchard.germination_counts[4].counted_on = into_stratification + 85;
    const auto trials = trials_of(orchard, later);
    EXPECT_FALSE(trials.at(0).pairs[0].p_time);
}

TEST(Trial, MakesPGoodForTheNumberOfPairs) {
    const auto two = only_trial({{"a", 40, {20}}, {"b", 40, {10}}});
    const auto three = only_trial({{"a", 40, {20}}, {"b", 40, {10}}, {"c", 40, {20}}});
    EXPECT_LT(two.pairs[0].p_share, 0.05);
    for (const auto& pair : three.pairs) {
        EXPECT_GT(pair.p_share, 0.05);
    }
}

TEST(Trial, NeedsTwoTreatmentsThatWereCounted) {
    EXPECT_TRUE(trials_of(orchard_with({{"dry", 30, {4}}, {"dry", 30, {5}}}), later).empty());
    EXPECT_TRUE(trials_of(orchard_with({{"dry", 30, {4}}, {"soaked", 30, {}}}), later).empty());
    EXPECT_TRUE(
        trials_of(orchard_with({{"dry", 30, {4}}, {"soaked", 30, {5}}}), into_stratification).empty());
}

TEST(LotCourse, CensorsSeedThatLeftBeforeItGerminated) {
    auto orchard = orchard_with({{"dry", 50, {10, 20}}});
    orchard.seed_withdrawals = {{0, "S-1", into_stratification + 77, 15, {}}};
    const auto course = lot_courses(orchard, later).at(0);
    EXPECT_EQ(course.out_ungerminated, 5);
    ASSERT_EQ(course.times.censored.size(), 2U);
    EXPECT_EQ(course.times.censored[0].seeds, 5);
    EXPECT_EQ(course.times.censored[1].seeds, 50 - 20 - 5);
}

TEST(LotCourse, KnowsNothingBeforeTheFirstCount) {
    const auto course = lot_courses(orchard_with({{"dry", 50, {10}}}), into_stratification + 30).at(0);
    EXPECT_FALSE(course.germinated);
    EXPECT_TRUE(course.points.empty());
}

}  // namespace
}  // namespace pipward::seed
