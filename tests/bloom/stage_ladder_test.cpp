// SPDX-License-Identifier: MIT
#include "pipward/bloom/stage_ladder.h"

#include <gtest/gtest.h>

#include <string>

#include "springs.h"
#include "testing.h"

namespace pipward::bloom {
namespace {

const StageLadder apple = usual_ladder("Malus domestica");
const StageLadder pear = usual_ladder("Pyrus communis");

TEST(StageLadder, RisesFromStageToStage) {
    for (const auto& ladder : {apple, pear}) {
        double before = -1e9;
        int rungs = 0;
        for (const auto& [stage, words] : bbch_stages()) {
            if (const auto place = ladder_place(stage, ladder)) {
                EXPECT_GT(place->after_full.value, before) << words;
                EXPECT_GT(place->sd_days, 0) << words;
                before = place->after_full.value;
                ++rungs;
            }
        }
        EXPECT_EQ(rungs, 16);
    }
}

TEST(StageLadder, APearGoesThroughBloomFasterThanAnApple) {
    EXPECT_GT(pear.first, apple.first);
    EXPECT_LT(pear.end, apple.end);
    EXPECT_EQ(usual_ladder("Pyrus"), pear);
    EXPECT_EQ(usual_ladder(""), apple);
}

TEST(StageLadder, HoldsTheStagesOfBloomAndNoOthers) {
    for (const auto& [stage, words] : bbch_stages()) {
        EXPECT_EQ(ladder_place(stage, apple).has_value(), stage.code >= 51 && stage.code <= 69) << words;
    }
    EXPECT_FALSE(ladder_place({58}, apple));
    EXPECT_FALSE(ladder_place({66}, apple));
}

TEST(StageLadder, StandsAtItsStatedPoints) {
    EXPECT_NEAR(ladder_place(first_bloom, apple)->after_full.value, -52, 1e-9);
    EXPECT_EQ(ladder_place(full_bloom, apple)->after_full.value, 0);
    EXPECT_EQ(ladder_place(bloom_end, apple)->after_full.value, 108);
    EXPECT_NEAR(ladder_place(first_bloom, pear)->after_full.value, -38, 1e-9);
    EXPECT_EQ(ladder_place(bloom_end, pear)->after_full.value, 86);
    EXPECT_NEAR(share_opened(apple.first, apple).value, 0.05, 1e-12);
    EXPECT_NEAR(share_opened({0}, apple).value, 0.5, 1e-12);
}

TEST(StageLadder, ANoteFarFromFullBloomIsTheLessCertain) {
    EXPECT_GT(ladder_place({51}, apple)->sd_days, ladder_place({57}, apple)->sd_days);
    EXPECT_GT(ladder_place({57}, apple)->sd_days, ladder_place(full_bloom, apple)->sd_days);
    EXPECT_GT(ladder_place(bloom_end, apple)->sd_days, ladder_place(full_bloom, apple)->sd_days);
}

TEST(StageLadder, StagesStandAsFarApartAsPublished) {
    const auto curves = testing::curves_of_springs(testing::springs(2001, 30));
    for (const auto& row : testing::oracle_rows("bloom-pace.txt")) {
        const auto from = *ladder_place({std::stoi(row[0])}, apple);
        double days = 0;
        for (const auto& [key, season] : curves) {
            const double full = testing::true_bloom(season, 6600);
            days += full - ladder_day(season, full, from.after_full);
        }
        days /= static_cast<double>(curves.size());
        EXPECT_GT(days, std::stod(row[2])) << "from stage " << row[0];
        EXPECT_LT(days, std::stod(row[3])) << "from stage " << row[0];
    }
}

TEST(StageLadder, SharesAndPlacesAreEachOthersInverse) {
    for (double share = 0.02; share < 0.99; share += 0.01) {
        EXPECT_NEAR(share_opened(ladder_place_of_share({share}, pear), pear).value, share, 1e-12);
    }
}

TEST(StageLadder, SharesOutsideTheScaleAreHeldAtItsEnds) {
    EXPECT_EQ(ladder_place_of_share({0}, apple), ladder_place_of_share({0.01}, apple));
    EXPECT_EQ(ladder_place_of_share({1}, apple), ladder_place_of_share({0.99}, apple));
    EXPECT_EQ(ladder_place_of_share({7}, apple), ladder_place_of_share({0.99}, apple));
}

}  // namespace
}  // namespace pipward::bloom
