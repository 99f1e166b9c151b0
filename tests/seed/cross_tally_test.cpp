// SPDX-License-Identifier: MIT
#include "pipward/seed/cross_tally.h"
#include "days.h"

#include <gtest/gtest.h>

#include "pipward/seed/learning.h"

namespace pipward::seed {
namespace {

using testing::day_of;

const Day end = day_of("2026-06-01");

/// One cross all the way: 40 flowers on two tags, 12 fruits, 60 seeds, 45 germinated, two of three trees
/// alive.
Orchard whole_story() {
    Orchard orchard;
    orchard.goals = {{1, "24-01", Season{2024}, "Seed", "Pollen", 30, {}, {}}};
    orchard.pollinations = {{1, "24-01-a", "24-01", "T1", day_of("2024-05-01"), 25, {}, 1, {}},
                            {2, "24-01-b", "24-01", "T2", day_of("2024-05-02"), 15, {}, {}, {}},
                            {3, "24-01-a", "24-01", "T1", day_of("2024-05-03"), 25, {}, 2, {}}};
    orchard.fruits = {{1, "24-01-a", day_of("2024-09-20"), 8, 44, 3, {}},
                      {2, "24-01-b", day_of("2024-09-22"), 4, 16, 5, {}}};
    SeedLot lot;
    lot.code = "S-1";
    lot.cross = "24-01";
    lot.seeds = 60;
    lot.washed_on = day_of("2024-09-25");
    lot.stratified_from = day_of("2024-12-01");
    orchard.seed_lots = {lot};
    orchard.germination_counts = {{1, "S-1", day_of("2025-02-20"), 30}, {2, "S-1", day_of("2025-03-20"), 45}};
    for (int i = 1; i <= 3; ++i) {
        const std::string name = "24-01-00" + std::to_string(i);
        Accession seedling;
        seedling.name = name;
        seedling.seed_parent = "Seed";
        seedling.pollen_parent = "Pollen";
        orchard.accessions.push_back(seedling);
        Tree tree;
        tree.label = "N-" + std::to_string(i);
        tree.accession = name;
        tree.planted_on = day_of("2025-07-01");
        orchard.trees.push_back(tree);
    }
    orchard.trees[1].removed_on = day_of("2026-03-01");
    return orchard;
}

TEST(CrossTally, CountsEveryStepAndFlowersPollinatedTwiceOnce) {
    const auto tally = tally_crosses(whole_story(), end).at(0);
    EXPECT_EQ(tally.flowers.count, 40);
    EXPECT_EQ(tally.fruits.count, 12);
    EXPECT_EQ(tally.sound_seed.count, 60);
    EXPECT_EQ(tally.in_stratification.count, 60);
    EXPECT_EQ(tally.germinated.count, 45);
    EXPECT_EQ(tally.planted.count, 3);
    EXPECT_EQ(tally.alive.count, 2);
    EXPECT_FALSE(failed_at(tally));
}

TEST(CrossTally, KnowsOnlyWhatHadHappenedByTheDay) {
    const auto tally = tally_crosses(whole_story(), day_of("2024-10-01")).at(0);
    EXPECT_EQ(tally.fruits.count, 12);
    EXPECT_FALSE(tally.in_stratification.count);
    EXPECT_FALSE(tally.germinated.count);
    EXPECT_FALSE(tally.planted.count);
}

TEST(CrossTally, TakesCountsThatWereNotMadeForUnknownAndNotForZero) {
    auto orchard = whole_story();
    orchard.fruits.pop_back();
    auto tally = tally_crosses(orchard, end).at(0);
    EXPECT_EQ(tally.fruits.count, 8);
    EXPECT_FALSE(tally.fruits.whole);
    orchard.fruits.clear();
    orchard.germination_counts.clear();
    tally = tally_crosses(orchard, end).at(0);
    EXPECT_FALSE(tally.fruits.count);
    EXPECT_EQ(tally.sound_seed.count, 60) << "the lots tell it";
    EXPECT_FALSE(tally.germinated.count);
    EXPECT_FALSE(failed_at(tally));
}

TEST(CrossTally, SaysAtWhichStepACrossFailed) {
    auto orchard = whole_story();
    orchard.fruits = {{1, "24-01-a", day_of("2024-07-20"), 0, {}, {}, {}},
                      {2, "24-01-b", day_of("2024-07-20"), 0, {}, {}, {}}};
    EXPECT_EQ(failed_at(tally_crosses(orchard, end).at(0)), SeedStep::fruits);
    orchard.fruits.pop_back();
    EXPECT_FALSE(failed_at(tally_crosses(orchard, end).at(0))) << "one tag was not looked at";
}

TEST(CrossTally, CountsAGraftedSeedlingOnceAndForAliveWhileOneOfItsTreesStands) {
    auto orchard = whole_story();
    auto graft = orchard.trees[1];
    graft.label = "N-9";
    graft.removed_on = std::nullopt;
    orchard.trees.push_back(graft);
    const auto tally = tally_crosses(orchard, end).at(0);
    EXPECT_EQ(tally.planted.count, 3);
    EXPECT_EQ(tally.alive.count, 3);
}

// Beta-binomial and gamma-Poisson means, calculated by hand: (0.30 x 50 + 12) / 90, (5 x 10 + 60) / 22,
// (0.8 x 50 + 45) / 110.
TEST(Learning, MovesTheHandbooksFiguresByTheOrchardsCounts) {
    const auto learned = learn(whole_story(), end, {});
    EXPECT_NEAR(learned.fruit_set.used, 27.0 / 90, 1e-12);
    EXPECT_NEAR(learned.fruit_set.yours, 0.3, 1e-12);
    EXPECT_NEAR(learned.seeds_per_fruit.used, 110.0 / 22, 1e-12);
    EXPECT_NEAR(learned.germination.used, 85.0 / 110, 1e-12);
    const auto used = with_learned({}, learned);
    EXPECT_NEAR(used.seed_to_seedling.value, 85.0 / 110 * 0.9, 1e-12);
}

TEST(Learning, LeavesTheHandbookWhereNothingWasCounted) {
    const auto used = with_learned({}, learn({}, end, {}));
    EXPECT_EQ(used.fruit_set.value, cross::CrossingAssumptions{}.fruit_set.value);
    EXPECT_EQ(used.seeds_per_fruit, cross::CrossingAssumptions{}.seeds_per_fruit);
    EXPECT_NEAR(used.seeds_per_fruit_variance, cross::CrossingAssumptions{}.seeds_per_fruit_variance, 1e-12);
    EXPECT_NEAR(used.seed_to_seedling.value, cross::CrossingAssumptions{}.seed_to_seedling.value, 1e-12);
}

TEST(Learning, DoesNotLearnFromALotThatStillGermination) {
    EXPECT_EQ(learn(whole_story(), day_of("2025-03-25"), {}).germination.counted, 0);
    EXPECT_EQ(learn(whole_story(), day_of("2025-06-25"), {}).germination.counted, 60);
}

}  // namespace
}  // namespace pipward::seed
