// SPDX-License-Identifier: MIT
// Damage that reading alone does not show.
#include <gtest/gtest.h>

#include "book/book_testing.h"
#include "pipward/book/entry.h"

namespace pipward::book {
namespace {

using testing::error_of;
using testing::has;
using testing::RawBook;
using testing::text;

class FileCheck : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        std::vector<Row> trees;
        for (int i = 0; i < 40; ++i) {
            trees.push_back({{"A" + std::to_string(i)}, testing::at(500000 + i, 5300000)});
        }
        testing::add(book, "tree", {"label"}, trees);
    }
    /// Overwrites the page on which an index or a table begins.
    void spoil_page_of(const std::string& name) const {
        RawBook raw(book);
        const auto page =
            std::stol(raw.text("SELECT rootpage FROM sqlite_master WHERE name = '" + name + "'"));
        const auto size = std::stol(raw.text("PRAGMA page_size"));
        std::fstream file(book, std::ios::binary | std::ios::in | std::ios::out);
        file.seekp((page - 1) * size + 8);
        file << std::string(200, '\xEE');
    }
};

TEST_F(FileCheck, AWholeBookHasNothing) {
    EXPECT_EQ(check_file(book), Findings{});
}

TEST_F(FileCheck, ADamagedIndexOfNamesIsToldAndNotWrittenTo) {
    spoil_page_of("sqlite_autoindex_tree_1");
    const auto findings = check_file(book);
    EXPECT_TRUE(has(findings, {Level::error, "", "", "", "", "damaged", "backup"}));
    EXPECT_EQ(to_text(findings.at(0)).find("sqlite"), std::string::npos);
    const auto before = testing::bytes_of(book);
    const auto error = error_of([&] {
        testing::add(book, "accession", {"name", "kind"}, {{{text("Red"), text("cultivar")}}});
    });
    EXPECT_EQ(error.trouble(), Trouble::access);
    EXPECT_NE(error.findings().at(0).message.text().find("damaged"), std::string::npos) << error.what();
    EXPECT_EQ(testing::bytes_of(book), before);
}

TEST_F(FileCheck, ASpatialIndexWithoutItsRowsIsTold) {
    RawBook(book).run("DELETE FROM rtree_tree_geom WHERE id > 20");
    EXPECT_TRUE(has(check_file(book), {Level::error, "tree", "", "geom", "", "miss some", "Rebuild"}));
}

TEST_F(FileCheck, AZeroedSpatialIndexIsTold) {
    RawBook(book).run("UPDATE rtree_tree_geom_node SET data = zeroblob(length(data))");
    EXPECT_TRUE(has(check_file(book), {Level::error, "tree", "", "geom", "", "spatial index", "Rebuild"}));
}

// Bytes 4 to 7 of a GeoPackage geometry are its system (OGC 12-128r18, 2.1.3.1.1, table 7).
TEST_F(FileCheck, ALocationStoredInAnotherSystemIsTold) {
    RawBook(book).run(
        "DROP TRIGGER IF EXISTS rtree_tree_geom_update1; UPDATE tree SET geom = CAST(substr(geom, 1, 4) || "
        "x'E6100000' || substr(geom, 9) AS BLOB) WHERE fid = 7");
    EXPECT_TRUE(
        has(check_file(book), {Level::error, "tree", "fid 7", "geom", "4326", "another coordinate", ""}));
}

}  // namespace
}  // namespace pipward::book
