// SPDX-License-Identifier: MIT
#include "pipward/place/address_order.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pipward::place {
namespace {

Tree tree(const std::string& label, const std::string& block, const std::string& row,
          std::optional<int> position) {
    Tree made;
    made.label = label;
    made.block = block.empty() ? std::nullopt : std::optional{block};
    made.row = row.empty() ? std::nullopt : std::optional{row};
    made.position = position;
    return made;
}

std::string ordered(const Orchard& orchard, LabelOrder order) {
    std::vector<std::uint32_t> all;
    for (std::uint32_t i = 0; i < orchard.trees.size(); ++i) {
        all.push_back(i);
    }
    std::string labels;
    for (const auto i : in_order(orchard, all, order)) {
        labels += orchard.trees[i].label;
    }
    return labels;
}

TEST(AddressOrder, CountsAsPeopleDo) {
    EXPECT_TRUE(counts_before("2", "10"));
    EXPECT_TRUE(counts_before("B9", "B10"));
    EXPECT_TRUE(counts_before("row 007", "row 8"));
    EXPECT_TRUE(counts_before("A", "B1"));
    EXPECT_TRUE(counts_before("12", "12a"));
    EXPECT_TRUE(counts_before("99999999999999999999998", "99999999999999999999999"));
    EXPECT_FALSE(counts_before("x", "x"));
}

// What sorting asks for: of two different texts exactly one comes first, and it is so along chains.
TEST(AddressOrder, IsAnOrder) {
    const std::vector<std::string> texts{"",  "0",  "00",  "1",   "01",  "10", "2",
                                         "a", "a1", "a01", "a1b", "a10", "ä",  "1a"};
    for (const auto& a : texts) {
        for (const auto& b : texts) {
            EXPECT_EQ(counts_before(a, b) || counts_before(b, a), a != b) << a << " " << b;
            EXPECT_FALSE(counts_before(a, b) && counts_before(b, a)) << a << " " << b;
            for (const auto& c : texts) {
                EXPECT_TRUE(!counts_before(a, b) || !counts_before(b, c) || counts_before(a, c))
                    << a << " " << b << " " << c;
            }
        }
    }
}

TEST(AddressOrder, GoesByBlockRowAndPositionAndPutsTheRestLast) {
    Orchard orchard;
    orchard.trees = {tree("g", "", "", {}),   tree("f", "B", "", {}),  tree("e", "B", "1", 1),
                     tree("d", "A", "10", 1), tree("c", "A", "2", 10), tree("b", "A", "2", 9),
                     tree("a", "A", "1", 5)};
    EXPECT_EQ(ordered(orchard, LabelOrder::address), "abcdefg");
    EXPECT_EQ(ordered(orchard, LabelOrder::to_and_fro), "acbdefg");
    EXPECT_EQ(ordered(orchard, LabelOrder::book), "gfedcba");
    EXPECT_EQ(ordered(orchard, LabelOrder::label), "abcdefg");
}

}  // namespace
}  // namespace pipward::place
