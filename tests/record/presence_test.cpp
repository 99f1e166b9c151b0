// SPDX-License-Identifier: MIT
// When a tree stands. Common practice, no source: a book's day of planting is the first day on which the tree
// is there, its day of removal the first on which it is not.
#include "pipward/record/presence.h"
#include "days.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

Tree tree_of(const std::string& planted, const std::string& removed) {
    Tree tree;
    tree.planted_on = parse_iso_day(planted);
    tree.removed_on = parse_iso_day(removed);
    return tree;
}

TEST(Presence, BeginsOnTheDayOfPlanting) {
    const auto tree = tree_of("2020-03-28", "");
    EXPECT_FALSE(stands_on(tree, testing::day("2020-03-27")));
    EXPECT_TRUE(stands_on(tree, testing::day("2020-03-28")));
    EXPECT_TRUE(stands_on(tree, testing::day("2120-01-01")));
}

TEST(Presence, EndsWithTheDayBeforeTheRemoval) {
    const auto tree = tree_of("2012-03-01", "2019-12-05");
    EXPECT_TRUE(stands_on(tree, testing::day("2019-12-04")));
    EXPECT_FALSE(stands_on(tree, testing::day("2019-12-05")));
    EXPECT_TRUE(removed_by(tree, testing::day("2019-12-05")));
}

TEST(Presence, OfATreeWhoseDaysNobodyWroteDownIsForEver) {
    EXPECT_TRUE(stands_on({}, testing::day("1900-01-01")));
    EXPECT_TRUE(stands_on({}, testing::day("2100-01-01")));
}

TEST(Presence, ATreeThatIsToComeIsNotARemovedOne) {
    const auto tree = tree_of("2027-03-01", "2040-01-01");
    EXPECT_FALSE(planted_by(tree, testing::day("2026-03-20")));
    EXPECT_FALSE(removed_by(tree, testing::day("2026-03-20")));
    EXPECT_FALSE(stands_on(tree, testing::day("2026-03-20")));
}

TEST(Presence, OneTreeMayFollowAnotherOnTheDayOnWhichItGoes) {
    const auto old_tree = tree_of("2012-03-01", "2026-11-10");
    EXPECT_FALSE(stand_together(old_tree, tree_of("2026-11-10", "")));
    EXPECT_FALSE(stand_together(tree_of("2026-11-10", ""), old_tree));
    EXPECT_TRUE(stand_together(old_tree, tree_of("2026-11-09", "")));
    EXPECT_TRUE(stand_together(tree_of("", ""), tree_of("2026-11-09", "")));
}

TEST(Pollen, IsInHandFromCollectingUntilItIsUsedUp) {
    PollenLot lot;
    lot.collected_on = testing::day("2025-05-02");
    lot.used_up_on = testing::day("2026-04-30");
    EXPECT_FALSE(in_hand(lot, testing::day("2025-05-01")));
    EXPECT_TRUE(in_hand(lot, testing::day("2025-05-02")));
    EXPECT_TRUE(in_hand(lot, testing::day("2026-04-29")));
    EXPECT_FALSE(in_hand(lot, testing::day("2026-04-30")));
    lot.used_up_on.reset();
    EXPECT_TRUE(in_hand(lot, testing::day("2036-04-30")));
}

}  // namespace
}  // namespace pipward
