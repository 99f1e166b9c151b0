// SPDX-License-Identifier: MIT
// The version that a book carries, and the one place where a book of an older version would be changed.
#include <gtest/gtest.h>

#include <array>

#include "bad-books/raw_book.h"
#include "book/book_testing.h"
#include "pipward/book/book.h"
#include "pipward/book/detail/schema_version.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/upgrade.h"

namespace pipward::book {
namespace {

using namespace detail;

using SchemaVersion = testing::BookTest;

std::string refusal(const std::string& path) {
    try {
        (void)read_book(path);
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::access);
        return error.findings().front().message.text();
    }
    return {};
}

WeatherDay day_of_weather() {
    WeatherDay day;
    day.station = "Ridge";
    day.day = *make_day({2026, 4, 1});
    day.t_min = {1};
    day.t_max = {9};
    return day;
}

TEST_F(SchemaVersion, OfANewBookIsOurs) {
    make_book();
    look_into_book(book, default_patience,
                   [](Session& session) { EXPECT_EQ(detail::version_of(session), detail::our_version); });
    EXPECT_EQ(refusal(book), "");
}

TEST_F(SchemaVersion, OfANewerOrOlderBookIsNamedAndTheBookLeftAlone) {
    make_book();
    testing::RawBook(book).run("UPDATE book_version SET version = 7");
    EXPECT_EQ(refusal(book), "This book is of schema version 7; this program knows version 2.");
    testing::RawBook(book).run("UPDATE book_version SET version = 0");
    EXPECT_EQ(refusal(book), "This book is of schema version 0; this program needs version 2.");
    EXPECT_THROW(write_weather(book, {day_of_weather()}, false), Error);
    testing::RawBook(book).run("DROP TABLE book_version");
    EXPECT_EQ(refusal(book), "This book does not say which version of the schema it is of.");
}

// A step as a later version will bring it: a column gets another name, rows stay.
TEST_F(SchemaVersion, AnUpgradeRunsItsStepsInOrderAndKeepsTheRows) {
    make_book();
    testing::RawBook(book).run("INSERT INTO accession (name, kind) VALUES ('Oak', 'cultivar')");
    testing::RawBook(book).run("UPDATE book_version SET version = 0");
    std::vector<int> run;
    const std::array steps{
        detail::UpgradeStep{0,
                            [&](Session& session) {
                                run.push_back(0);
                                run_sql(session, "ALTER TABLE accession RENAME COLUMN kind TO sort");
                            }},
        detail::UpgradeStep{1, [&](Session& session) {
                                run.push_back(1);
                                run_sql(session, "ALTER TABLE accession RENAME COLUMN sort TO kind");
                            }}};
    auto session = open_session(book, Purpose::writing);
    detail::upgrade(session, steps, 2);
    EXPECT_EQ(run, (std::vector<int>{0, 1}));
    EXPECT_EQ(detail::version_of(session), 2);
    EXPECT_EQ(query(session, "SELECT kind FROM accession WHERE name = 'Oak'").front().front(), "cultivar");
    EXPECT_THROW(detail::upgrade(session, steps, 3), OgrTrouble);
}

// What version 1 lacked is taken out again, and the tag of a pollination made one row's alone.
void make_version_1(const std::string& path) {
    testing::RawBook raw(path);
    raw.run("PRAGMA legacy_alter_table = ON");
    for (const auto* table : {"pollen_move", "branch_work", "fruit_set", "trait"}) {
        // "link_trait_" begins the views of trait_score; trait itself has none.
        const std::string begin = table == std::string("trait") ? "none" : table;
        for (const auto& view : raw.texts(
                 std::string("SELECT name FROM sqlite_master WHERE type = 'view' AND name LIKE 'link_") +
                 begin + "_%'")) {
            raw.run("DROP VIEW " + view);
            raw.run("DELETE FROM gpkgext_relations WHERE mapping_table_name = '" + view + "'");
            raw.run("DELETE FROM gpkg_extensions WHERE table_name = '" + view + "'");
        }
        raw.run(std::string("DROP TABLE ") + table);
        for (const auto* words : {"gpkg_contents", "gpkg_data_columns", "gpkg_ogr_contents"}) {
            raw.run(std::string("DELETE FROM ") + words + " WHERE table_name = '" + table + "'");
        }
    }
    raw.run(
        "DELETE FROM gpkg_data_column_constraints WHERE constraint_name IN ('branch_task', 'trait_kind')");
    auto sql = raw.text("SELECT sql FROM sqlite_master WHERE name = 'pollination'");
    sql.replace(sql.find("\"tag\" TEXT NOT NULL"), 19, "\"tag\" TEXT NOT NULL UNIQUE");
    raw.run("DROP TABLE pollination");
    raw.run(sql);
    raw.run("UPDATE book_version SET version = 1");
}

TEST_F(SchemaVersion, ABookOfVersion1IsUpgradedAndKeepsItsRowsAndACopy) {
    make_book();
    make_version_1(book);
    testing::RawBook(book).run(
        "INSERT INTO pollination (tag, \"cross\", tree, pollinated_on, flowers) VALUES ('26-01-a', '26-01', "
        "'A1', '2026-05-10', 40)");
    EXPECT_NE(refusal(book), "");
    EXPECT_EQ(needed_upgrade(book).from, 1);
    const auto upgrade = upgrade_book(book);
    EXPECT_TRUE(std::filesystem::exists(upgrade.copy));
    const auto reading = read_book(book);
    EXPECT_TRUE(reading.findings.empty());
    ASSERT_EQ(reading.orchard.pollinations.size(), 1U);
    testing::RawBook raw(book);
    raw.run(
        "INSERT INTO pollination (tag, \"cross\", tree, pollinated_on, flowers) VALUES ('26-01-a', '26-01', "
        "'A1', '2026-05-12', 40)");
    EXPECT_THROW(raw.run("INSERT INTO pollination (tag, \"cross\", tree, pollinated_on, flowers) VALUES "
                         "('26-01-a', '26-01', 'A1', '2026-05-12', 40)"),
                 std::runtime_error);
    EXPECT_EQ(raw.text("SELECT COUNT(*) FROM branch_work"), "0");
    EXPECT_EQ(raw.text("PRAGMA integrity_check"), "ok");
    EXPECT_EQ(upgrade_book(book).from, 2) << "a second time nothing is done";
}

TEST_F(SchemaVersion, HasAStepForEveryVersionBeforeOurs) {
    const auto steps = detail::upgrade_steps();
    for (int version = 1; version < detail::our_version; ++version) {
        EXPECT_NE(std::ranges::find(steps, version, &detail::UpgradeStep::from), steps.end()) << version;
    }
    EXPECT_EQ(steps.size(), static_cast<std::size_t>(detail::our_version - 1));
}

}  // namespace
}  // namespace pipward::book
