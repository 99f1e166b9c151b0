// SPDX-License-Identifier: MIT
#include "pipward/lineage/relation.h"

#include <gtest/gtest.h>

#include "lineage/pedigree_maker.h"
#include "pipward/lineage/kinship_factors.h"

namespace pipward::lineage {
namespace {

using testing::child_of;

std::string relation(const std::string& one, const std::string& other) {
    auto big = child_of("big", "a", "b");
    big.ploidy = 3;
    const std::vector accessions{child_of("sib1", "a", "b"),      child_of("sib2", "b", "a"),
                                 child_of("half", "a", "c"),      child_of("selfed", "a", "a"),
                                 child_of("grand", "sib1", "d"),  testing::sport_of("red a", "a"),
                                 child_of("mix1", "a", "Mix"),    child_of("mix2", "a", "Mix"),
                                 child_of("cousin", "sib2", "e"), big};
    const std::vector<BlendMember> blends{{0, "Mix", "x", {}}, {0, "Mix", "c", {}}};
    const auto order = pedigree_order(accessions, blends);
    const std::vector row{order.number.at(one)};
    const std::vector column{order.number.at(other)};
    const bool calculated = order.members[row[0]].calculated && order.members[column[0]].calculated;
    const double kinship = kinship_block(kinship_factors(order.members), row, column)[0];
    return std::string(
        to_word(relation_of(order, row[0], column[0], calculated ? std::optional{kinship} : std::nullopt)));
}

TEST(Relation, IsTheNearestByTheRecordedParents) {
    EXPECT_EQ(relation("a", "red a"), "same");
    EXPECT_EQ(relation("red a", "sib1"), "parent");
    EXPECT_EQ(relation("sib1", "a"), "child");
    EXPECT_EQ(relation("selfed", "a"), "selfed");
    EXPECT_EQ(relation("a", "selfed"), "selfed_to");
    EXPECT_EQ(relation("sib1", "sib2"), "full_sibs");
    EXPECT_EQ(relation("sib1", "half"), "half_sibs");
    EXPECT_EQ(relation("a", "grand"), "grandparent");
    EXPECT_EQ(relation("grand", "b"), "grandchild");
    EXPECT_EQ(relation("grand", "cousin"), "related");
    EXPECT_EQ(relation("c", "sib1"), "unrelated");
    EXPECT_EQ(relation("a", "b"), "unknown");
}

TEST(Relation, ByABlendIsOnlyPossible) {
    EXPECT_EQ(relation("mix1", "mix2"), "blend_sibs");
    EXPECT_EQ(relation("c", "mix1"), "possible_parent");
    EXPECT_EQ(relation("mix1", "x"), "possible_child");
    EXPECT_EQ(relation("mix1", "half"), "half_sibs");
}

TEST(Relation, OfATriploidIsWhatItsParentsTellAndNoMore) {
    EXPECT_EQ(relation("big", "a"), "child");
    EXPECT_EQ(relation("big", "sib1"), "full_sibs");
    EXPECT_EQ(relation("big", "c"), "unknown");
}

}  // namespace
}  // namespace pipward::lineage
