// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <pugixml.hpp>
#include <set>

#include "operation/sample_copy.h"
#include "paper/printing.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"
#include "pipward/paper/field_contents.h"

namespace pipward::operation {
namespace {

const Day today = parse_iso_day("2026-03-20").value();

Outcome mapped(const testing::SampleCopy& sample, Form form) {
    form["book"] = sample.book();
    form["as-of"] = "2026-03-20";
    return find_operation("field-map")->run(form, {});
}

std::string cell_text(const Outcome& outcome, std::size_t row, std::size_t column) {
    return to_text(outcome.tables[0].rows.at(row).cells.at(column));
}

TEST(FieldMap, ShowsTheOrchardOnOnePageOfARoundScaleWithEveryRowAndPosition) {
    NEED_SAMPLE();
    NEED_PROGRAM("pdftotext");
    const testing::SampleCopy sample;
    const auto outcome = mapped(sample, {{"block", "Upper"}});
    ASSERT_EQ(outcome.files.size(), 3U);
    ASSERT_EQ(outcome.tables[0].rows.size(), 1U);
    EXPECT_EQ(cell_text(outcome, 0, 1), "200");
    EXPECT_EQ(cell_text(outcome, 0, 2), "60");
    const testing::PrintedFile file(outcome.files[0].content);
    const auto words = testing::words_of(file);
    const auto count = [&](const std::string& word) {
        return std::ranges::count(words, word, &testing::PrintedWord::text);
    };
    EXPECT_EQ(count("row"), 10);  // five rows, both ends
    EXPECT_GE(count("12"), 5);
    EXPECT_EQ(count("N"), 1);
    EXPECT_EQ(count("Pollinizer"), 1);
    EXPECT_EQ(count("Parent"), 1);
    EXPECT_EQ(count("Seedling"), 1);
}

// Two trees of a row, measured on paper, against the distance that the book's coordinates give.
TEST(FieldMap, DistancesOnPaperAreThoseOnTheGround) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto orchard = book::read_book(sample.book()).orchard;
    std::vector<std::uint32_t> trees;
    for (std::uint32_t i = 0; i < orchard.trees.size(); ++i) {
        trees.push_back(i);
    }
    const auto map = paper::map_of(orchard, trees, today);
    EXPECT_TRUE(map.true_north);
    EXPECT_EQ(map.rows.size(), 10U);
    for (std::size_t i = 1; i < map.trees.size(); ++i) {
        const auto& a = *orchard.trees[i - 1].at;
        const auto& b = *orchard.trees[i].at;
        const double grid = std::hypot(a.x - b.x, a.y - b.y);
        const double plane = std::hypot(map.trees[i - 1].at.east - map.trees[i].at.east,
                                        map.trees[i - 1].at.north - map.trees[i].at.north);
        EXPECT_NEAR(plane, grid, 0.001 + grid * 0.0005);  // the grid's own scale is 0.9996
    }
}

TEST(FieldMap, GivesTheSameMapForABookInDegrees) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    auto orchard = book::read_book(sample.book()).orchard;
    std::vector<std::uint32_t> trees{0, 10, 40, 80, 100};
    const auto metres = paper::map_of(orchard, trees, today);
    const place::ToEarth to_earth(orchard.crs);
    for (auto& tree : orchard.trees) {
        const auto place = to_earth(*tree.at);
        tree.at = MapPoint{place->lon, place->lat, {}};
    }
    orchard.crs = "EPSG:4326";
    const auto degrees = paper::map_of(orchard, trees, today);
    for (std::size_t i = 1; i < trees.size(); ++i) {
        const auto way = [&](const paper::FieldMap& map) {
            return std::pair{map.trees[i].at.east - map.trees[0].at.east,
                             map.trees[i].at.north - map.trees[0].at.north};
        };
        EXPECT_NEAR(way(metres).first, way(degrees).first, 0.002);
        EXPECT_NEAR(way(metres).second, way(degrees).second, 0.002);
    }
}

TEST(FieldMap, GoesOverSeveralPagesWithAnOverviewWhereTheScaleAsksForIt) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = mapped(sample, {{"scale", "100"}});
    EXPECT_GT(outcome.tables[0].rows.size(), 2U);
    EXPECT_EQ(cell_text(outcome, 0, 3), "yes");
    EXPECT_EQ(cell_text(outcome, 0, 2), "121");
    EXPECT_EQ(cell_text(outcome, 1, 1), "100");
}

TEST(FieldMap, GivesReceiversEveryStandingTreeWithItsAddress) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = mapped(sample, {});
    pugi::xml_document gpx;
    ASSERT_TRUE(gpx.load_string(outcome.files[1].content.c_str()));
    const auto orchard = book::read_book(sample.book()).orchard;
    std::set<std::string> standing;
    for (const auto& tree : orchard.trees) {
        if (!tree.removed_on) {
            standing.insert(tree.label);
        }
    }
    std::set<std::string> points;
    const place::ToEarth to_earth(orchard.crs);
    for (const auto point : gpx.child("gpx").children("wpt")) {
        const std::string name = point.child_value("name");
        points.insert(name);
        const auto tree = std::ranges::find(orchard.trees, name, &Tree::label);
        ASSERT_NE(tree, orchard.trees.end());
        const place::LonLat there{point.attribute("lon").as_double(), point.attribute("lat").as_double()};
        EXPECT_LT(place::way_between(*to_earth(*tree->at), there).distance.value, 0.02);
        EXPECT_NE(std::string(point.child_value("desc")).find("block "), std::string::npos);
    }
    EXPECT_EQ(points, standing);
    pugi::xml_document kml;
    ASSERT_TRUE(kml.load_string(outcome.files[2].content.c_str()));
    EXPECT_EQ(kml.select_nodes("//Placemark").size(), standing.size());
    EXPECT_EQ(kml.select_nodes("//Folder").size(), 2U);
}

TEST(FieldMap, PutsAWalkIntoTheReceiversFiles) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = mapped(sample, {{"accessions", "Wrenlea"}, {"walk", "yes"}});
    pugi::xml_document gpx;
    ASSERT_TRUE(gpx.load_string(outcome.files[1].content.c_str()));
    const auto root = gpx.child("gpx");
    const auto points = std::distance(root.children("wpt").begin(), root.children("wpt").end());
    const auto route = root.child("rte").children("rtept");
    EXPECT_GT(points, 3);
    EXPECT_EQ(std::distance(route.begin(), route.end()), points);
}

TEST(FieldMap, SaysWhenThereIsNothingToDrawOrTooLittleRoom) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    EXPECT_THROW((void)mapped(sample, {{"block", "Nowhere"}}), Error);
    const auto outcome = mapped(sample, {{"scale", "5000"}});
    EXPECT_TRUE(std::ranges::any_of(outcome.findings, [](const Finding& f) {
        return std::string(f.message).find("marks touch") != std::string::npos;
    }));
}

TEST(FieldMap, TheSameBookOnTheSameDayIsTheSameFile) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    EXPECT_EQ(mapped(sample, {}).files[0].content, mapped(sample, {}).files[0].content);
}

}  // namespace
}  // namespace pipward::operation
