// SPDX-License-Identifier: MIT
#include "pipward/cross/kept_tasks.h"
#include "days.h"

#include <gtest/gtest.h>

namespace pipward::cross {
namespace {

using testing::day_of;

Table tasks() {
    Table table;
    table.shape.name = "field_task";
    for (const auto* name : {"work", "cross", "tree", "urgency"}) {
        table.shape.columns.push_back({name, CellType::text, "", "", ""});
    }
    table.shape.columns.push_back({"do_from", CellType::day, "", "", ""});
    table.shape.columns.push_back({"do_to", CellType::day, "", "", ""});
    const auto add = [&](const char* work, const char* cross, const char* tree, Urgency urgency,
                         const char* from, const char* to) {
        table.rows.push_back({{std::string(work), std::string(cross), std::string(tree),
                               std::string(to_text(urgency)), day_of(from), day_of(to)}});
    };
    add("bag", "26-01", "UP-01-01", Urgency::this_week, "2026-04-20", "2026-04-24");
    add("pollinate", "26-01", "UP-01-01", Urgency::later, "2026-04-28", "2026-05-02");
    add("pollinate", "26-02", "LO-01-01", Urgency::later, "2026-05-01", "2026-05-04");
    table.rows.push_back({{std::string("collect"), Cell{}, Cell{}, Cell{}, Cell{}, Cell{}}});  // no tree
    return table;
}

TEST(KeptTasks, AreReadBackAndThoseWithoutATreeLeftOut) {
    const auto kept = kept_tasks(tasks());
    ASSERT_EQ(kept.size(), 3U);
    EXPECT_EQ(kept[0].tree, "UP-01-01");
    EXPECT_EQ(kept[0].work.text(), "bag 26-01");
    EXPECT_EQ(kept[0].urgency, Urgency::this_week);
    EXPECT_EQ(kept[0].to, day_of("2026-04-24"));
}

TEST(KeptTasks, WhatATableDoesNotTellIsUnknown) {
    auto table = tasks();
    table.shape.columns[3].name = "something_else";
    EXPECT_FALSE(kept_tasks(table).front().urgency);
}

TEST(WorksAtTrees, AreToldTogetherTreeByTree) {
    const auto works = works_at_trees(kept_tasks(tasks()), {}, {});
    ASSERT_EQ(works.size(), 2U);
    EXPECT_EQ(works.at("UP-01-01").text(), "bag 26-01; pollinate 26-01");
}

TEST(WorksAtTrees, AreThoseOfTheDayAndOfTheUrgency) {
    const auto kept = kept_tasks(tasks());
    EXPECT_EQ(works_at_trees(kept, day_of("2026-05-02"), {}).size(), 2U);
    EXPECT_EQ(works_at_trees(kept, day_of("2026-05-03"), {}).size(), 1U);
    EXPECT_TRUE(works_at_trees(kept, day_of("2026-05-05"), {}).empty());
    EXPECT_EQ(works_at_trees(kept, {}, Urgency::this_week).at("UP-01-01").text(), "bag 26-01");
    EXPECT_TRUE(works_at_trees(kept, day_of("2026-05-02"), Urgency::this_week).empty());
}

}  // namespace
}  // namespace pipward::cross
