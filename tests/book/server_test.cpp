// SPDX-License-Identifier: MIT
// The same book on a database server. Runs where PIPWARD_SERVER names an empty PostGIS database, which
// tests/server/with_server.sh makes.
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdlib>

#include "book/book_testing.h"
#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/entry.h"

namespace pipward::book {
namespace {

using testing::day;
using testing::text;
using testing::whole;

Table windows(std::int64_t version) {
    Table table{{.name = "bloom_window",
                 .title = "Bloom windows",
                 .description = "When each tree blooms.",
                 .has_points = true,
                 .columns = {{"label", CellType::text, "", "Label", "The tree's label."},
                             {"full_p50", CellType::day, "", "Full bloom", "Half of the flowers open."},
                             {"version", CellType::whole, "", "Version", "Which computation."},
                             {"spread", CellType::number, "d", "Spread", "Standard deviation."}}},
                {}};
    table.rows.push_back({{text("A1"), day("2026-04-20"), version, 1.5}, testing::at(500000, 5300000)});
    return table;
}

TEST(Server, HoldsABookLikeAFileDoes) {
    const char* server = std::getenv("PIPWARD_SERVER");
    if (server == nullptr) {
        GTEST_SKIP() << "PIPWARD_SERVER names no empty PostGIS database.";
    }
    create_book(server, "EPSG:32632");
    EXPECT_EQ(testing::error_of([&] { create_book(server, "EPSG:32632"); }).trouble(), Trouble::access);

    testing::add(server, "tree", {"label", "planted_on", "position"},
                 {{{text("A1"), day("2012-03-01"), whole(3)}, testing::at(500000, 5300000)}});
    testing::add(server, "station", {"name", "elevation_m"},
                 {{{text("Ridge"), 300.0}, testing::at(500000, 5300000)}});
    EXPECT_EQ(testing::error_of([&] { testing::add(server, "tree", {"label"}, {{{text("A1")}}}); }).trouble(),
              Trouble::input);
    const WeatherDay first{0, "Ridge", day("2026-04-01"), Celsius{1}, Celsius{9}, WeatherSource::forecast};
    auto second = first;
    second.source = WeatherSource::observed;
    EXPECT_EQ(write_weather(server, {first}, false).added, 1);
    EXPECT_EQ(write_weather(server, {second}, true).replaced, 1);

    const auto reading = read_book(server);
    EXPECT_EQ(reading.findings, Findings{});
    EXPECT_EQ(reading.orchard.crs, "EPSG:32632");
    ASSERT_EQ(reading.orchard.trees.size(), 1U);
    EXPECT_EQ(reading.orchard.trees[0].planted_on, day("2012-03-01"));
    EXPECT_EQ(reading.orchard.trees[0].purpose, TreePurpose::other);
    EXPECT_NEAR(reading.orchard.stations.at(0).latitude.value().degrees, 47.85334, 0.00001);
    EXPECT_EQ(reading.orchard.weather.at(0).source, WeatherSource::observed);

    for (const std::int64_t version : {1, 2}) {
        replace_results(server, std::array{windows(version)});
        const auto result = read_result(server, "bloom_window");
        ASSERT_TRUE(result);
        EXPECT_EQ(result->rows.at(0).cells, windows(version).rows[0].cells);
        EXPECT_EQ(result->shape.columns.at(3).unit, "d");
        EXPECT_EQ(result->shape.columns.at(1).label, "Full bloom");
    }
}

Table skill(const char* remark) {
    return {{.name = "bloom_skill",
             .title = "Skill",
             .description = "How good forecasts were.",
             .has_points = false,
             .columns = {{"method", CellType::text, "", "Method", "The method."},
                         {"remark", CellType::text, "", "Note", "A note."}}},
            {{{text("chill then heat"), text(remark)}}}};
}

void run_on_server(const std::string& location, const std::string& sql) {
    auto session = detail::open_session(location, detail::Purpose::writing);
    detail::run_sql(session, sql);
}

/// A book in a schema of its own, with one tree.
std::string book_in_schema(const std::string& name) {
    const char* server = std::getenv("PIPWARD_SERVER");
    if (server == nullptr) {
        return {};
    }
    run_on_server(server, "CREATE SCHEMA " + name);
    const auto location = std::string(server) + " active_schema=" + name;
    create_book(location, "EPSG:32632");
    testing::add(location, "tree", {"label"}, {{{text("A1")}, testing::at(500000, 5300000)}});
    return location;
}

/// The same book for another user, who can log in and no more.
std::string as_user(const std::string& location, const std::string& user, const std::string& schema) {
    run_on_server(location, "CREATE ROLE " + user + " LOGIN");
    run_on_server(location, "GRANT USAGE ON SCHEMA " + schema + " TO " + user);
    run_on_server(location, "GRANT SELECT ON ALL TABLES IN SCHEMA " + schema + " TO " + user);
    auto own = location;
    return own.replace(own.find("user=pipward"), std::string("user=pipward").size(), "user=" + user);
}

Entry stage(const char* on) {
    return {"bloom_observation", {{"tree", text("A1")}, {"observed_on", day(on)}, {"bbch", whole(61)}}};
}

#define NEED_SERVER(book)                                                  \
    if (book.empty()) {                                                    \
        GTEST_SKIP() << "PIPWARD_SERVER names no empty PostGIS database."; \
    }                                                                      \
    static_assert(true)

TEST(Server, ReplacesResultsWithoutPointsAsOftenAsOneLikes) {
    const auto book = book_in_schema("again");
    NEED_SERVER(book);
    for (const auto* remark : {"first", "second", "third"}) {
        replace_results(book, std::array{skill(remark), windows(1)});
        const auto result = read_result(book, "bloom_skill");
        ASSERT_TRUE(result);
        ASSERT_EQ(result->rows.size(), 1U);
        EXPECT_EQ(to_text(result->rows[0].cells[1]), remark);
    }
    auto wider = skill("fourth");
    wider.shape.columns.push_back({"seasons", CellType::whole, "", "Seasons", "How many."});
    wider.rows[0].cells.push_back(whole(5));
    replace_results(book, std::array{wider});
    EXPECT_EQ(read_result(book, "bloom_skill")->rows.at(0).cells.size(), 3U);
}

TEST(Server, APlannerWhoOwnsNothingReplacesResults) {
    const auto book = book_in_schema("planned");
    NEED_SERVER(book);
    replace_results(book, std::array{skill("owner"), windows(1)});
    const auto planner = as_user(book, "planner", "planned");
    run_on_server(book,
                  "GRANT INSERT, UPDATE, DELETE ON planned.bloom_skill, planned.bloom_window TO planner");
    replace_results(planner, std::array{skill("planner"), windows(2)});
    EXPECT_EQ(to_text(read_result(book, "bloom_skill")->rows.at(0).cells[1]), "planner");
    EXPECT_EQ(read_result(book, "bloom_window")->rows.at(0).cells[2], Cell{whole(2)});
}

TEST(Server, AReaderIsRefusedInWords) {
    const auto book = book_in_schema("readonly");
    NEED_SERVER(book);
    replace_results(book, std::array{skill("owner")});
    const auto reader = as_user(book, "reader", "readonly");
    EXPECT_EQ(read_book(reader).orchard.trees.size(), 1U);
    for (const auto& error :
         {testing::error_of([&] { add_entry(reader, stage("2026-04-20"), day("2026-06-01")); }),
          testing::error_of([&] { replace_results(reader, std::array{skill("reader")}); })}) {
        EXPECT_EQ(error.trouble(), Trouble::access);
        const auto& finding = error.findings().at(0);
        EXPECT_NE(finding.message.text().find("may not"), std::string::npos) << error.what();
        EXPECT_NE(finding.remedy.text().find("owner"), std::string::npos) << error.what();
        for (const auto* sql : {"INSERT", "SELECT", "DELETE", "disk"}) {
            EXPECT_EQ(std::string(error.what()).find(sql), std::string::npos) << error.what();
        }
    }
}

TEST(Server, WhoWritesAtOnceJudgesOneAfterTheOther) {
    const auto book = book_in_schema("busy");
    NEED_SERVER(book);
    std::vector<pid_t> children;
    for (int i = 0; i < 4; ++i) {
        children.push_back(fork());
        if (children.back() == 0) {
            int code = 1;
            in_one_change(book, [&](const BookAt& held) {
                code = read_book(held).orchard.bloom_observations.empty() ? 0 : 1;
                if (code == 0) {
                    add_entry(held, stage("2026-04-20"), day("2026-06-01"));
                }
            });
            _exit(code);
        }
    }
    int writers = 0;
    for (const auto child : children) {
        int status = 0;
        waitpid(child, &status, 0);
        writers += status == 0 ? 1 : 0;
    }
    EXPECT_EQ(writers, 1);
    EXPECT_EQ(read_book(book).orchard.bloom_observations.size(), 1U);
}

TEST(Server, AReadingSeesOneState) {
    const auto book = book_in_schema("snapshot");
    NEED_SERVER(book);
    std::vector<std::string> counts;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        for (int i = 0; i < 2; ++i) {
            counts.push_back(
                detail::query(session, "SELECT count(*) AS n FROM accession").at(0).at(0).value());
            run_on_server(
                book, "INSERT INTO accession (name, kind) VALUES ('R" + std::to_string(i) + "', 'cultivar')");
        }
    });
    EXPECT_EQ(counts, (std::vector<std::string>{"0", "0"}));
}

TEST(Server, ATriggerThatDropsRowsIsTold) {
    const auto book = book_in_schema("dropping");
    NEED_SERVER(book);
    run_on_server(
        book,
        "CREATE FUNCTION dropping.drop_it() RETURNS trigger LANGUAGE plpgsql AS 'BEGIN RETURN NULL; END'");
    run_on_server(
        book,
        "CREATE TRIGGER t BEFORE INSERT ON dropping.bloom_observation FOR EACH ROW EXECUTE FUNCTION "
        "dropping.drop_it()");
    EXPECT_EQ(testing::error_of([&] { add_entry(book, stage("2026-04-20"), day("2026-06-01")); }).trouble(),
              Trouble::access);
}

}  // namespace
}  // namespace pipward::book
