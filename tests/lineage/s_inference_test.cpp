// SPDX-License-Identifier: MIT
#include "pipward/lineage/s_inference.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "lineage/pedigree_maker.h"
#include "pipward/lineage/s_field.h"
#include "pipward/lineage/s_parentage.h"

namespace pipward::lineage {
namespace {

using testing::child_of;

Accession with_alleles(Accession accession, const std::string& alleles) {
    accession.s_alleles = alleles;
    return accession;
}

struct Known {
    PedigreeOrder order;
    std::vector<SKnowledge> knowledge;

    const SKnowledge& of(const std::string& name) const { return knowledge.at(order.number.at(name)); }
    std::map<std::string, double> chances(const std::string& name) const {
        std::map<std::string, double> chances;
        for (const auto& genotype : of(name).genotypes) {
            chances[to_text(genotype.alleles)] = genotype.chance;
        }
        return chances;
    }
};

Known known(const std::vector<Accession>& accessions, const std::vector<BlendMember>& blends = {}) {
    auto order = pedigree_order(accessions, blends);
    auto knowledge = s_knowledge(order, recorded_s_alleles(accessions, order));
    return {std::move(order), std::move(knowledge)};
}

const Accession gable = with_alleles(child_of("Gable", "-", "-"), "S2 S5");
const Accession gilt = with_alleles(child_of("Gilt", "-", "-"), "S2 S3");
const Accession jorrick = with_alleles(child_of("Jorrick", "-", "-"), "S7 S9");

using Chances = std::map<std::string, double>;

TEST(SKnowledge, OfASemiCompatibleCrossHoldsTheSharedAlleleOnlyFromTheSeedSide) {
    const auto got = known({gable, gilt, child_of("child", "Gable", "Gilt")});
    EXPECT_EQ(got.of("child").source, SSource::parents);
    EXPECT_EQ(got.chances("child"), (Chances{{"S2 S3", 0.5}, {"S3 S5", 0.5}}));
}

TEST(SKnowledge, OfAFullyCompatibleCrossIsOneOfFour) {
    const auto got = known({gable, jorrick, child_of("child", "Gable", "Jorrick")});
    EXPECT_EQ(got.chances("child"),
              (Chances{{"S2 S7", 0.25}, {"S2 S9", 0.25}, {"S5 S7", 0.25}, {"S5 S9", 0.25}}));
}

TEST(SKnowledge, OfOneKnownParentIsHalfAGenotype) {
    const auto got = known({gable, child_of("child", "Gable", "-"), child_of("other", "-", "Gable")});
    EXPECT_EQ(got.chances("child"), (Chances{{"S2 S?", 0.5}, {"S5 S?", 0.5}}));
    EXPECT_EQ(got.chances("other"), (Chances{{"S2 S?", 0.5}, {"S5 S?", 0.5}}));
}

TEST(SKnowledge, OfABlendIsByThePollenThatTheStyleLetsThrough) {
    const std::vector<BlendMember> blend{{0, "Mix", "Gilt", Share{0.5}}, {0, "Mix", "Jorrick", Share{0.5}}};
    const auto got = known({gable, gilt, jorrick, child_of("child", "Gable", "Mix")}, blend);
    const auto chances = got.chances("child");
    EXPECT_EQ(chances.size(), 6U);
    for (const auto& [alleles, chance] : chances) {
        EXPECT_NEAR(chance, 1.0 / 6, 1e-12) << alleles;
    }
}

TEST(SKnowledge, GoesDownTheGenerationsAndSumsToOne) {
    const auto got = known({gable, gilt, jorrick, child_of("child", "Gable", "Gilt"),
                            child_of("grandchild", "child", "Jorrick")});
    double sum = 0;
    for (const auto& genotype : got.of("grandchild").genotypes) {
        EXPECT_EQ(genotype.alleles.size(), 2U) << "no allele twice";
        sum += genotype.chance;
    }
    EXPECT_NEAR(sum, 1, 1e-12);
    EXPECT_NEAR(got.chances("grandchild").at("S3 S7"), 0.25, 1e-12);
    EXPECT_NEAR(got.chances("grandchild").at("S2 S7"), 0.125, 1e-12);
}

TEST(SKnowledge, OfASportIsItsOriginals) {
    const auto got = known({gable, testing::sport_of("Rigel", "Gable")});
    EXPECT_EQ(got.of("Rigel").source, SSource::recorded);
    EXPECT_EQ(got.chances("Rigel"), (Chances{{"S2 S5", 1}}));
}

TEST(SKnowledge, OfATriploidIsOnlyWhatIsRecorded) {
    auto big = child_of("Big", "Gable", "Gilt");
    big.ploidy = 3;
    const auto got = known({gable, gilt, big, child_of("child", "Gable", "Big")});
    EXPECT_EQ(got.of("Big").source, SSource::nothing);
    EXPECT_EQ(got.chances("child"), (Chances{{"S2 S?", 0.5}, {"S5 S?", 0.5}}));
}

TEST(SMatchChances, WeighWhatTheChildMayBe) {
    const auto got = known({gable, gilt, jorrick, child_of("child", "Gable", "Gilt")});
    const auto chances = s_match_chances(got.of("Gilt"), got.of("child"));
    EXPECT_NEAR(chances.none, 0.5, 1e-12);
    EXPECT_NEAR(chances.half, 0.5, 1e-12);
    EXPECT_NEAR(chances.share, 0.25, 1e-12);
    EXPECT_EQ(s_match_chances(got.of("Gilt"), SKnowledge{}).unknown, 1);
}

TEST(SContradiction, AgreesWithThePublishedParentages) {
    const auto alleles = [](const std::string& word) { return parse_s_alleles(word); };
    int checked = 0;
    for (const auto& row : testing::all_rows("lineage-s-parentage.txt")) {
        const auto got = s_contradiction(alleles(row.at(1)).value(), alleles(row.at(2)), alleles(row.at(3)));
        EXPECT_EQ(got ? to_word(*got) : "-", row.at(4)) << row.at(0);
        ++checked;
    }
    EXPECT_EQ(checked, 21);
}

TEST(SContradiction, TellsTheKindsApart) {
    const SAlleles child{"3", "7"};
    EXPECT_EQ(s_contradiction(child, SAlleles{"1", "2"}, std::nullopt), SContradiction::no_seed_allele);
    EXPECT_EQ(s_contradiction(child, SAlleles{"3", "9"}, SAlleles{"3", "10"}), SContradiction::no_pair);
    EXPECT_EQ(s_contradiction(child, SAlleles{"3", "7"}, std::nullopt), SContradiction::rejected_pollen);
    EXPECT_EQ(s_contradiction(child, std::nullopt, std::nullopt), std::nullopt);
    EXPECT_EQ(s_contradiction({"3", "7", "9"}, SAlleles{"1", "2"}, std::nullopt), std::nullopt);
}

TEST(SField, ChancesAreExactBinomials) {
    EXPECT_DOUBLE_EQ(chance_of_none(10, 0.3), std::pow(0.7, 10));
    EXPECT_NEAR(chance_by_leak({2, 1}, 0.1), 1 - 0.81, 1e-12);
    EXPECT_NEAR(chance_by_leak({2, 2}, 0.1), 0.01, 1e-12);
    EXPECT_EQ(chance_by_leak({50, 0}, 0.005), 1);
    EXPECT_GT(chance_by_leak({100, 40}, 0.005), 0);
    EXPECT_LT(chance_by_leak({100, 40}, 0.005), 1e-50);
}

TEST(SField, OneFailedCrossNeverSaysMoreThanItsMishap) {
    EXPECT_NEAR(field_likelihood({1000, 0}, {}).compatible, 0.05, 1e-12);
    EXPECT_EQ(field_likelihood({1000, 0}, {}).incompatible, 1);
    EXPECT_EQ(field_likelihood({100, 5}, {}).compatible, 1);
    EXPECT_LT(field_likelihood({100, 5}, {}).incompatible, 0.001);
}

TEST(SCompatibility, IsUnknownBetweenLettersAndNumbers) {
    EXPECT_EQ(s_compatibility(SAlleles{"j", "k"}, SAlleles{"101", "102"}).match, SMatch::unknown);
}

TEST(SAlleles, AreWrittenByTheSizeOfTheirNumbers) {
    EXPECT_EQ(to_text(SAlleles{"10", "2", "24sm"}), "S2 S10 S24sm");
    EXPECT_EQ(to_text(SAlleles{"j", "k"}), "Sj Sk");
}

}  // namespace
}  // namespace pipward::lineage
