// SPDX-License-Identifier: MIT
// Kinships of plain pedigrees by hand: full sibs of unrelated parents share 1/4, parent and child 1/4 (Wright
// 1922, Am. Nat. 56:330; from memory).
#include "pipward/lineage/kinship_survey.h"

#include <gtest/gtest.h>

#include "lineage/pedigrees.h"

namespace pipward::lineage {
namespace {

Orchard orchard_of(const testing::Pedigree& pedigree) {
    Orchard orchard;
    orchard.accessions = pedigree.accessions;
    orchard.blend_members = pedigree.blends;
    return orchard;
}

testing::Pedigree family() {
    testing::Pedigree made;
    made.add("Mother");
    made.add("Father");
    made.add("One", "Mother", "Father");
    made.add("Other", "Mother", "Father");
    made.add_sport("Red One", "One");
    made.add("Inbred", "One", "Other");
    return made;
}

const PairKinship& pair_of(const KinshipSurvey& survey, const std::string& a, const std::string& b) {
    for (const auto& pair : survey.pairs) {
        if ((pair.one == a && pair.other == b) || (pair.one == b && pair.other == a)) {
            return pair;
        }
    }
    throw std::runtime_error("no pair of " + a + " and " + b);
}

TEST(KinshipSurvey, TellsEveryTwoTheClosestFirst) {
    const auto survey = kinship_survey(orchard_of(family()), {"Mother", "Father", "One", "Other"});
    ASSERT_EQ(survey.pairs.size(), 6U);
    EXPECT_DOUBLE_EQ(*pair_of(survey, "One", "Other").kinship, 0.25);
    EXPECT_DOUBLE_EQ(*pair_of(survey, "Mother", "One").kinship, 0.25);
    for (std::size_t i = 1; i < survey.pairs.size(); ++i) {
        EXPECT_GE(survey.pairs[i - 1].kinship.value_or(-1), survey.pairs[i].kinship.value_or(-1));
    }
}

TEST(KinshipSurvey, OfTwoWithoutParentsNothingIsKnown) {
    const auto survey = kinship_survey(orchard_of(family()), {"Mother", "Father"});
    EXPECT_FALSE(survey.pairs.at(0).kinship);
    EXPECT_EQ(survey.pairs.at(0).remark.text(), "No parent of either is recorded.");
    EXPECT_FALSE(survey.singles.at(0).inbreeding);
    EXPECT_FALSE(survey.singles.at(0).mean_kinship);
}

TEST(KinshipSurvey, ASportCountsAsItsOriginalAndInNoMean) {
    const auto survey = kinship_survey(orchard_of(family()), {"One", "Red One", "Other"});
    EXPECT_EQ(pair_of(survey, "One", "Red One").relation, Relation::same);
    EXPECT_DOUBLE_EQ(*survey.singles.at(0).mean_kinship, 0.25);
    EXPECT_NE(survey.singles.at(1).remark.text().find("A sport: it has the parents of One."),
              std::string::npos);
}

TEST(KinshipSurvey, TellsInbreeding) {
    const auto survey = kinship_survey(orchard_of(family()), {"Inbred", "One"});
    EXPECT_DOUBLE_EQ(*survey.singles.at(0).inbreeding, 0.25);  // the kinship of its parents
    EXPECT_DOUBLE_EQ(*survey.singles.at(1).inbreeding, 0);
    EXPECT_EQ(survey.singles.at(1).remark.text(),
              "No parent of its parents is recorded: assumed to be unrelated.");
}

TEST(KinshipSurvey, ANameOfAGoalOnlyIsAFounder) {
    const auto survey = kinship_survey(orchard_of(family()), {"Nobody's", "One"});
    EXPECT_DOUBLE_EQ(*survey.pairs.at(0).kinship, 0);
}

TEST(KinshipSurvey, WhatComesOfATriploidIsNotCalculated) {
    auto made = family();
    made.accessions.front().ploidy = 3;
    const auto survey = kinship_survey(orchard_of(made), {"One", "Father"});
    EXPECT_FALSE(survey.pairs.at(0).kinship);
    EXPECT_EQ(survey.pairs.at(0).remark.text(), "Not calculated: One descends from one that is not diploid.");
}

TEST(KinshipSurvey, RefusesALoop) {
    testing::Pedigree made;
    made.add("A", "B");
    made.add("B", "A");
    EXPECT_THROW((void)kinship_survey(orchard_of(made), {"A", "B"}), Error);
}

}  // namespace
}  // namespace pipward::lineage
