// SPDX-License-Identifier: MIT
#include "pipward/season/work_walk.h"
#include "days.h"

#include <gtest/gtest.h>

namespace pipward::season {
namespace {

using testing::day_of;

FieldWorkItem item_of(const char* key, const char* tree, std::optional<Day> from) {
    FieldWorkItem item;
    item.key = key;
    item.tree = tree;
    item.from = from;
    return item;
}

std::vector<FieldWorkItem> made() {
    return {item_of("bench", "", day_of("2026-04-01")), item_of("first", "T1", day_of("2026-04-02")),
            item_of("second", "T2", day_of("2026-04-03")), item_of("again", "T1", day_of("2026-04-09")),
            item_of("any day", "T2", std::nullopt)};
}

TEST(WorkUntil, KeepsWhatCanBeBegunAndWhatHasNoDay) {
    const auto items = work_until(made(), day_of("2026-04-02"));
    ASSERT_EQ(items.size(), 3U);
    EXPECT_EQ(items[2].key, "any day");
}

TEST(InWalkingOrder, GoesTreeByTreeThenTheBench) {
    Orchard orchard;
    orchard.trees.resize(2);
    orchard.trees[0].label = "T1";
    orchard.trees[1].label = "T2";
    place::SheetWalk walk;
    walk.stops = {{&orchard.trees[1], 5.0}, {&orchard.trees[0], 9.0}};
    std::vector<std::string> keys;
    for (const auto& stop : in_walking_order(made(), walk, orchard)) {
        EXPECT_EQ(stop.order, static_cast<int>(keys.size()) + 1);
        keys.push_back(stop.item.key);
    }
    EXPECT_EQ(keys, (std::vector<std::string>{"second", "any day", "first", "again", "bench"}));
}

TEST(InWalkingOrder, LosesNothingOfTreesThatTheWalkDoesNotKnow) {
    EXPECT_EQ(in_walking_order(made(), {}, {}).size(), made().size());
}

}  // namespace
}  // namespace pipward::season
