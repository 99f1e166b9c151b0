// SPDX-License-Identifier: MIT
#include "pipward/book/change.h"

#include <gtest/gtest.h>

#include "book/book_testing.h"

namespace pipward::book {
namespace {

using testing::text;
using testing::whole;

class ApplyChange : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        append_rows(book, block("Upper"));
        Table tree;
        tree.shape.name = "tree";
        tree.shape.columns = {{"label", CellType::text, "", "", ""}};
        tree.rows.push_back({{text("T1")}, MapPoint{500000, 5300000, {}}});
        append_rows(book, tree);
    }

    static Table block(const char* name) {
        Table table;
        table.shape.name = "block";
        table.shape.columns = {{"name", CellType::text, "", "", ""}};
        table.rows.push_back({{text(name)}});
        return table;
    }

    CellEdit placed(Cell before) const {
        const auto tree = read_book(book).orchard.trees.at(0);
        return {"tree", tree.fid, tree.label, {{"position", before}}, {{"position", whole(7)}}};
    }
};

TEST_F(ApplyChange, AddsEditsAndReplacesInOneGo) {
    apply_change(book, {.added = {block("Lower")}, .edits = {placed({})}});
    const auto orchard = read_book(book).orchard;
    EXPECT_EQ(orchard.blocks.size(), 2u);
    EXPECT_EQ(orchard.trees[0].position, 7);
}

TEST_F(ApplyChange, LeavesAllAsItWasWhereACellHasChangedSinceItWasRead) {
    try {
        apply_change(book, {.added = {block("Lower")}, .edits = {placed(whole(3))}});
        FAIL() << "a stale edit went through";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::input);
        EXPECT_EQ(error.findings().at(0).row, "T1");
    }
    EXPECT_EQ(read_book(book).orchard.blocks.size(), 1u);
}

TEST_F(ApplyChange, RefusesCellsAndColumnsThatTheSchemaDoesNotAllow) {
    auto edit = placed({});
    edit.after = {{"position", whole(-1)}};
    EXPECT_THROW(apply_change(book, {.edits = {edit}}), Error);
    edit.after = {{"colour", text("red")}};
    EXPECT_THROW(apply_change(book, {.edits = {edit}}), Error);
    edit = placed({});
    edit.fid = 999;
    EXPECT_THROW(apply_change(book, {.edits = {edit}}), Error);
    EXPECT_FALSE(read_book(book).orchard.trees[0].position);
}

TEST_F(ApplyChange, RefusesANameThatIsTakenAndTakesBackTheRest) {
    EXPECT_THROW(apply_change(book, {.added = {block("Lower"), block("Upper")}}), Error);
    EXPECT_EQ(read_book(book).orchard.blocks.size(), 1u);
}

}  // namespace
}  // namespace pipward::book
