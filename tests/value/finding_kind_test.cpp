// SPDX-License-Identifier: MIT
#include "pipward/value/finding_kind.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

Finding missing_day(int number) {
    return {
        Level::warning,   "temperature", "", "", "", say("The {}th day of {{station}} is missing.", number),
        say("Import it.")};
}

std::vector<std::size_t> sizes_of(const Findings& findings) {
    std::vector<std::size_t> sizes;
    for (const auto& kind : by_kind(findings)) {
        sizes.push_back(kind.findings.size());
    }
    return sizes;
}

TEST(FindingKinds, AreTheFormsOfTheMessages) {
    auto other = missing_day(3);
    other.message = say("Season {} is short.", 2014);
    EXPECT_EQ(sizes_of({missing_day(1), other, missing_day(2)}), (std::vector<std::size_t>{2, 1}));
}

TEST(FindingKinds, AreAtOnePlaceAndOfOneLevel) {
    auto elsewhere = missing_day(2);
    elsewhere.table = "tree";
    auto of_a_column = missing_day(3);
    of_a_column.field = "t_min";
    auto weightier = missing_day(4);
    weightier.level = Level::error;
    EXPECT_EQ(sizes_of({missing_day(1), elsewhere, of_a_column, weightier}),
              (std::vector<std::size_t>{1, 1, 1, 1}));
}

TEST(FindingKinds, AreToldApartByWordsThatAreNotOfAForm) {
    auto one = missing_day(1);
    one.message = verbatim("One.");
    auto other = missing_day(1);
    other.message = verbatim("Other.");
    EXPECT_EQ(sizes_of({one, other, one}), (std::vector<std::size_t>{2, 1}));
}

TEST(FindingKinds, SurviveBeingSaidInEnglishByAHost) {
    EXPECT_EQ(sizes_of(spoken({missing_day(1), missing_day(2)}, in_english)), std::vector<std::size_t>{2});
}

TEST(FindingKinds, LoseNoFinding) {
    const Findings findings{missing_day(1), missing_day(2), missing_day(3)};
    const auto kinds = by_kind(findings);
    ASSERT_EQ(kinds.size(), 1U);
    EXPECT_EQ(kinds.front().findings, findings);
    EXPECT_TRUE(by_kind({}).empty());
}

}  // namespace
}  // namespace pipward
