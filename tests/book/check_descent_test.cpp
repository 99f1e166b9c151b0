// SPDX-License-Identifier: MIT
// Parents, children and sports: each test spoils one thing of a sound line.
#include <gtest/gtest.h>

#include "book/book_testing.h"
#include "pipward/book/detail/check.h"

namespace pipward::book {
namespace {

using testing::day;
using testing::has;

Accession bred(const char* name, std::optional<std::string> seed = {},
               std::optional<std::string> pollen = {}) {
    Accession it;
    it.name = name;
    it.seed_parent = std::move(seed);
    it.pollen_parent = std::move(pollen);
    return it;
}

CrossGoal crossed(const char* code, int year, const char* seed, const char* pollen) {
    CrossGoal goal;
    goal.code = code;
    goal.season = Season{year};
    goal.seed_parent = seed;
    goal.pollen_parent = pollen;
    return goal;
}

Tree planted(const char* label, const char* accession, const char* on) {
    Tree it;
    it.label = label;
    it.accession = accession;
    it.planted_on = day(on);
    return it;
}

class CheckDescent : public ::testing::Test {
  protected:
    CheckDescent() {
        o.accessions = {bred("A"), bred("B"), bred("16-01-04", "A", "B"), bred("C", "16-01-04", "A"),
                        bred("Red A")};
        o.accessions[4].sport_of = "A";
        o.goals = {crossed("16-01", 2016, "A", "B"), crossed("20-01", 2020, "16-01-04", "A")};
        o.trees = {planted("t1", "C", "2019-04-01")};
        o.blend_members.push_back({1, "Mix", "16-01-04", {}});
    }
    Findings check() const {
        Findings findings;
        detail::check_pedigree(o, findings);
        detail::check_descent(OrchardIndex(o), findings);
        return findings;
    }
    void expect_only(const testing::WantedFinding& wanted) const {
        const auto found = check();
        EXPECT_EQ(found.size(), 1U);
        EXPECT_TRUE(has(found, wanted));
        for (const auto& finding : found) {
            EXPECT_FALSE(finding.remedy.empty());
        }
    }
    Orchard o;
};

TEST_F(CheckDescent, FindsNothingInASoundLine) {
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckDescent, AParentThatWasBredInTheSeasonOfItsChildOrLater) {
    o.goals[1].season = Season{2016};
    expect_only({Level::error, "cross_goal", "20-01", "seed_parent", "16-01-04",
                 "came from cross 16-01 of 2016, and this cross is of 2016", "season of one of the crosses"});
    o.goals[1].season = Season{2012};
    expect_only(
        {Level::error, "cross_goal", "20-01", "seed_parent", "16-01-04", "younger than its offspring", ""});
}

TEST_F(CheckDescent, AParentThatCanHardlyHaveFloweredYet) {
    o.goals[1].season = Season{2019};
    expect_only({Level::warning, "cross_goal", "20-01", "seed_parent", "16-01-04",
                 "earliest known first fruit is three years after sowing, in 2020", "has flowers"});
}

TEST_F(CheckDescent, AMemberOfABlendThatIsTooYoung) {
    o.goals[1] = crossed("15-01", 2015, "A", "Mix");
    expect_only(
        {Level::error, "cross_goal", "15-01", "pollen_parent", "16-01-04", "younger than its offspring", ""});
}

TEST_F(CheckDescent, ANameAloneDoesNotMakeASeedlingOfACross) {
    o.accessions[2].pollen_parent = "C";  // not the parents of cross 16-01
    o.accessions[3].seed_parent.reset();
    o.goals[1].season = Season{2012};
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckDescent, ATreeThatStoodBeforeItsParentWasBred) {
    o.trees.push_back(planted("t0", "C", "2010-04-01"));
    expect_only({Level::warning, "accession", "C", "seed_parent", "16-01-04",
                 "Its tree t0 was planted on 2010-04-01, before its parent's cross 16-01 of 2016",
                 "planting"});
}

TEST_F(CheckDescent, ARegraftedTreeProvesNothing) {
    o.trees = {planted("t1", "A", "2024-04-01"), planted("t2", "16-01-04", "2023-04-01"),
               planted("t3", "C", "2022-04-01")};
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckDescent, ASportOfItself) {
    o.accessions[4].sport_of = "Red A";
    expect_only({Level::error, "accession", "Red A", "sport_of", "Red A", "a sport of itself", "came from"});
}

TEST_F(CheckDescent, SportsInACircle) {
    o.accessions[0].sport_of = "Red A";
    expect_only(
        {Level::error, "accession", "A", "sport_of", "Red A", "in a circle: A -> Red A -> A", "there first"});
}

TEST_F(CheckDescent, ASportAmongItsOwnAncestors) {
    o.accessions[0].seed_parent = "C";
    o.accessions[3] = bred("C", "Red A");
    o.goals.clear();
    const auto found = check();
    EXPECT_TRUE(has(found, {Level::error, "accession", "A", "seed_parent, pollen_parent", "",
                            "own ancestors: A -> C -> Red A -> A", ""}));
}

TEST_F(CheckDescent, ASportWithOtherParentsThanItsOriginal) {
    o.accessions[4].seed_parent = "B";
    expect_only({Level::warning, "accession", "Red A", "seed_parent", "B", "its own are not used",
                 "write them with A"});
    o.accessions[0].seed_parent = "B";
    EXPECT_EQ(check(), Findings{}) << "the same parents may be written with both";
}

}  // namespace
}  // namespace pipward::book
