// SPDX-License-Identifier: MIT
#include "pipward/place/near_words.h"

#include <gtest/gtest.h>

#include "place/made_trees.h"

namespace pipward::place {
namespace {

Orchard asked_orchard() {
    Orchard orchard;
    orchard.trees = {testing::made_tree("UP-01-01", "Wrenlea", "Upper", "1", 1),
                     testing::made_tree("UP-01-02", "Wrenlea", "Upper", "1", 2)};
    return orchard;
}

NearSpots spots() {
    NearSpots near;
    near.spots.resize(3);
    near.spots[0].tree = 0;
    near.spots[0].probability = 0.6;
    near.spots[0].at = {0, 2};
    near.spots[1].tree = 1;
    near.spots[1].probability = 0.38;
    near.spots[2].kind = SpotKind::vacant;
    near.spots[2].row = RowName{"Upper", "1"};
    near.spots[2].position = 3;
    near.spots[2].probability = 0.02;
    return near;
}

TEST(ParseAnswers, TakesKeysWithYesOrNo) {
    const auto answers = parse_answers(" tree-ahead = no; label:UP-03-09=yes ;");
    ASSERT_TRUE(answers);
    EXPECT_EQ(answers->keys, (std::vector<std::string>{"tree-ahead", "label:UP-03-09"}));
    EXPECT_FALSE(answers->by_key.at("tree-ahead"));
    EXPECT_TRUE(answers->by_key.at("label:UP-03-09"));
    EXPECT_TRUE(parse_answers("")->keys.empty());
    EXPECT_FALSE(parse_answers("tree-ahead=perhaps"));
    EXPECT_FALSE(parse_answers("tree-ahead"));
}

TEST(AfterWords, NameTheLikeliestFirstAndNoneBelowFiveInAHundred) {
    const auto near = spots();
    EXPECT_EQ(after_words(near, {0.1, 0.86, 0.04}, asked_orchard()).text(), "UP-01-02 86 %, UP-01-01 10 %");
    EXPECT_EQ(after_words(near, {0, 0, 1}, asked_orchard()).text(),
              "the gap at block Upper, row 1, position 3 100 %");
}

TEST(DistanceWarning, TellsWhereNothingIsNearOrNothingNearEnough) {
    const NamedPlace named{"here", "48.1,9.3"};
    auto near = spots();
    EXPECT_FALSE(distance_warning(near, named));
    near.off = 3.5;
    ASSERT_TRUE(distance_warning(near, named));
    EXPECT_EQ(distance_warning(near, named)->field, "here");
    EXPECT_NE(distance_warning(near, named)->message.text().find("the most likely is 2.0 m away"),
              std::string::npos);
    EXPECT_EQ(distance_warning(NearSpots{}, named)->message.text(), "There is no tree near this position.");
}

TEST(NearSummary, AsksUnlessItIsSure) {
    NearQuestion question;
    question.words = say("Is the label UP-01-01?");
    auto near = spots();
    EXPECT_EQ(near_summary(near, {question}, asked_orchard()).text(),
              "Check: Is the label UP-01-01? So far 60 % for UP-01-01, 2.0 m to the north.");
    near.spots[0].probability = 0.96;
    EXPECT_EQ(near_summary(near, {question}, asked_orchard()).text(),
              "96 % for UP-01-01, 2.0 m to the north.");
}

}  // namespace
}  // namespace pipward::place
