// SPDX-License-Identifier: MIT
#include "pipward/place/tree_choice.h"

#include <gtest/gtest.h>

#include "place/made_trees.h"

namespace pipward::place {
namespace {

const Day today = *parse_iso_day("2026-03-20");

Orchard choice_orchard() {
    Orchard orchard;
    for (int i = 1; i <= 4; ++i) {
        orchard.trees.push_back(
            testing::made_tree("UP-01-0" + std::to_string(i), i % 2 == 0 ? "Even" : "Odd", "Upper", "1", i));
    }
    orchard.trees[2].removed_on = *parse_iso_day("2025-01-01");
    orchard.trees[3].planted_on = *parse_iso_day("2027-01-01");
    return orchard;
}

std::vector<std::uint32_t> chosen(const TreeChoice& choice, Findings& findings,
                                  const TreeDemand& demand = {.as_of = today}) {
    return chosen_trees(choice_orchard(), choice, demand, findings);
}

TEST(ChosenTrees, StandOnTheDayUnlessOthersAreWanted) {
    Findings findings;
    EXPECT_EQ(chosen({}, findings), (std::vector<std::uint32_t>{0, 1}));
    EXPECT_EQ(chosen({}, findings, {.as_of = today, .removed_too = true}),
              (std::vector<std::uint32_t>{0, 1, 2}));
    EXPECT_EQ(chosen({}, findings, {.as_of = today, .to_come_too = true}),
              (std::vector<std::uint32_t>{0, 1, 3}));
    EXPECT_TRUE(findings.empty());
}

TEST(ChosenTrees, FitAllThatIsGiven) {
    Findings findings;
    TreeChoice choice;
    choice.accession = "Even";
    EXPECT_EQ(chosen(choice, findings), (std::vector<std::uint32_t>{1}));
    choice.block = "Lower";
    EXPECT_TRUE(chosen(choice, findings).empty());
}

TEST(ChosenTrees, AreAmongTheLabelsGiven) {
    Findings findings;
    TreeChoice choice;
    choice.among = std::set<std::string>{"UP-01-02", "UP-01-03"};
    EXPECT_FALSE(choice.is_empty());
    EXPECT_EQ(chosen(choice, findings), (std::vector<std::uint32_t>{1}));
}

TEST(ChosenTrees, NamedOnesThatDoNotStandAreTold) {
    Findings findings;
    TreeChoice choice;
    choice.labels = "UP-01-04, UP-01-03; UP-01-01";
    EXPECT_EQ(chosen(choice, findings), (std::vector<std::uint32_t>{0}));
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_EQ(findings[0].message.text(), "The tree was removed: it is left out.");
    EXPECT_EQ(findings[1].message.text(), "The tree is not planted yet: it is left out.");
}

TEST(ChosenTrees, ALabelThatNoTreeHasIsAnError) {
    Findings findings;
    TreeChoice choice;
    choice.labels = "UP-01-09";
    EXPECT_TRUE(chosen(choice, findings).empty());
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].level, Level::error);
    EXPECT_EQ(findings[0].value, "UP-01-09");
}

}  // namespace
}  // namespace pipward::place
