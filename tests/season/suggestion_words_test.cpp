// SPDX-License-Identifier: MIT
#include "pipward/season/suggestion_words.h"

#include <gtest/gtest.h>

namespace pipward::season {
namespace {

SuggestionParents parents() {
    SuggestionParents made;
    made.candidates.resize(3);
    made.candidates[0].name = "A";
    made.candidates[1].name = "B";
    made.candidates[2].name = "C";
    made.bar_name = "A";
    return made;
}

WeighedCross weighed(std::size_t one, std::size_t other, std::optional<int> rank) {
    WeighedCross made;
    made.cross.one = one;
    made.cross.other = other;
    made.rank = rank;
    return made;
}

bool doubts(const Suggestion& suggestion, const char* words) {
    return suggestion.doubts.text().find(words) != std::string::npos;
}

TEST(SuggestedCrosses, AreTheRankedOnes) {
    const std::vector crosses{weighed(0, 1, 1), weighed(0, 2, std::nullopt), weighed(1, 2, 2)};
    const auto made = suggested_crosses(crosses, parents(), {});
    ASSERT_EQ(made.size(), 2U);
    EXPECT_EQ(made[1].seed_parent, "B");
    EXPECT_EQ(made[1].pollen_parent, "C");
    EXPECT_FALSE(made[1].way());
    EXPECT_TRUE(doubts(made[0], "Whether their bloom overlaps was not calculated."));
    EXPECT_TRUE(doubts(made[0], "Kinship of the parents is not known."));
}

TEST(SuggestedCrosses, DoubtWhereTheNextIsAsGood) {
    std::vector crosses{weighed(0, 1, 1), weighed(1, 2, 2)};
    crosses[0].cross.mean = 1.0;
    crosses[0].cross.doubt = 0.3;
    crosses[1].cross.mean = 0.8;
    crosses[1].cross.doubt = 0.4;  // together 0.5: more than the 0.2 between them
    EXPECT_TRUE(
        doubts(suggested_crosses(crosses, parents(), {})[0], "Not significantly better than the next"));
    crosses[1].cross.mean = 0.4;
    EXPECT_FALSE(
        doubts(suggested_crosses(crosses, parents(), {})[0], "Not significantly better than the next"));
}

TEST(SuggestionSummary, CountsPairsAndNamesTheBarOfAWish) {
    const std::vector crosses{weighed(0, 1, 1), weighed(0, 2, std::nullopt)};
    cross::SuggestionRules rules;
    rules.additive_variance = 0;
    EXPECT_EQ(suggestion_summary(crosses, parents(), rules).text(),
              "Of 2 pairs of 3 parents 1 are suggested.");
    rules.additive_variance = 0.4;
    EXPECT_NE(suggestion_summary(crosses, parents(), rules).text().find("Wanted seedlings exceed A."),
              std::string::npos);
}

}  // namespace
}  // namespace pipward::season
