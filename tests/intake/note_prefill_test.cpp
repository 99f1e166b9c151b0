// SPDX-License-Identifier: MIT
#include "days.h"
#include "pipward/intake/record_prefill.h"

#include <gtest/gtest.h>

namespace pipward::intake {
namespace {

using testing::day_of;

Orchard made() {
    Orchard orchard;
    Tree tree;
    tree.label = "UP-01-01";
    tree.accession = "Wrenlea";
    tree.block = "Upper";
    tree.purpose = TreePurpose::parent;
    Tree seedling = tree;
    seedling.label = "UP-01-02";
    seedling.purpose = TreePurpose::seedling;
    Tree gone = tree;
    gone.label = "UP-01-03";
    gone.removed_on = day_of("2025-01-01");
    orchard.trees = {tree, seedling, gone};
    CrossGoal goal;
    goal.code = "26-01";
    goal.season = {2026};
    goal.seed_parent = "Wrenlea";
    orchard.goals = {goal};
    Pollination work;
    work.tag = "26-01-a";
    work.cross = "26-01";
    work.tree = "UP-01-01";
    work.pollinated_on = day_of("2026-05-01");
    orchard.pollinations = {work};
    return orchard;
}

TEST(LikelyLines, OfBloomAreTheStandingTreesThatAreNoSeedlings) {
    const auto lines = likely_lines(RecordKind::bloom, made(), day_of("2026-04-20"), "");
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].at("tree"), "UP-01-01");
    EXPECT_EQ(lines[0].at(std::string(where_column)), "block Upper");
}

TEST(LikelyLines, OfScoresAreTheSeedlingsWithTheTrait) {
    const auto lines = likely_lines(RecordKind::score, made(), day_of("2026-09-20"), "taste");
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].at("tree"), "UP-01-02");
    EXPECT_EQ(lines[0].at("trait"), "taste");
}

TEST(LikelyLines, OfPollinationsHaveTheNextFreeTag) {
    const auto lines = likely_lines(RecordKind::pollination, made(), day_of("2026-05-03"), "");
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].at("tag"), "26-01-b");
}

TEST(LikelyLines, OfPicksAreTagsWithoutFruitThatCanStillHang) {
    EXPECT_EQ(likely_lines(RecordKind::harvest, made(), day_of("2026-09-20"), "").size(), 1U);
    EXPECT_TRUE(likely_lines(RecordKind::harvest, made(), day_of("2027-09-20"), "").empty());
}

TEST(NoteSheetText, HasTheTablesColumnsAndWhereToLook) {
    const auto lines = likely_lines(RecordKind::bloom, made(), day_of("2026-04-20"), "");
    const auto text = note_sheet_text(RecordKind::bloom, lines);
    EXPECT_EQ(text.find("tree,"), 0U);
    EXPECT_NE(text.find(",where\r\nUP-01-01,"), std::string::npos);
    EXPECT_EQ(note_sheet_text(RecordKind::bloom, {}).find("where"), std::string::npos);
}

TEST(ExampleOf, AColumnThatRefersToATableIsANameOfIt) {
    const auto& table = table_of(RecordKind::bloom);
    const auto orchard = made();
    for (const auto& column : table.columns) {
        if (column.name == "tree") {
            EXPECT_EQ(example_of(column, table, orchard, day_of("2026-04-20")), "UP-01-03");
        } else if (column.name == "observed_on") {
            EXPECT_EQ(example_of(column, table, orchard, day_of("2026-04-20")), "2026-04-20");
        } else if (column.name == "bbch") {
            EXPECT_EQ(example_of(column, table, orchard, day_of("2026-04-20")), "65");
        }
    }
}

}  // namespace
}  // namespace pipward::intake
