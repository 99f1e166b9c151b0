// SPDX-License-Identifier: MIT
#include "pipward/place/address.h"

#include <gtest/gtest.h>

namespace pipward::place {
namespace {

Tree tree_at(std::optional<std::string> block, std::optional<std::string> row, std::optional<int> position) {
    Tree tree;
    tree.block = std::move(block);
    tree.row = std::move(row);
    tree.position = position;
    return tree;
}

std::vector<TreeRow> row_from(int first_position) {
    TreeRow row;
    row.block = "Upper";
    row.name = "3";
    row.first_position = first_position;
    return {row};
}

TEST(Address, NamesBlockRowAndPosition) {
    EXPECT_EQ(address_of(tree_at("Upper", "3", 12), {}), "block Upper, row 3, position 12");
}

TEST(Address, LeavesOutWhatTheRecordDoesNotTell) {
    EXPECT_EQ(address_of(tree_at({}, "3", 12), {}), "row 3, position 12");
    EXPECT_EQ(address_of(tree_at("Upper", {}, {}), {}), "block Upper");
    EXPECT_EQ(address_of(tree_at({}, {}, {}), {}), "");
}

TEST(Address, DoesNotSayRowTwiceWhereTheNameSaysIt) {
    EXPECT_EQ(address_of(tree_at("Block C", "Row 3", 1), {}), "Block C, Row 3, position 1");
    EXPECT_EQ(address_of(tree_at("Blockhouse", "Rowan", 1), {}), "block Blockhouse, row Rowan, position 1");
}

TEST(Address, TellsThePlaceInARowThatDoesNotBeginWithOne) {
    EXPECT_EQ(address_of(tree_at("Upper", "3", 112), row_from(101)),
              "block Upper, row 3, position 112 (12th of the row)");
    EXPECT_EQ(address_of(tree_at("Upper", "3", 12), row_from(1)), "block Upper, row 3, position 12");
    EXPECT_EQ(address_of(tree_at("Lower", "3", 112), row_from(101)), "block Lower, row 3, position 112");
    EXPECT_EQ(address_of(tree_at("Upper", "3", 7), row_from(101)), "block Upper, row 3, position 7");
}

TEST(Ordinal, HasTheEndingThatIsSpoken) {
    EXPECT_EQ(ordinal(1), "1st");
    EXPECT_EQ(ordinal(2), "2nd");
    EXPECT_EQ(ordinal(3), "3rd");
    EXPECT_EQ(ordinal(11), "11th");
    EXPECT_EQ(ordinal(113), "113th");
    EXPECT_EQ(ordinal(122), "122nd");
}

}  // namespace
}  // namespace pipward::place
