// SPDX-License-Identifier: MIT
#include "pipward/lineage/s_alleles.h"

#include <gtest/gtest.h>

#include <map>

#include "testing.h"

namespace pipward::lineage {
namespace {

const SAlleles two_three{"2", "3"};

TEST(SAlleles, ReadsTheWaysThatBreedersWriteThem) {
    for (const auto* text : {"S2 S3", "S2S3", "s2s3", "2 3", "2,3", "S2/S3", "s2/s3", "S3S2", "S2, S3",
                             " S2  S3 ", "(S2S3)", "S: 2, 3", "S 2 S 3", "S02 S003", "S2-S3", "S₂S₃"}) {
        EXPECT_EQ(parse_s_alleles(text), two_three) << text;
    }
}

TEST(SAlleles, ReadsNumbersOfThreeDigitsTriploidsAndSuffixes) {
    EXPECT_EQ(parse_s_alleles("S101 S102"), (SAlleles{"101", "102"}));
    EXPECT_EQ(parse_s_alleles("S2S3S20"), (SAlleles{"2", "20", "3"}));
    EXPECT_EQ(parse_s_alleles("S10a S24sm"), (SAlleles{"10a", "24sm"}));
    EXPECT_EQ(parse_s_alleles("S24smS3"), (SAlleles{"24sm", "3"}));
}

TEST(SAlleles, ReadsTheLettersOfALaboratoryOneByOne) {
    for (const auto* text : {"j k", "J K", "j/k", "SjSk", "Sj Sk"}) {
        EXPECT_EQ(parse_s_alleles(text), (SAlleles{"j", "k"})) << text;
    }
}

TEST(SAlleles, CountsARepeatedAlleleOnce) {
    EXPECT_EQ(parse_s_alleles("S2 S2"), SAlleles{"2"});
    EXPECT_EQ(parse_s_alleles("S2 S3 2"), two_three);
}

TEST(SAlleles, GivesNothingForWhatIsNotAGenotype) {
    for (const auto* text :
         {"",           " ", ",",  "?",        "na", "no",    "unknown", "self",   "S",  "S2 ?",
          "S2 S3 weak", "0", "S0", "2nd best", "jk", "S2=S3", "2.5%",    "10 Apr", "S²", "\xE2\x82"}) {
        EXPECT_EQ(parse_s_alleles(text), std::nullopt) << text;
    }
}

std::map<std::string, SAlleles> genotypes() {
    std::map<std::string, SAlleles> by_name;
    for (const auto& row : testing::oracle_rows("lineage-s-genotypes.txt")) {
        by_name[row.at(0)] = parse_s_alleles(row.at(1)).value();
    }
    return by_name;
}

TEST(SCompatibility, AgreesWithThePublishedRuleOnKnownCultivars) {
    const auto by_name = genotypes();
    const auto of = [&](const std::string& word) {
        const auto found = by_name.find(word);
        return found != by_name.end() ? found->second : parse_s_alleles(word).value();
    };
    const auto rows = testing::all_rows("lineage-s-shares.txt");
    EXPECT_EQ(rows.size(), 14U);
    for (const auto& row : rows) {
        const double expected = std::stod(row.at(2));
        const auto got = s_compatibility(of(row[0]), of(row[1]));
        EXPECT_DOUBLE_EQ(got.pollen_share.value, expected) << row[0] << " x " << row[1];
        EXPECT_EQ(got.match, expected == 1 ? SMatch::full : expected == 0 ? SMatch::none : SMatch::half);
    }
}

TEST(SCompatibility, OfDiploidsIsTheSameBothWays) {
    const auto by_name = genotypes();
    int compared = 0;
    for (const auto& [a, of_a] : by_name) {
        for (const auto& [b, of_b] : by_name) {
            if (of_a.size() == 2 && of_b.size() == 2) {
                EXPECT_EQ(s_compatibility(of_a, of_b).match, s_compatibility(of_b, of_a).match);
                ++compared;
            }
        }
    }
    EXPECT_EQ(compared, 26 * 26);
}

TEST(SCompatibility, OfATriploidDonorIsTheShareOfItsThreeAlleles) {
    const auto got = s_compatibility(two_three, SAlleles{"2", "3", "9"});
    EXPECT_EQ(got.match, SMatch::half);
    EXPECT_DOUBLE_EQ(got.pollen_share.value, 1.0 / 3);
}

TEST(SCompatibility, IsUnknownWhenEitherGenotypeIsMissingOrHalfWritten) {
    for (const auto& half_known : {std::optional<SAlleles>{}, std::optional{SAlleles{"2"}}}) {
        for (const auto& got :
             {s_compatibility(half_known, two_three), s_compatibility(two_three, half_known)}) {
            EXPECT_EQ(got.match, SMatch::unknown);
            EXPECT_EQ(got.pollen_share.value, 1);
        }
    }
}

TEST(SMatch, HasAWordForEachCase) {
    EXPECT_EQ(to_text(SMatch::full), "full");
    EXPECT_EQ(to_text(SMatch::half), "half");
    EXPECT_EQ(to_text(SMatch::none), "none");
    EXPECT_EQ(to_text(SMatch::unknown), "unknown");
}

}  // namespace
}  // namespace pipward::lineage
