// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <array>
#include <thread>

#include "book/book_testing.h"

namespace pipward::book {
namespace {

using testing::error_of;
using testing::RawBook;
using testing::text;
using testing::whole;

Table bloom_windows(std::int64_t version, int rows) {
    Table table{
        {.name = "bloom_window",
         .title = "Bloom windows",
         .description = "When each tree blooms.",
         .has_points = true,
         .columns = {{"label", CellType::text, "", "Label", "The tree's label."},
                     {"full_p50", CellType::day, "", "Full bloom, median", "Half of the flowers open."},
                     {"version", CellType::whole, "", "Version", "Which computation."},
                     {"spread", CellType::number, "d", "Spread", "Standard deviation."},
                     {"sure", CellType::yes_no, "", "Sure", "Whether it is certain."}}},
        {}};
    for (int i = 0; i < rows; ++i) {
        table.rows.push_back(
            {{"T" + std::to_string(i), testing::day("2026-04-20") + i % 9, version, 1.5 + i, i % 2 == 0},
             testing::at(500000 + i, 5300000)});
    }
    return table;
}

Table skill() {
    return {{.name = "bloom_skill",
             .title = "Skill",
             .description = "How good forecasts were.",
             .has_points = false,
             .columns = {{"method", CellType::text, "", "Method", "The method."},
                         {"remark", CellType::text, "", "Note", "A note."}}},
            {{{text("chill then heat"), testing::unknown}}}};
}

class ReplaceResults : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        testing::add(book, "tree", {"label"}, {{{text("A1")}, testing::at(1, 1)}});
    }
    void replace(const Table& table, Patience patience = default_patience) {
        replace_results(book, std::array{table}, patience);
    }
};

TEST_F(ReplaceResults, ReadsBackWhatWasWrittenToTheLastWord) {
    const std::array tables{bloom_windows(1, 25), skill()};
    replace_results(book, tables);
    for (const auto& written : tables) {
        const auto read = read_result(book, written.shape.name);
        ASSERT_TRUE(read);
        EXPECT_EQ(read->shape.title, written.shape.title);
        EXPECT_EQ(read->shape.description, written.shape.description);
        EXPECT_EQ(read->shape.has_points, written.shape.has_points);
        ASSERT_EQ(read->shape.columns.size(), written.shape.columns.size());
        for (std::size_t i = 0; i < written.shape.columns.size(); ++i) {
            const auto& a = read->shape.columns[i];
            const auto& b = written.shape.columns[i];
            EXPECT_EQ(std::tie(a.name, a.type, a.unit, a.label, a.description),
                      std::tie(b.name, b.type, b.unit, b.label, b.description));
        }
        ASSERT_EQ(read->rows.size(), written.rows.size());
        for (std::size_t i = 0; i < written.rows.size(); ++i) {
            EXPECT_EQ(read->rows[i].cells, written.rows[i].cells);
            EXPECT_EQ(read->rows[i].at.has_value(), written.rows[i].at.has_value());
        }
    }
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
}

TEST_F(ReplaceResults, LeavesAValidIndexedGeoPackageHoweverOftenItIsDone) {
    for (int version = 0; version < 4; ++version) {
        replace(bloom_windows(version, 300));
        replace(skill());
    }
    RawBook raw(book);
    EXPECT_EQ(raw.text("SELECT rtreecheck('rtree_bloom_window_geom')"), "ok");
    EXPECT_EQ(raw.text("SELECT count(*) FROM rtree_bloom_window_geom"), "300");
    EXPECT_EQ(raw.text("PRAGMA integrity_check"), "ok");
    EXPECT_EQ(raw.text("SELECT srs_id FROM gpkg_geometry_columns WHERE table_name = 'bloom_window'"),
              "32632");
    EXPECT_EQ(raw.text("SELECT feature_count FROM gpkg_ogr_contents WHERE table_name = 'bloom_window'"),
              "300");
    EXPECT_EQ(raw.text("SELECT max_x FROM gpkg_contents WHERE table_name = 'bloom_window'"), "500299.0");
    if (!testing::has_validator()) {
        GTEST_SKIP() << "GDAL's GeoPackage validator (python3-gdal) is not installed.";
    }
    EXPECT_EQ(testing::complaints_about(book), "");
}

TEST_F(ReplaceResults, ChangesNoTableOfThePeople) {
    const auto people = [&] { return RawBook(book).texts("SELECT label || purpose FROM tree"); };
    const auto before = people();
    replace(bloom_windows(1, 10));
    EXPECT_EQ(people(), before);
    EXPECT_TRUE(read_book(book).findings.empty());
}

