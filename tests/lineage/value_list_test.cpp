// SPDX-License-Identifier: MIT
#include "pipward/lineage/value_list.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "lineage/pedigrees.h"

namespace pipward::lineage {
namespace {

struct Made {
    Orchard orchard;
    PedigreeOrder order;
    TraitScores scores;
    BreedingValues values;
};

Made made() {
    testing::Pedigree pedigree;
    pedigree.add("Low");
    pedigree.add("High");
    pedigree.add("Child", "Low", "High");
    pedigree.add("Stranger");
    pedigree.add_sport("Red High", "High");
    Made made;
    made.orchard.accessions = pedigree.accessions;
    made.order = pedigree_order(made.orchard.accessions, {});
    made.scores.of = {{"Low", {2, 4}}, {"High", {8}}};
    made.values.values.resize(made.order.members.size());
    made.values.values[made.order.number.at("Low")] = {-1, 0.4};
    made.values.values[made.order.number.at("High")] = {1, 0.3};
    made.values.values[made.order.number.at("Child")] = {0, 0.2};
    return made;
}

ValueList list() {
    const auto all = made();
    return value_list(all.orchard, all.order, all.scores, all.values);
}

TEST(ValueList, TheHighestComesFirstAndEqualOnesShareARank) {
    const auto rows = list().listed;
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[0].rank, 1);
    EXPECT_EQ(rows[1].rank, 1);  // a sport has the value of its original
    EXPECT_EQ(rows[2].accession, "Child");
    EXPECT_EQ(rows[2].rank, 3);
    EXPECT_EQ(rows[3].accession, "Low");
}

TEST(ValueList, HasThePlainMeanOfOwnScores) {
    const auto rows = list().listed;
    EXPECT_EQ(rows[3].scores, 2);
    EXPECT_DOUBLE_EQ(*rows[3].mean, 3);
    EXPECT_FALSE(rows[2].mean);
    EXPECT_EQ(rows[2].remark.text(), "From its relatives only.");
}

TEST(ValueList, CountsWhomTheScoresTellNothingOf) {
    const auto all = list();
    EXPECT_EQ(all.left_out, 1U);
    EXPECT_EQ(std::ranges::find(all.listed, "Stranger", &ListedValue::accession), all.listed.end());
}

}  // namespace
}  // namespace pipward::lineage
