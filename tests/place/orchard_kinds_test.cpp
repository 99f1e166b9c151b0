// SPDX-License-Identifier: MIT
// Every kind of the table, told nothing and told all: never silently wrong, and right where it should be.
#include "place/orchard_kinds.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace pipward::testing {
namespace {

class EveryKind : public ::testing::TestWithParam<OrchardKind> {};

TEST_P(EveryKind, IsNeverSilentlyWrong) {
    for (const auto& told : {Told{"nothing"}, Told{"all", true, true, true}}) {
        for (const double noise : {0.05, 0.125}) {
            const auto orchard = planted(GetParam(), {NoiseModel::white, noise, 11});
            const auto count =
                count_of(orchard, place::recover_rows(orchard.seen, rule_of(GetParam(), told)).trees);
            EXPECT_LE(count.wrong, GetParam().interplants > 0 ? 2 : 0) << told.name << ", noise " << noise;
        }
    }
}

TEST_P(EveryKind, IsRightAtTheLatestWithOneAnswer) {
    static const std::set<std::string_view> goal{"even",      "gently bent", "contour",
                                                 "fan",       "terraces",    "S of 3 m",
                                                 "staggered", "cut corner",  "interplants"};
    // A corner cut aslant stays open on this survey even after the answer; on others (seed 1) it does not.
    if (!goal.contains(GetParam().family) || GetParam().name == std::string_view("cut corner, slanting")) {
        GTEST_SKIP() << "may stay open";
    }
    const auto orchard = planted(GetParam(), {NoiseModel::white, 0.05, 11});
    const auto got = place::recover_rows(orchard.seen, rule_of(GetParam(), {"nothing"}));
    const auto count = count_of(orchard, answered(orchard, got));
    EXPECT_GE(count.right, 0.95 * count.trees());
    EXPECT_EQ(count.wrong, 0);
}

INSTANTIATE_TEST_SUITE_P(Orchards, EveryKind,
                         ::testing::ValuesIn(orchard_kinds().begin(), orchard_kinds().end()),
                         [](const auto& kind) {
                             std::string name(kind.param.name);
                             std::ranges::replace_if(
                                 name,
                                 [](char c) { return std::isalnum(static_cast<unsigned char>(c)) == 0; },
                                 '_');
                             return name;
                         });

TEST(RecoverRows, DecidesNothingInAWood) {
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        const auto orchard = wood(300, 0.9 * static_cast<double>(seed % 3), seed);
        for (const auto& told : all_told()) {
            const auto got = place::recover_rows(orchard.seen, rule_of(orchard_kinds().front(), told));
            EXPECT_EQ(count_of(orchard, got.trees).wrong, 0) << told.name << ", seed " << seed;
        }
    }
}

}  // namespace
}  // namespace pipward::testing
