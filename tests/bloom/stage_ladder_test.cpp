// SPDX-License-Identifier: MIT
#include "pipward/bloom/stage_ladder.h"

#include <gtest/gtest.h>

#include <string>

#include "springs.h"
#include "testing.h"

namespace pipward::bloom {
namespace {

TEST(StageLadder, RisesFromStageToStage) {
    double before = -1e9;
    int rungs = 0;
    for (const auto& [stage, words] : bbch_stages()) {
        if (const auto place = ladder_place(stage)) {
            EXPECT_GT(place->after_full.value, before) << words;
            EXPECT_GT(place->sd_days, 0) << words;
            before = place->after_full.value;
            ++rungs;
        }
    }
    EXPECT_EQ(rungs, 16);
}

TEST(StageLadder, HoldsTheStagesOfBloomAndNoOthers) {
    for (const auto& [stage, words] : bbch_stages()) {
        EXPECT_EQ(ladder_place(stage).has_value(), stage.code >= 51 && stage.code <= 69) << words;
    }
    EXPECT_FALSE(ladder_place({58}));
    EXPECT_FALSE(ladder_place({66}));
}

TEST(StageLadder, StandsAtItsStatedPoints) {
    EXPECT_NEAR(ladder_place({61})->after_full.value, -35, 1e-9);
    EXPECT_EQ(ladder_place(full_bloom)->after_full.value, 0);
    EXPECT_EQ(ladder_place(bloom_end)->after_full.value, 75);
    EXPECT_NEAR(ladder_place_of_share({0.9}).value, 35, 1e-9);
}

TEST(StageLadder, ANoteFarFromFullBloomIsTheLessCertain) {
    EXPECT_GT(ladder_place({51})->sd_days, ladder_place({57})->sd_days);
    EXPECT_GT(ladder_place({57})->sd_days, ladder_place(full_bloom)->sd_days);
    EXPECT_GT(ladder_place(bloom_end)->sd_days, ladder_place(full_bloom)->sd_days);
}

TEST(StageLadder, StagesStandAsFarApartAsPublished) {
    const auto curves = testing::curves_of_springs(testing::springs(2001, 30));
    for (const auto& row : testing::oracle_rows("bloom-pace.txt")) {
        const auto from = *ladder_place({std::stoi(row[0])});
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
        EXPECT_NEAR(share_opened(ladder_place_of_share({share})).value, share, 1e-12);
    }
}

TEST(StageLadder, SharesOutsideTheScaleAreHeldAtItsEnds) {
    EXPECT_EQ(ladder_place_of_share({0}), ladder_place_of_share({0.01}));
    EXPECT_EQ(ladder_place_of_share({1}), ladder_place_of_share({0.99}));
    EXPECT_EQ(ladder_place_of_share({7}), ladder_place_of_share({0.99}));
}

}  // namespace
}  // namespace pipward::bloom
