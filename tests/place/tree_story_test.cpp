// SPDX-License-Identifier: MIT
#include "pipward/place/tree_story.h"

#include <gtest/gtest.h>

#include "place/made_trees.h"

namespace pipward::place {
namespace {

Day on(int year, int month, int day) {
    return *make_day({year, month, day});
}

BloomObservation seen(std::optional<std::string> tree, std::optional<std::string> accession, Day day,
                      int stage) {
    BloomObservation remark;
    remark.tree = std::move(tree);
    remark.accession = std::move(accession);
    remark.observed_on = day;
    remark.bbch = Bbch{stage};
    return remark;
}

TraitScore score(const std::string& tree, Day day, const std::string& trait, double value) {
    TraitScore scored;
    scored.tree = tree;
    scored.scored_on = day;
    scored.trait = trait;
    scored.score = value;
    return scored;
}

Orchard told() {
    auto orchard = testing::made_orchard();
    orchard.pollinations[0].pollinated_on = on(2016, 5, 3);
    orchard.pollinations[0].flowers = 58;
    orchard.bloom_observations = {seen("UP-01-02", {}, on(2025, 5, 4), 65),
                                  seen({}, "Tansy Lane", on(2024, 4, 30), 61),
                                  seen("UP-01-01", {}, on(2025, 5, 5), 67)};
    orchard.trait_scores = {score("UP-01-02", on(2024, 9, 20), "taste", 7.5),
                            score("UP-01-02", on(2024, 9, 20), "fruit_mass_g", 163)};
    return orchard;
}

TEST(StandingOf, TellsWhenATreeWentAndWhy) {
    const auto orchard = testing::made_orchard();
    EXPECT_EQ(standing_of(orchard.trees[0], on(2021, 11, 18)), "removed 2021-11-18: Roots eaten by voles.");
    EXPECT_EQ(standing_of(orchard.trees[3], on(2021, 11, 18)), "standing");
}

TEST(StandingOf, AsksTheDay) {
    auto orchard = testing::made_orchard();
    EXPECT_EQ(standing_of(orchard.trees[0], on(2021, 11, 17)), "standing");
    orchard.trees[0].planted_on = on(2012, 3, 1);
    EXPECT_EQ(standing_of(orchard.trees[0], on(2012, 2, 29)), "to be planted 2012-03-01");
}

TEST(StoryOf, TellsTheNewestFirstOfThisTreeAndOfItsAccession) {
    const auto orchard = told();
    const auto story = story_of(orchard, orchard.trees[1], 10);
    ASSERT_EQ(story.size(), 4U);
    EXPECT_EQ(story[0].day, on(2025, 5, 4));
    EXPECT_NE(story[0].words.text().find("(BBCH 65)"), std::string::npos);
    EXPECT_EQ(story[1].words, "taste 7.5, fruit mass g 163");
    EXPECT_EQ(story[2].kind, TreeEventKind::bloom);
    EXPECT_EQ(story[3].words, "58 flowers pollinated for 16-01, tag 16-01-a");
}

TEST(StoryOf, StopsAtTheLimit) {
    const auto orchard = told();
    EXPECT_EQ(story_of(orchard, orchard.trees[1], 2).size(), 2U);
    EXPECT_TRUE(story_of(orchard, orchard.trees[4], 10).empty());
}

}  // namespace
}  // namespace pipward::place
