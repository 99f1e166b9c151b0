// SPDX-License-Identifier: MIT
#include "pipward/cross/suggestion.h"

#include <gtest/gtest.h>

#include <cmath>

#include "pipward/cross/detail/flowers_needed.h"

namespace pipward::cross {
namespace {

ParentCandidate parent(std::string name, double merit, const char* alleles = "", double doubt = 0.3) {
    ParentCandidate made;
    made.name = std::move(name);
    made.merit = merit;
    made.doubt = doubt;
    made.alleles = *alleles == '\0' ? std::nullopt : lineage::parse_s_alleles(alleles);
    made.genus = "Malus";
    return made;
}

SuggestionRules rules() {
    SuggestionRules made;
    made.additive_variance = 0.5;
    made.bar = 1.0;
    made.wanted = 1;
    made.confidence = 0.95;
    return made;
}

TEST(Suggestion, PutsTheSeedlingsAtTheMeanOfTheirParents) {
    const auto cross = weigh_cross({parent("A", 1.2), parent("B", 0.4)}, 0, 1, 0.0, rules());
    EXPECT_DOUBLE_EQ(*cross.mean, 0.8);
    EXPECT_DOUBLE_EQ(*cross.spread, std::sqrt(0.25));  // half the additive variance
    EXPECT_NEAR(*cross.doubt, std::hypot(0.3, 0.3) / 2, 1e-12);
    EXPECT_NEAR(*cross.share, 0.344578, 1e-5);  // standard normal above 0.4: any table of it
    EXPECT_EQ(cross.plants, detail::plants_needed(1, *cross.share, 0.95));
}

TEST(Suggestion, TakesTheParentsInbreedingOffTheSpread) {
    auto inbred = parent("A", 1);
    inbred.inbreeding = 0.5;
    const auto cross = weigh_cross({inbred, parent("B", 1)}, 0, 1, 0.0, rules());
    EXPECT_NEAR(*cross.spread, std::sqrt(0.25 * 0.75), 1e-12);
    inbred.inbreeding = 1;
    auto other = inbred;
    other.name = "C";
    const auto pure = weigh_cross({inbred, other}, 0, 1, 0.0, rules());
    EXPECT_DOUBLE_EQ(*pure.spread, 0) << "children of two pure lines are all alike";
}

TEST(Suggestion, ChangesNothingWhenParentsAreTurnedRound) {
    const std::vector<ParentCandidate> parents{parent("A", 1.2, "S1 S2"), parent("B", 0.4, "S2 S3")};
    const std::vector<ParentCandidate> turned{parents[1], parents[0]};
    const auto one = weigh_cross(parents, 0, 1, 0.1, rules());
    const auto other = weigh_cross(turned, 0, 1, 0.1, rules());
    EXPECT_EQ(one.mean, other.mean);
    EXPECT_EQ(one.plants, other.plants);
    EXPECT_EQ(one.by_one.match, other.by_other.match);
    EXPECT_EQ(one.left_out, other.left_out);
}

TEST(Suggestion, RanksByTheSeedlingsToGrowAndLeavesOutWhatCannotBe) {
    auto triploid = parent("T", 3);
    triploid.ploidy = 3;
    auto pear = parent("P", 3);
    pear.genus = "Pyrus";
    auto unknown = parent("U", 0);
    unknown.merit.reset();
    const std::vector<ParentCandidate> parents{parent("A", 1.2, "S1 S2"),
                                               parent("B", 0.4, "S3 S4"),
                                               parent("C", 0.9, "S1 S2"),
                                               triploid,
                                               pear,
                                               unknown};
    const auto crosses = suggest_crosses(parents, rules(), [](const auto& a, const auto& b) {
        return std::optional{(a == "B" && b == "C") || (a == "C" && b == "B") ? 0.25 : 0.0};
    });
    EXPECT_EQ(crosses.size(), 15U);
    EXPECT_EQ(crosses[0].left_out, LeftOut::no);
    EXPECT_EQ(crosses[0].one, 0U);
    EXPECT_EQ(crosses[0].other, 1U);
    const auto why = [&](std::size_t one, std::size_t other) {
        for (const auto& cross : crosses) {
            if (cross.one == one && cross.other == other) {
                return cross.left_out;
            }
        }
        return LeftOut::no;
    };
    EXPECT_EQ(why(0, 2), LeftOut::no_seed);
    EXPECT_EQ(why(1, 2), LeftOut::related);
    EXPECT_EQ(why(0, 3), LeftOut::triploid);
    EXPECT_EQ(why(0, 4), LeftOut::other_genus);
    EXPECT_EQ(why(0, 5), LeftOut::not_forecast);
}

TEST(Suggestion, SaysNothingOfSeedlingsWhereNoTraitWasWishedFor) {
    const auto cross = weigh_cross({parent("A", 1.2), parent("B", 0.4)}, 0, 1, 0.0, {});
    EXPECT_FALSE(cross.mean);
    EXPECT_FALSE(cross.plants);
    EXPECT_EQ(cross.left_out, LeftOut::no);
}

TEST(Suggestion, ABetterParentNeverAsksForMoreSeedlings) {
    int before = most_plants;
    for (double merit = -1; merit < 2; merit += 0.1) {
        const auto cross = weigh_cross({parent("A", merit), parent("B", 0.4)}, 0, 1, 0.0, rules());
        EXPECT_LE(cross.plants.value_or(most_plants), before);
        before = cross.plants.value_or(most_plants);
    }
    EXPECT_LT(before, 10);
}

}  // namespace
}  // namespace pipward::cross
