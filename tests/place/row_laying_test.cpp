// SPDX-License-Identifier: MIT
#include "pipward/place/row_laying.h"

#include <gtest/gtest.h>

namespace pipward::place {
namespace {

const ToEarth& utm() {
    static const ToEarth to_earth("EPSG:25832");
    return to_earth;
}

GroundLayer line_layer() {
    const std::vector<MapPoint> points{{522400, 5331200, {}}, {522440, 5331200, {}}};
    return {{{"feature 1", true, to_ground(points, utm()), {}}}, {}};
}

Orchard empty_orchard() {
    Orchard orchard;
    orchard.crs = "EPSG:25832";
    orchard.blocks = {{1, "Upper", {}}};
    TreeRow row;
    row.block = "Upper";
    row.name = "7";
    orchard.rows = {row};
    return orchard;
}

LayingWish wish_of(const std::string& block, const std::string& row) {
    LayingWish wish;
    wish.block = block;
    wish.row = row;
    wish.spacing = Metres{2};
    return wish;
}

std::string complaint(const LayingWish& wish) {
    Findings findings;
    (void)lay_rows(wish, line_layer(), empty_orchard(), findings);
    return findings.empty() ? "" : findings[0].message.text();
}

TEST(LayRows, LaysThemByTheWish) {
    Findings findings;
    const auto laid = lay_rows(wish_of("Upper", "8"), line_layer(), empty_orchard(), findings);
    EXPECT_TRUE(findings.empty());
    ASSERT_EQ(laid.size(), 1U);
    EXPECT_EQ(laid[0].name, "8");
    EXPECT_NEAR(static_cast<double>(laid[0].positions.size()), 21, 1);
}

TEST(LayRows, NeverUseANameThatIsTaken) {
    EXPECT_EQ(complaint(wish_of("Upper", "7")), "Block Upper has a row of this name already.");
}

TEST(LayRows, NeedABlockUnlessItIsToBeAdded) {
    auto wish = wish_of("Nursery", "1");
    EXPECT_EQ(complaint(wish), "The book has no block of this name.");
    wish.add_block = true;
    EXPECT_EQ(complaint(wish), "");
}

TEST(BoxAround, HoldsTheRowsWithRoomOnEverySide) {
    Findings findings;
    auto wish = wish_of("Upper", "8");
    wish.row_distance = Metres{4};
    const auto laid = lay_rows(wish, line_layer(), empty_orchard(), findings);
    const std::vector rows{record_of(laid.at(0), wish, utm())};
    EXPECT_EQ(rows[0].block, "Upper");
    EXPECT_EQ(rows[0].spacing->value, 2);
    const auto box = box_around(rows, wish, utm());
    // Half a row distance, 2 m, times 1.5 along the diagonals: 3 m * sin 45 degrees = 2.12 m on every side.
    EXPECT_NEAR(rows[0].line.front().x - box.low.x, 2.12, 0.1);
    EXPECT_NEAR(box.high.y - rows[0].line.front().y, 2.12, 0.1);
}

}  // namespace
}  // namespace pipward::place
