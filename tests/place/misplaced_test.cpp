// SPDX-License-Identifier: MIT
// One sound orchard; each test puts something where it cannot stand.
#include "pipward/place/misplaced.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "pipward/place/earth.h"

namespace pipward::place {
namespace {

/// `count` trees in rows of 25, 1.5 by 4 m, numbered from `first`; about `corner`, in the orchard's system.
void plant(Orchard& orchard, const std::string& block, MapPoint corner, int count) {
    const bool degrees = orchard.crs == "EPSG:4326";
    const double unit = degrees ? 1.0 / 100'000 : 1;
    for (int i = 0; i < count; ++i) {
        Tree tree;
        tree.label = fmt::format("{}-{}", block, i);
        tree.block = block;
        tree.at = MapPoint{corner.x + 1.5 * (i % 25) * unit, corner.y + 4.0 * (i / 25) * unit, Metres{240}};
        orchard.trees.push_back(tree);
    }
}

/// Two orchards 300 km apart, each with blocks, drawn rows and a station; in UTM zone 32.
Orchard two_orchards() {
    Orchard orchard;
    orchard.crs = "EPSG:25832";
    plant(orchard, "North", {500'000, 5'300'000, {}}, 400);
    plant(orchard, "Hill", {502'500, 5'301'200, {}}, 150);
    plant(orchard, "Lake", {520'000, 5'600'000, {}}, 300);
    orchard.rows = {
        {1, "North", "1", Metres{1.5}, 1, {}, {{500'000, 5'300'000, {}}, {500'036, 5'300'000, {}}}}};
    orchard.stations = {{1, "Ridge", Metres{300}, MapPoint{503'000, 5'290'000, {}}, Latitude{47.8}},
                        {2, "Shore", Metres{80}, MapPoint{521'000, 5'602'000, {}}, Latitude{50.5}}};
    return orchard;
}

void expect_one(const Orchard& orchard, const std::string& table, const std::string& row,
                const std::string& words) {
    const auto findings = check_places(orchard);
    ASSERT_EQ(findings.size(), 1u) << words;
    EXPECT_EQ(findings[0].table, table);
    EXPECT_EQ(findings[0].row, row);
    EXPECT_NE(findings[0].message.text().find(words), std::string::npos) << findings[0].message.text();
    EXPECT_EQ(findings[0].level, Level::warning);
    EXPECT_FALSE(findings[0].remedy.empty());
}

TEST(Misplaced, TwoOrchardsFarApartAreNothingOdd) {
    auto orchard = two_orchards();
    EXPECT_TRUE(check_places(orchard).empty());
    orchard.stations.pop_back();  // the weather of one serves both
    EXPECT_TRUE(check_places(orchard).empty());
    orchard.stations.clear();
    EXPECT_TRUE(check_places(orchard).empty());
}

TEST(Misplaced, AnOrchardInDegreesAndABookWithoutPlacesAreNothingOdd) {
    Orchard orchard;
    orchard.crs = "EPSG:4326";
    plant(orchard, "North", {11.57, 48.13, {}}, 300);
    orchard.stations = {{1, "Ridge", Metres{500}, MapPoint{11.6, 48.1, {}}, Latitude{48.1}}};
    EXPECT_TRUE(check_places(orchard).empty());
    EXPECT_TRUE(check_places({}).empty());
}

TEST(Misplaced, ATreeAtNoughtNought) {
    auto orchard = two_orchards();
    orchard.trees[7].at = MapPoint{0, 0, {}};
    expect_one(orchard, "tree", "North-7", "It lies at 0, 0");
    orchard.stations[0].at = MapPoint{0, 0, {}};
    EXPECT_EQ(check_places(orchard).size(), 2u);
}

TEST(Misplaced, DegreesAmongMetres) {
    auto orchard = two_orchards();
    for (std::size_t i = 0; i < 10; ++i) {
        orchard.trees[i].at = MapPoint{9.0 + 0.0001 * static_cast<double>(i), 47.85, {}};
    }
    expect_one(orchard, "tree", "North-0 ...", "look like degrees, but EPSG:25832 counts metres");
}

TEST(Misplaced, ExchangedCoordinates) {
    auto orchard = two_orchards();
    for (std::size_t i = 0; i < 10; ++i) {
        std::swap(orchard.trees[i].at->x, orchard.trees[i].at->y);
    }
    const auto findings = check_places(orchard);
    ASSERT_FALSE(findings.empty());
    Orchard degrees;
    degrees.crs = "EPSG:4326";
    plant(degrees, "North", {11.57, 48.13, {}}, 300);
    degrees.trees[5].at = MapPoint{48.13, 11.57, {}};
    expect_one(degrees, "tree", "North-5", "exchanged");
}

TEST(Misplaced, ATreeFarFromItsBlock) {
    auto orchard = two_orchards();
    orchard.trees[3].at->y += 100'000;
    expect_one(orchard, "tree", "North-3", "km from the other trees of block North");
    for (std::size_t i = 0; i < 60; ++i) {
        orchard.trees[400 + i].at->x += 20'000;
    }
    const auto findings = check_places(orchard);
    ASSERT_EQ(findings.size(), 2u);
    EXPECT_NE(findings[0].message.text().find("60 lie up to 20 km from the other trees of block Hill"),
              std::string::npos)
        << findings[0].message.text();
}

TEST(Misplaced, ALoneTreeWithoutABlock) {
    auto orchard = two_orchards();
    Tree tree;
    tree.label = "Stray";
    tree.at = MapPoint{500'000, 5'450'000, {}};
    orchard.trees.push_back(tree);
    expect_one(orchard, "tree", "Stray", "km from every other tree");
}

TEST(Misplaced, AllTreesFarFromEveryStation) {
    auto orchard = two_orchards();
    for (auto& tree : orchard.trees) {
        tree.at->x -= 180'000;
        tree.at->y -= 700'000;
    }
    const auto findings = check_places(orchard);
    ASSERT_EQ(findings.size(), 1u);
    EXPECT_NE(findings[0].message.text().find("from every station"), std::string::npos);
}

TEST(Misplaced, AllTreesAtOnePoint) {
    auto orchard = two_orchards();
    for (std::size_t i = 0; i < 400; ++i) {
        orchard.trees[i].at = MapPoint{500'000, 5'300'000, {}};
    }
    expect_one(orchard, "tree", "North-0 ...", "400 trees stand at one and the same point");
}

TEST(Misplaced, AllTreesAtAnAbsurdHeight) {
    auto orchard = two_orchards();
    for (auto& tree : orchard.trees) {
        tree.at->height = Metres{6'000};
    }
    expect_one(orchard, "tree", "North-0 ...", "850 stand more than 1500 m above or below every station");
}

TEST(Misplaced, ATreeThatIsNowhere) {
    auto orchard = two_orchards();
    orchard.trees[3].at = MapPoint{1e300, 1e300, {}};
    expect_one(orchard, "tree", "North-3", "no location on the earth");
}

TEST(Misplaced, RowsWithoutLengthAndOfAThousandKilometres) {
    auto orchard = two_orchards();
    orchard.rows.push_back(
        {2, "North", "2", Metres{1.5}, 1, {}, {{500'000, 5'300'004, {}}, {500'000, 5'300'004, {}}}});
    expect_one(orchard, "tree_row", "North 2", "has no length");
    orchard.rows.back().line[1].y += 1'000'000;
    expect_one(orchard, "tree_row", "North 2", "longer than 10 km");
}

}  // namespace
}  // namespace pipward::place