TEST_F(ReplaceResults, KeepsTheHeightOfPoints) {
    auto table = bloom_windows(1, 2);
    table.rows[1].at->height = Metres{312.5};
    replace(table);
    const auto read = read_result(book, "bloom_window");
    ASSERT_TRUE(read);
    EXPECT_FALSE(read->rows[0].at->height);
    EXPECT_EQ(read->rows[1].at->height, Metres{312.5});
}

TEST_F(ReplaceResults, AResultThatWasNeverWrittenIsNone) {
    EXPECT_FALSE(read_result(book, "bloom_window"));
    EXPECT_FALSE(read_result(book, "tree"));
}

TEST_F(ReplaceResults, RefusesATableOfThatNameThatIsNotOurs) {
    RawBook(book).run(
        "CREATE TABLE bloom_window (fid INTEGER PRIMARY KEY, mine TEXT); INSERT INTO bloom_window "
        "(mine) VALUES ('dear'); INSERT INTO gpkg_contents (table_name, data_type, identifier, "
        "description) VALUES ('bloom_window', 'attributes', 'mine', 'my own')");
    const auto before = testing::bytes_of(book);
    const auto error = error_of([&] { replace_results(book, std::array{skill(), bloom_windows(1, 5)}); });
    EXPECT_EQ(error.trouble(), Trouble::access);
    EXPECT_NE(error.findings().at(0).message.text().find("not a result of ours"), std::string::npos);
    EXPECT_EQ(RawBook(book).text("SELECT mine FROM bloom_window"), "dear");
    EXPECT_FALSE(read_result(book, "bloom_skill"));
    EXPECT_EQ(testing::bytes_of(book), before);
}

TEST_F(ReplaceResults, RefusesAnUnregisteredTableOrViewOfThatNameToo) {
    RawBook(book).run("CREATE VIEW bloom_window AS SELECT 1 AS fid");
    EXPECT_EQ(error_of([&] { replace(bloom_windows(1, 5)); }).trouble(), Trouble::access);
    EXPECT_EQ(RawBook(book).text("SELECT type FROM sqlite_master WHERE name = 'bloom_window'"), "view");
}

TEST_F(ReplaceResults, RefusesNamesThatAreNoResults) {
    for (const auto* name : {"tree", "gpkg_contents", "anything", "Bloom_Window", ""}) {
        auto table = skill();
        table.shape.name = name;
        EXPECT_EQ(error_of([&] { replace(table); }).trouble(), Trouble::access) << name;
    }
    EXPECT_TRUE(read_book(book).findings.empty());
}

TEST_F(ReplaceResults, RefusesForeignTriggers) {
    for (const auto* trigger :
         {"CREATE TRIGGER evil AFTER UPDATE ON gpkg_contents BEGIN DELETE FROM tree; END",
          "CREATE TRIGGER rtree_tree_geom_extra AFTER INSERT ON gpkg_contents BEGIN DELETE FROM tree; END",
          "CREATE TRIGGER evil AFTER INSERT ON gpkg_ogr_contents WHEN ' BEGIN SELECT RAISE(' <> 'x' BEGIN "
          "DELETE FROM tree; END",
          "CREATE TRIGGER evil AFTER INSERT ON gpkg_geometry_columns BEGIN /* */ DELETE FROM tree; END",
          "CREATE TRIGGER evil AFTER INSERT ON gpkg_extensions BEGIN SELECT RAISE(IGNORE) WHERE 0; UPDATE "
          "tree SET label = 'x'; END"}) {
        RawBook(book).run(trigger);
        const auto before = testing::bytes_of(book);
        const auto error = error_of([&] { replace(bloom_windows(1, 5)); });
        EXPECT_EQ(error.trouble(), Trouble::access) << trigger;
        EXPECT_NE(error.findings().at(0).message.text().find("trigger"), std::string::npos) << trigger;
        EXPECT_EQ(testing::bytes_of(book), before) << trigger;
        RawBook(book).run("DROP TRIGGER IF EXISTS evil; DROP TRIGGER IF EXISTS rtree_tree_geom_extra");
    }
    replace(bloom_windows(1, 5));
}

TEST_F(ReplaceResults, ATriggerOnAnotherTableOfThePeopleIsTheirs) {
    RawBook(book).run("CREATE TRIGGER stamp AFTER INSERT ON fruit BEGIN UPDATE fruit SET note = 'new'; END");
    replace(bloom_windows(1, 5));
    EXPECT_TRUE(read_result(book, "bloom_window"));
}

// Who may not write

TEST_F(ReplaceResults, AReadOnlyFileStaysAsItIs) {
    replace(bloom_windows(1, 5));
    const auto before = testing::bytes_of(book);
    namespace fs = std::filesystem;
    fs::permissions(book, fs::perms(0444));
    fs::permissions(folder, fs::perms(0555));
    testing::as_ordinary_user([&] {
        const auto error = error_of([&] { replace(bloom_windows(2, 5)); });
        EXPECT_EQ(error.trouble(), Trouble::access);
        EXPECT_NE(error.findings().at(0).message.text().find("may not be written"), std::string::npos)
            << error.what();
        EXPECT_NE(error.findings().at(0).remedy.text().find("writable"), std::string::npos);
        EXPECT_EQ(read_book(book).orchard.trees.size(), 1U);
    });
    fs::permissions(folder, fs::perms(0755));
    EXPECT_EQ(testing::bytes_of(book), before);
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
}

