// SPDX-License-Identifier: MIT
#include "pipward/seed/allele_survey.h"

#include <gtest/gtest.h>

namespace pipward::seed {
namespace {

Accession accession(const char* name, const char* species, const char* alleles = nullptr) {
    Accession made;
    made.name = name;
    made.species = species;
    if (alleles != nullptr) {
        made.s_alleles = alleles;
    }
    return made;
}

TEST(AlleleSurvey, HoldsEveryTwoOfOneGenusAgainstEachOtherBothWays) {
    Orchard orchard;
    orchard.accessions = {accession("A", "Malus domestica", "S2 S3"),
                          accession("B", "Malus domestica", "S2 S5"),
                          accession("P", "Pyrus communis", "S101 S102")};
    const auto evidence = collected_evidence(orchard, *parse_iso_day("2026-03-20"));
    const auto survey = allele_survey(evidence, {"A", "B", "P"});
    ASSERT_EQ(survey.matches.size(), 2U);
    EXPECT_EQ(survey.matches[0].match, lineage::SMatch::half);
    EXPECT_EQ(survey.not_crossed, 2);
    EXPECT_EQ(survey.genotypes.size(), 3U);
    EXPECT_TRUE(survey.contradictions.empty());
}

TEST(AlleleSurvey, FindsContradictionsInTheWholeOrchard) {
    Orchard orchard;
    auto child = accession("Child", "Malus domestica", "S7 S9");
    child.seed_parent = "A";
    child.pollen_parent = "B";
    orchard.accessions = {accession("A", "Malus domestica", "S2 S3"),
                          accession("B", "Malus domestica", "S4 S5"), child};
    const auto evidence = collected_evidence(orchard, *parse_iso_day("2026-03-20"));
    const auto survey = allele_survey(evidence, {"A"});
    ASSERT_EQ(survey.contradictions.size(), 1U);
    const auto finding = contradiction_finding(survey.contradictions[0]);
    EXPECT_EQ(finding.level, Level::warning);
    EXPECT_EQ(finding.row, "Child");
    EXPECT_EQ(finding.field, "s_alleles");
}

}  // namespace
}  // namespace pipward::seed
