// SPDX-License-Identifier: MIT
#include "pipward/place/walk_stops.h"

#include <gtest/gtest.h>

#include "pipward/place/sheet_walk.h"
#include "place/made_trees.h"

namespace pipward::place {
namespace {

Orchard stops_orchard() {
    Orchard orchard;
    orchard.trees = {testing::made_tree("UP-01-01", "Wrenlea", "Upper", "1", 1),
                     testing::made_tree("UP-01-02", "Wrenlea", "Upper", "1", 2)};
    return orchard;
}

Walk there_and_out() {
    Walk walk;
    walk.legs.resize(3);
    walk.legs[0].tree = 1;
    walk.legs[0].metres = 5;
    walk.legs[1].tree = 0;
    walk.legs[1].metres = 3;
    walk.legs[2].metres = 4;
    walk.metres = 12;
    return walk;
}

TEST(WalkStops, GoOnFromOneAnotherAndAddUp) {
    const auto orchard = stops_orchard();
    const auto walk = there_and_out();
    const auto stops = walk_stops(walk, orchard);
    ASSERT_EQ(stops.size(), 3U);
    EXPECT_EQ(stops[0].from.text(), "start");
    EXPECT_EQ(stops[1].from.text(), "UP-01-02");
    EXPECT_EQ(stops[1].tree, &orchard.trees[0]);
    EXPECT_EQ(stops[1].address.text(), "block Upper, row 1, position 1");
    EXPECT_EQ(stops[2].tree, nullptr);
    EXPECT_EQ(stops[2].order, 3);
    EXPECT_DOUBLE_EQ(stops[2].walked, walk.metres);
}

TEST(BarredLegs, AreWarnedOf) {
    auto walk = there_and_out();
    EXPECT_TRUE(barred_legs(walk, stops_orchard()).empty());
    walk.legs[1].through_rows = true;
    walk.legs[2].through_rows = true;
    const auto findings = barred_legs(walk, stops_orchard());
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_EQ(findings[0].row, "UP-01-01");
    EXPECT_TRUE(findings[1].row.empty());
}

TEST(ExpectWalkable, RefusesMoreStopsThanAWalkCanHave) {
    EXPECT_NO_THROW(expect_walkable(most_stops));
    EXPECT_THROW(expect_walkable(most_stops + 1), Error);
}

TEST(WalkSummary, SaysWhereNoOrderIsShorter) {
    auto walk = there_and_out();
    EXPECT_EQ(walk_summary(walk, 2).text(), "2 trees, 12 m walk.");
    walk.is_shortest = true;
    EXPECT_EQ(walk_summary(walk, 1).text(), "1 tree, 12 m walk: no order is shorter.");
    EXPECT_EQ(walk_summary({}, 0).text(), "No tree is to be visited.");
}

}  // namespace
}  // namespace pipward::place