TEST_F(ReplaceResults, AReadOnlyFolderStaysAsItIs) {
    const auto before = testing::bytes_of(book);
    namespace fs = std::filesystem;
    fs::permissions(book, fs::perms(0666));
    fs::permissions(folder, fs::perms(0555));
    testing::as_ordinary_user([&] {
        const auto error = error_of([&] { replace(bloom_windows(2, 5)); });
        EXPECT_EQ(error.trouble(), Trouble::access);
        EXPECT_NE(error.findings().at(0).message.text().find("may not be written"), std::string::npos)
            << error.what();
    });
    fs::permissions(folder, fs::perms(0755));
    EXPECT_EQ(testing::bytes_of(book), before);
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
}

// Other writers

TEST_F(ReplaceResults, WaitsForAnotherWriterAndThenSucceeds) {
    RawBook other(book);
    other.run("BEGIN IMMEDIATE; INSERT INTO accession (name, kind) VALUES ('Red', 'cultivar')");
    std::thread finish([&] {
        std::this_thread::sleep_for(std::chrono::seconds(2));
        other.run("COMMIT");
    });
    replace(bloom_windows(1, 5));
    finish.join();
    EXPECT_EQ(read_result(book, "bloom_window")->rows.size(), 5U);
    EXPECT_EQ(read_book(book).orchard.accessions.size(), 1U);
}

TEST_F(ReplaceResults, GivesUpWithAClearWordWhenAnotherWriterDoesNotFinish) {
    replace(bloom_windows(1, 5));
    const auto before = testing::bytes_of(book);
    RawBook other(book);
    other.run("BEGIN IMMEDIATE");
    const auto error = error_of([&] { replace(bloom_windows(2, 5), Patience{400}); });
    other.run("ROLLBACK");
    EXPECT_EQ(error.trouble(), Trouble::access);
    EXPECT_NE(error.findings().at(0).message.text().find("Another program is writing"), std::string::npos)
        << error.what();
    EXPECT_EQ(testing::bytes_of(book), before);
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
}

TEST_F(ReplaceResults, WorksOnABookThatAnotherProgramHasInWalMode) {
    RawBook other(book);
    other.run("PRAGMA journal_mode = wal; BEGIN; SELECT count(*) FROM tree");
    replace(bloom_windows(1, 5));
    EXPECT_EQ(read_result(book, "bloom_window")->rows.size(), 5U);
    other.run("COMMIT; PRAGMA journal_mode = delete");
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
}

TEST_F(ReplaceResults, IsWhollyOldOrWhollyNewWhereverItIsKilled) {
    constexpr int rows = 400;
    constexpr int kills = 25;
    replace(bloom_windows(0, rows));
    std::set<std::int64_t> seen;
    // On a busy machine the first kills may all come before anything is written: then later ones follow.
    for (int round = 0; round < kills || (seen.size() < 2 && round < 3 * kills); ++round) {
        const pid_t child = fork();
        if (child == 0) {
            for (std::int64_t version = 1000 * (round + 1);; ++version) {
                replace_results(book, std::array{bloom_windows(version, rows), skill()});
            }
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(20 + 7 * round));
        kill(child, SIGKILL);
        int status = 0;
        waitpid(child, &status, 0);
        const auto read = read_result(book, "bloom_window");
        ASSERT_TRUE(read) << "round " << round;
        ASSERT_EQ(read->rows.size(), static_cast<std::size_t>(rows)) << "round " << round;
        for (const auto& row : read->rows) {
            ASSERT_EQ(row.cells[2], read->rows[0].cells[2]) << "round " << round;
        }
        seen.insert(std::get<std::int64_t>(read->rows[0].cells[2]));
        RawBook raw(book);
        ASSERT_EQ(raw.text("PRAGMA integrity_check"), "ok") << "round " << round;
        ASSERT_EQ(raw.text("SELECT rtreecheck('rtree_bloom_window_geom')"), "ok") << "round " << round;
        ASSERT_EQ(
            raw.text(
                "SELECT count(*) FROM sqlite_master WHERE tbl_name = 'bloom_window' AND type = 'trigger'"),
            "8")
            << "round " << round;
    }
    EXPECT_GT(seen.size(), 1U) << "no kill came late enough to see a new version";
    replace(skill());  // a kill before the first page was saved leaves an empty journal until the next write
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
}

}  // namespace
}  // namespace pipward::book
