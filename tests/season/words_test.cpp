// SPDX-License-Identifier: MIT
#include "pipward/season/words.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pipward::season {
namespace {

TEST(ChanceWords, CountInTensBetweenTheEnds) {
    EXPECT_EQ(chance_words({0.83}), "8 in 10");
    EXPECT_EQ(chance_words({0.25}), "3 in 10");
    EXPECT_EQ(chance_words({0.05}), "1 in 10");
    EXPECT_EQ(chance_words({0.95}), "9 in 10");
}

TEST(ChanceWords, PromiseNeitherCertaintyNorImpossibilityForWhatIsOnlyNearThem) {
    EXPECT_EQ(chance_words({1.0}), "over 95 %");
    EXPECT_EQ(chance_words({0.951}), "over 95 %");
    EXPECT_EQ(chance_words({0.049}), "under 5 %");
    EXPECT_EQ(chance_words({0}), "impossible");
    EXPECT_EQ(chance_words({std::nan("")}), "not known");
}

TEST(ChanceWords, NeverFallAsTheChanceGrows) {
    int before = 0;
    for (int i = 0; i <= 1000; ++i) {
        const int tenths = chance_tenths({i / 1000.0});
        EXPECT_GE(tenths, before);
        EXPECT_LE(tenths, 10);
        before = tenths;
    }
    EXPECT_EQ(before, 10);
}

TEST(MilligramWords, ShowTenthsOnlyOfSmallAmounts) {
    EXPECT_EQ(milligram_words({3.46}), "3.5 mg");
    EXPECT_EQ(milligram_words({120.4}), "120 mg");
    EXPECT_EQ(milligram_words({0}), "");
    EXPECT_EQ(milligram_words({std::nan("")}), "");
}

TEST(Counted, KnowsOneFromMany) {
    EXPECT_EQ(flowers_words(1), "1 flower");
    EXPECT_EQ(flowers_words(0), "0 flowers");
}

TEST(SeasonWords, HaveWordsForEveryValue) {
    for (int i = 0; i < 4; ++i) {
        EXPECT_FALSE(way_words(static_cast<cross::PollenWay>(i)).empty());
        EXPECT_FALSE(s_match_words(static_cast<lineage::SMatch>(i)).empty());
        EXPECT_FALSE(urgency_words(static_cast<cross::Urgency>(i)).empty());
        EXPECT_FALSE(source_words(static_cast<bloom::NeedSource>(i)).empty());
        EXPECT_FALSE(store_words(static_cast<Store>(i)).empty());
        EXPECT_FALSE(method_words(static_cast<bloom::BloomMethod>(i)).empty());
    }
    EXPECT_EQ(way_words(cross::PollenWay::forced_branch), "force a cut branch");
    EXPECT_EQ(verdict_words(cross::Verdict::impossible), "impossible");
    EXPECT_EQ(urgency_words(cross::Urgency::too_late), "too late");
    EXPECT_EQ(store_words(Store::deep_freezer), "deep freezer");
}

TEST(SeasonWords, TellUnknownKinshipFromNone) {
    EXPECT_EQ(kinship_words(0.125), "kinship 0.125");
    EXPECT_EQ(kinship_words(0.0), "no kinship in the pedigree");
    EXPECT_EQ(kinship_words({}), "kinship not known");
}

}  // namespace
}  // namespace pipward::season
