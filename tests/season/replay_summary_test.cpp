// SPDX-License-Identifier: MIT
// Replayed springs counted by hand.
#include <gtest/gtest.h>

#include "pipward/season/replay_summary.h"

namespace pipward::testing {
namespace {

cross::ReplayedCross replayed(int year, int wanted, double planned, double known, int flips = 0) {
    cross::ReplayedCross one;
    one.season = {year};
    one.wanted = wanted;
    one.done = {planned, known, 0, 0};
    one.flips = flips;
    return one;
}

TEST(ReplaySummary, SeedlingsAreHeldAgainstHindsight) {
    const std::vector<cross::SpringReplay> springs{
        {{replayed(2024, 100, 1, 1), replayed(2024, 50, 0.5, 1, 2)}, {}},
        {{replayed(2025, 100, 0.9, 1)}, {}}};
    const auto score = season::score_replays(springs);
    EXPECT_EQ(score.planners[0].springs, 2);
    EXPECT_EQ(score.planners[0].crosses, 3);
    EXPECT_NEAR(score.planners[0].success, 2.0 / 3, 1e-12);
    EXPECT_NEAR(score.planners[0].seedlings, 215, 1e-9);
    EXPECT_NEAR(score.planners[0].of_hindsight, 215.0 / 250, 1e-12);
    EXPECT_NEAR(score.flipped, 1.0 / 3, 1e-12);
    EXPECT_EQ(score.late, 0);
}

TEST(ReplaySummary, NothingReplayedIsNothing) {
    EXPECT_EQ(season::score_replays({}).planners[0].of_hindsight, 0);
}

TEST(ReplaySummary, WhatWasSaidIsHeldAgainstWhatCame) {
    const std::vector<cross::ChanceSaid> said{{0.91, true}, {0.95, false}, {1, true}, {0.05, false}};
    const auto rows = cross::reliability(said);
    ASSERT_EQ(rows.size(), 2);
    EXPECT_EQ(rows[0].n, 1);
    EXPECT_NEAR(rows[1].said, 2.86 / 3, 1e-12);
    EXPECT_NEAR(rows[1].came, 2.0 / 3, 1e-12);
}

}  // namespace
}  // namespace pipward::testing
