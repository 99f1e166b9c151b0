// SPDX-License-Identifier: MIT
// The same book on a database server. Runs where PIPWARD_SERVER names an empty PostGIS database, which
// tests/server/with_server.sh makes.
#include <gtest/gtest.h>

#include <array>
#include <cstdlib>

#include "book/book_testing.h"

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

}  // namespace
}  // namespace pipward::book
