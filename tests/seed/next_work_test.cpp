// SPDX-License-Identifier: MIT
// From germinated seed to numbered places: what is next, and what planting takes out of the lots.
#include "pipward/seed/next_work.h"
#include "days.h"

#include <gtest/gtest.h>

#include "pipward/seed/detail/drawn_seed.h"
#include "pipward/seed/planted.h"

namespace pipward::seed {
namespace {

using testing::day_of;

/// A lot of 50 seeds of which 30 germinated by 1 March; so many were potted, so many stand in rows.
Orchard family(int potted, int planted) {
    Orchard made;
    CrossGoal goal;
    goal.code = "25-01";
    goal.season = {2025};
    goal.seed_parent = "Wrenlea";
    goal.pollen_parent = "Marlside";
    made.goals = {goal};
    SeedLot lot;
    lot.code = "S-1";
    lot.cross = "25-01";
    lot.seeds = 50;
    lot.washed_on = day_of("2025-10-01");
    lot.stratified_from = day_of("2025-11-25");
    made.seed_lots = {lot};
    made.germination_counts = {{0, "S-1", day_of("2026-03-01"), 30}};
    if (potted > 0) {
        made.seed_withdrawals = {{0, "S-1", day_of("2026-03-02"), potted, {}}};
    }
    for (int i = 0; i < planted; ++i) {
        Accession seedling;
        seedling.name = "25-01-" + std::to_string(i + 1);
        seedling.kind = AccessionKind::seedling;
        seedling.seed_parent = "Wrenlea";
        seedling.pollen_parent = "Marlside";
        made.accessions.push_back(seedling);
        Tree tree;
        tree.label = seedling.name;
        tree.accession = seedling.name;
        tree.purpose = TreePurpose::seedling;
        tree.planted_on = day_of("2026-04-01");
        made.trees.push_back(tree);
    }
    return made;
}

std::vector<NextWork> works(const Orchard& orchard, const char* day = "2026-05-01") {
    const auto tallies = tally_crosses(orchard, day_of(day));
    return work_of_cross(tallies.front(), OrchardIndex(orchard), day_of(day));
}

TEST(WorkOfSeedlings, PottedOnesWithoutAPlaceAreToBePlanted) {
    const auto next = works(family(30, 0));
    ASSERT_EQ(next.size(), 1U);
    EXPECT_EQ(next[0].work, SeedWork::plant);
}

TEST(WorkOfSeedlings, ThoseThatAPlantingLeftOverAreToBePlantedToo) {
    const auto next = works(family(30, 20));
    ASSERT_EQ(next.size(), 1U);
    EXPECT_EQ(next[0].work, SeedWork::plant);
    EXPECT_EQ(next[0].why, "10 more seedlings have no numbered position yet.");
    EXPECT_TRUE(works(family(30, 20), "2027-06-01").empty()) << "but not for ever";
}

TEST(WorkOfSeedlings, AFamilyThatStandsInRowsIsNotToBePotted) {
    EXPECT_TRUE(works(family(0, 30)).empty());
    const auto next = works(family(0, 20));
    ASSERT_FALSE(next.empty());
    EXPECT_EQ(next[0].work, SeedWork::pot);
    EXPECT_EQ(next[0].why, "10 germinated seeds of lot S-1 are still in it, by the count of 2026-03-01.");
}

TEST(SeedDrawn, ComesOutOfTheLotsWhatWasNotPottedBefore) {
    const PlantingMark mark{day_of("2026-05-01"), "planting X"};
    const auto drawn = detail::seed_drawn({{"25-01", 25}}, family(10, 0), mark);
    ASSERT_EQ(drawn.size(), 1U);
    EXPECT_EQ(drawn[0].lot, "S-1");
    EXPECT_EQ(drawn[0].seeds, 15);
    EXPECT_EQ(drawn[0].remark, "planting X");
    EXPECT_TRUE(detail::seed_drawn({{"25-01", 10}}, family(10, 0), mark).empty());
    EXPECT_EQ(detail::seed_drawn({{"25-01", 90}}, family(0, 0), mark).at(0).seeds, 30)
        << "never what did not germinate";
}

}  // namespace
}  // namespace pipward::seed
