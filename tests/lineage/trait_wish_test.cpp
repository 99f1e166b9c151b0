// SPDX-License-Identifier: MIT
#include "pipward/lineage/trait_wish.h"

#include <gtest/gtest.h>

namespace pipward::lineage {
namespace {

TEST(TraitWish, ReadsWeightsAndBounds) {
    const auto weights = parse_weights(" taste = 2 ; scab=-1;; fruit mass");
    ASSERT_TRUE(weights);
    ASSERT_EQ(weights->size(), 3U);
    EXPECT_EQ((*weights)[0].trait, "taste");
    EXPECT_EQ((*weights)[1].weight, -1);
    EXPECT_EQ((*weights)[2].weight, 1);
    for (const auto* wrong : {"taste=", "=2", "taste=0", "taste=1; taste=2", "taste=1x"}) {
        EXPECT_FALSE(parse_weights(wrong)) << wrong;
    }
    EXPECT_FALSE(parse_shown("taste"));
    EXPECT_FALSE(parse_shown("taste>7"));
    EXPECT_FALSE(parse_shown(">=7"));
    const auto shown = parse_shown("scab <= 3");
    ASSERT_TRUE(shown);
    EXPECT_FALSE(shown->at_least);
    EXPECT_EQ(shown->bound, 3);
}

TEST(TraitWish, FindsATraitInAParentToo) {
    Orchard book;
    for (const auto* name : {"Child", "Mother", "Father"}) {
        Accession accession;
        accession.name = name;
        book.accessions.push_back(accession);
        Tree tree;
        tree.label = std::string("T-") + name;
        tree.accession = name;
        book.trees.push_back(tree);
    }
    book.accessions[0].seed_parent = "Mother";
    book.accessions[0].pollen_parent = "Father";
    TraitScore score;
    score.tree = "T-Father";
    score.scored_on = *parse_iso_day("2025-09-01");
    score.trait = "taste";
    score.score = 8;
    book.trait_scores = {score};
    const auto means = own_means(book, "taste", *parse_iso_day("2026-01-01"));
    EXPECT_EQ(shown_by(OrchardIndex(book), means, {"taste", true, 7}, "Child"), "Father");
    EXPECT_EQ(shown_by(OrchardIndex(book), means, {"taste", true, 7}, "Mother"), std::nullopt);
    EXPECT_TRUE(own_means(book, "taste", *parse_iso_day("2025-01-01")).empty());
}

}  // namespace
}  // namespace pipward::lineage
