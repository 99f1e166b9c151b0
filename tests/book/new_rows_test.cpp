// SPDX-License-Identifier: MIT
#include "pipward/book/new_rows.h"

#include <gtest/gtest.h>

#include "book/book_testing.h"
#include "pipward/book/records.h"

namespace pipward::book {
namespace {

class NewRows : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        TreeRow row;
        row.block = "Upper";
        row.name = "1";
        row.spacing = Metres{2.5};
        row.first_position = 3;
        row.line = {{500000, 5300000, {}}, {500040, 5300000, {}}};
        Accession seedling;
        seedling.name = "25-01-001";
        seedling.kind = AccessionKind::seedling;
        seedling.remark = "planting X";
        Tree tree;
        tree.label = "25-01-001";
        tree.accession = "25-01-001";
        tree.purpose = TreePurpose::seedling;
        tree.placed_by = PlacedBy::computed;
        tree.planted_on = testing::day("2026-07-01");
        tree.remark = "planting X";
        tree.at = MapPoint{500001, 5300001, {}};
        BookChange change;
        change.added = {block_to_add("Upper", {499990, 5299990, {}}, {500050, 5300010, {}}),
                        rows_to_add(std::vector{row}), rows_to_append(std::vector{seedling}),
                        rows_to_append(std::vector{tree})};
        apply_change(book, change);
    }
};

TEST_F(NewRows, AreReadBackAsTheyWereGiven) {
    const auto orchard = read_book(book).orchard;
    EXPECT_EQ(orchard.blocks.at(0).name, "Upper");
    ASSERT_EQ(orchard.rows.size(), 1U);
    EXPECT_EQ(orchard.rows[0].first_position, 3);
    EXPECT_EQ(orchard.rows[0].spacing->value, 2.5);
    EXPECT_EQ(orchard.rows[0].line.size(), 2U);
    EXPECT_EQ(orchard.accessions.at(0).kind, AccessionKind::seedling);
    ASSERT_EQ(orchard.trees.size(), 1U);
    EXPECT_EQ(orchard.trees[0].placed_by, PlacedBy::computed);
    EXPECT_EQ(orchard.trees[0].planted_on, testing::day("2026-07-01"));
    EXPECT_DOUBLE_EQ(orchard.trees[0].at->x, 500001);
}

TEST_F(NewRows, ATreeIsPlacedOnlyWhileItStandsAsItWasRead) {
    const auto tree = read_book(book).orchard.trees.at(0);
    apply_change(book, {.edits = {placed(tree, "Upper", "1", 4)}});
    EXPECT_EQ(read_book(book).orchard.trees.at(0).position, 4);
    EXPECT_THROW(apply_change(book, {.edits = {placed(tree, "Upper", "1", 5)}}), Error);
}

TEST_F(NewRows, AreTakenOutByTheirNameAndNote) {
    const auto orchard = read_book(book).orchard;
    apply_change(book, {.removed = {removal_of(orchard.trees[0]), removal_of(orchard.accessions[0])}});
    EXPECT_TRUE(read_book(book).orchard.trees.empty());
    EXPECT_TRUE(read_book(book).orchard.accessions.empty());
    EXPECT_THROW(apply_change(book, {.removed = {removal_of(orchard.trees[0])}}), Error);
}

}  // namespace
}  // namespace pipward::book
