// SPDX-License-Identifier: MIT
#include "pipward/book/back_up.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "bad-books/spoil.h"
#include "book/book_testing.h"

namespace pipward::book {
namespace {

using testing::error_of;
using testing::RawBook;

class BackUp : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        std::vector<Row> trees;
        for (int i = 0; i < 40; ++i) {
            trees.push_back({{"A" + std::to_string(i)}, testing::at(500000 + i, 5300000)});
        }
        testing::add(book, "tree", {"label"}, trees);
        copy = (folder / "copy.gpkg").string();
    }
    void expect_refused(Trouble trouble, const std::string& words) {
        const auto before = files();
        const auto error = error_of([&] { back_up(book, copy); });
        EXPECT_EQ(error.trouble(), trouble);
        EXPECT_NE(std::string(error.what()).find(words), std::string::npos) << error.what();
        EXPECT_EQ(files(), before);
    }
    std::string copy;
};

TEST_F(BackUp, ACopyHoldsEveryRowAndIsABook) {
    const auto before = testing::bytes_of(book);
    const auto tables = back_up(book, copy);
    EXPECT_EQ(files(), (std::vector<std::string>{"book.gpkg", "copy.gpkg"}));
    EXPECT_EQ(testing::bytes_of(book), before);
    EXPECT_EQ(std::ranges::find(tables, "tree", &BackedUpTable::name)->rows, 40);
    EXPECT_EQ(read_book(copy).orchard.trees.size(), 40u);
    EXPECT_EQ(read_book(copy).orchard.trees[7].fid, read_book(book).orchard.trees[7].fid);
    EXPECT_TRUE(check_file(copy).empty());
    if (testing::has_validator()) {
        EXPECT_EQ(testing::complaints_about(copy), "");
    }
}

TEST_F(BackUp, WhatStandsInAWriteAheadLogOnlyIsCopiedToo) {
    RawBook writer(book);
    writer.run(
        "PRAGMA journal_mode = wal; PRAGMA wal_autocheckpoint = 0; "
        "INSERT INTO accession (name, kind) VALUES ('Red', 'cultivar')");
    back_up(book, copy);
    EXPECT_EQ(read_book(copy).orchard.accessions.size(), 1u);
}

TEST_F(BackUp, AWriterInTheMidstOfAChangeIsNotWaitedForAndNotCopied) {
    RawBook writer(book);
    writer.run("BEGIN IMMEDIATE; INSERT INTO accession (name, kind) VALUES ('Red', 'cultivar')");
    back_up(book, copy);
    EXPECT_TRUE(read_book(copy).orchard.accessions.empty());
    writer.run("COMMIT");
}

TEST_F(BackUp, NothingIsEverOverwritten) {
    std::ofstream(copy) << "mine";
    expect_refused(Trouble::access, "There is a file of that name already");
    EXPECT_EQ(testing::bytes_of(copy), "mine");
    copy = book;
    expect_refused(Trouble::access, "There is a file of that name already");
}

TEST_F(BackUp, ADamagedBookIsNotTakenForABackup) {
    testing::zero_last_leaf(book, "tree");
    expect_refused(Trouble::access, "damaged");
}

TEST_F(BackUp, ABookWithABrokenIndexIsCopiedAsItIs) {
    RawBook(book).run("DELETE FROM rtree_tree_geom WHERE id > 20");
    back_up(book, copy);
    EXPECT_FALSE(check_file(copy).empty());
}

TEST_F(BackUp, PlacesWhereNoCopyCanLie) {
    copy = (folder / "nowhere" / "copy.gpkg").string();
    expect_refused(Trouble::access, "cannot be made");
    copy = (folder / "copy.txt").string();
    expect_refused(Trouble::usage, "ends with .gpkg");
    copy = "/vsicurl/http://example.invalid/copy.gpkg";
    expect_refused(Trouble::access, "network");
}

}  // namespace
}  // namespace pipward::book
