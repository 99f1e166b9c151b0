// SPDX-License-Identifier: MIT
// Kinship, breeding values and S-alleles on the sample, and on the sample with a story of its own.
#include <gdal_priv.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "asked.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using testing::has;
using testing::run;
using testing::SampleCopy;

std::vector<std::string> all_complaints(const SampleCopy& sample, const std::string& id, Form form) {
    std::vector<std::string> texts;
    try {
        run(sample, id, std::move(form));
    } catch (const Error& error) {
        for (const auto& finding : error.findings()) {
            texts.push_back(to_text(finding));
        }
    }
    return texts;
}

// Changes the copy by SQL, as a breeder would in any program.
void change(const SampleCopy& sample, const std::string& statement) {
    GDALAllRegister();
    auto* book = static_cast<GDALDataset*>(
        GDALOpenEx(sample.book().c_str(), GDAL_OF_VECTOR | GDAL_OF_UPDATE, nullptr, nullptr, nullptr));
    ASSERT_NE(book, nullptr);
    book->ReleaseResultSet(book->ExecuteSQL(statement.c_str(), nullptr, nullptr));
    GDALClose(book);
}

const Table& table(const Outcome& outcome, const std::string& name) {
    return *std::ranges::find_if(outcome.tables, [&](const Table& t) { return t.shape.name == name; });
}

std::string cell(const Table& table, const Row& row, const std::string& column) {
    const auto at =
        std::ranges::find(table.shape.columns, column, &Column::name) - table.shape.columns.begin();
    return to_text(row.cells.at(at));
}

// The column of the first row whose first cells read so.
std::string at(const Table& table, const std::vector<std::string>& key, const std::string& column) {
    for (const auto& row : table.rows) {
        bool fits = true;
        for (std::size_t i = 0; i < key.size(); ++i) {
            fits = fits && to_text(row.cells.at(i)) == key[i];
        }
        if (fits) {
            return cell(table, row, column);
        }
    }
    return "no such row";
}

TEST(KinshipOperation, TellsOfTheParentsOfTheSeasonsCrosses) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "kinship", {});
    const auto& pairs = table(outcome, "kinship");
    EXPECT_EQ(pairs.rows.size(), 18U * 17 / 2);
    EXPECT_EQ(at(pairs, {"Marlside", "Larkfold Red"}, "kinship"), "0.25");
    EXPECT_EQ(at(pairs, {"Marlside", "Larkfold Red"}, "relationship"), "child");
    EXPECT_EQ(at(pairs, {"Marlside", "LF 08-041"}, "relationship"), "half_sibs");
    EXPECT_EQ(at(pairs, {"Kettlefen", "Larkfold Red"}, "kinship"), "");
    EXPECT_TRUE(has(at(pairs, {"Marlside", "Quillet"}, "remark"), "not diploid"));
    EXPECT_EQ(cell(pairs, pairs.rows.front(), "kinship"), "0.25") << "the closest first";
}

TEST(KinshipOperation, TakesATreesLabelForItsAccessionAndABlendForItsMembers) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto orchard = book::read_book(sample.book()).orchard;
    const auto tree =
        std::ranges::find(orchard.trees, std::optional<std::string>("17-01-01"), &Tree::accession);
    ASSERT_NE(tree, orchard.trees.end());
    const auto outcome = run(sample, "kinship", {{"accessions", tree->label + "; Larkfold Mix"}});
    const auto& pairs = table(outcome, "kinship");
    EXPECT_EQ(at(pairs, {"17-01-01", "Larkfold Early"}, "kinship"), "0.1");
    EXPECT_EQ(at(pairs, {"17-01-01", "Larkfold Early"}, "relationship"), "possible_child");
    EXPECT_TRUE(has(at(table(outcome, "inbreeding"), {"17-01-01"}, "remark"), "Expected"));
}

TEST(KinshipOperation, NamesEveryUnknownNameWithTheNearest) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto texts =
        all_complaints(sample, "kinship", {{"accessions", "Mosgate Late, Larkfold Rod, Owlcombe"}});
    ASSERT_EQ(texts.size(), 2U);
    EXPECT_TRUE(has(texts[0], "Mossgate Late"));
    EXPECT_TRUE(has(texts[1], "Larkfold Red"));
}

TEST(BreedingValuesOperation, RankWhatWasScored) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "breeding-values", {{"trait", "fruit_mass_g"}});
    const auto& values = table(outcome, "breeding_values");
    EXPECT_EQ(cell(values, values.rows.at(0), "rank"), "1");
    double before = 1e9;
    for (const auto& row : values.rows) {
        const double value = std::stod(cell(values, row, "value"));
        EXPECT_LE(value, before);
        before = value;
        const double reliability = std::stod(cell(values, row, "reliability"));
        EXPECT_GE(reliability, 0);
        EXPECT_LE(reliability, 1);
    }
    EXPECT_EQ(at(values, {"16-01-04"}, "scores"), "4");
    EXPECT_TRUE(has(at(values, {"Larkfold Red"}, "remark"), "relatives"));
}

TEST(BreedingValuesOperation, SayThatThereAreTooFewScoresRatherThanGuess) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto texts =
        all_complaints(sample, "breeding-values", {{"trait", "taste"}, {"as-of", "2020-01-01"}});
    ASSERT_EQ(texts.size(), 1U);
    EXPECT_TRUE(has(texts[0], "Too few scores: 0 of 0"));
}

TEST(BreedingValuesOperation, OfferTheTraitsThatWereScored) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto texts = all_complaints(sample, "breeding-values", {{"trait", "tast"}});
    ASSERT_EQ(texts.size(), 1U);
    EXPECT_TRUE(has(texts[0], "fruit_mass_g, scab, taste"));
}

TEST(BreedingValuesOperation, RefuseARepeatabilityBelowTheHeritability) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto texts = all_complaints(
        sample, "breeding-values", {{"trait", "taste"}, {"heritability", "0.5"}, {"repeatability", "0.4"}});
    ASSERT_EQ(texts.size(), 1U);
    EXPECT_TRUE(has(texts[0], "lower than the heritability"));
}

TEST(SAllelesOperation, KeepAllelesAndFieldApart) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "s-alleles", {});
    const auto& matches = table(outcome, "s_match");
    EXPECT_EQ(at(matches, {"Kettlefen", "Marlside"}, "match"), "full");
    EXPECT_EQ(at(matches, {"Kettlefen", "Marlside"}, "flowers"), "182");
    EXPECT_EQ(at(matches, {"Dapplestead", "LF 08-041"}, "compatible_share"), "0");
    EXPECT_EQ(at(matches, {"Kettlefen", "Mirkendell"}, "match"), "unknown");
    EXPECT_EQ(at(matches, {"Kettlefen", "Amberwell"}, "match"), "no such row") << "an apple with a pear";
    EXPECT_TRUE(table(outcome, "s_contradiction").rows.empty());
}

TEST(SAllelesOperation, TellWhatASeedlingMayHave) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "s-alleles", {{"accessions", "16-01-01, 17-01-01"}});
    const auto& genotypes = table(outcome, "s_genotype");
    EXPECT_EQ(at(genotypes, {"16-01-01", "S2 S3"}, "probability"), "0.25");
    // The style of Larkfold Red (S3 S7) leaves 7/8 of the blend's pollen; 3/8 of it bears S5.
    EXPECT_EQ(at(genotypes, {"17-01-01", "S3 S5"}, "probability"), "0.2143");
}

TEST(SAllelesOperation, LetAFailedCrossNarrowAGenotype) {
    NEED_SAMPLE();
    const SampleCopy sample;
    change(sample,
           "INSERT INTO cross_goal (code, season, seed_parent, pollen_parent, seedlings_wanted) "
           "VALUES ('25-77', 2025, '16-01-01', 'Dapplestead', 10)");
    const auto orchard = book::read_book(sample.book()).orchard;
    const auto tree =
        std::ranges::find(orchard.trees, std::optional<std::string>("16-01-01"), &Tree::accession);
    change(sample,
           "INSERT INTO pollination (tag, cross, tree, pollinated_on, flowers, pass) VALUES ('25-77-a', "
           "'25-77', '" +
               tree->label + "', '2025-05-02', 60, 1)");
    const Form form{{"accessions", "16-01-01, Dapplestead"}};
    const auto open = run(sample, "s-alleles", form);
    EXPECT_EQ(at(table(open, "s_genotype"), {"16-01-01", "S3 S5"}, "field_probability"), "")
        << "nobody has counted the fruit yet";
    change(sample, "INSERT INTO fruit (tag, harvested_on, fruits) VALUES ('25-77-a', '2025-09-20', 0)");
    const auto counted = run(sample, "s-alleles", form);
    const auto& genotypes = table(counted, "s_genotype");
    EXPECT_EQ(at(genotypes, {"16-01-01", "S3 S5"}, "probability"), "0.25") << "the alleles' evidence stays";
    EXPECT_NEAR(std::stod(at(genotypes, {"16-01-01", "S3 S5"}, "field_probability")), 1 / (1 + 3 * 0.05),
                0.001);
    EXPECT_TRUE(has(at(genotypes, {"16-01-01", "S3 S5"}, "from_field"), "None of 60 flowers set"));
}

TEST(SAllelesOperation, FlagParentsThatTheAllelesContradict) {
    NEED_SAMPLE();
    const SampleCopy sample;
    change(sample, "UPDATE accession SET s_alleles = 'S1 S10' WHERE name = 'Marlside'");
    change(sample, "UPDATE accession SET s_alleles = 'S3 S7' WHERE name = 'LF 08-041'");
    const auto outcome = run(sample, "s-alleles", {});
    const auto& wrong = table(outcome, "s_contradiction");
    EXPECT_EQ(at(wrong, {"Marlside"}, "verdict"), "no_seed_allele");
    EXPECT_EQ(at(wrong, {"LF 08-041"}, "verdict"), "no_pollen_allele");
    EXPECT_TRUE(std::ranges::any_of(outcome.findings, [](const Finding& finding) {
        return finding.row == std::string("Marlside") && has(finding.message, "do not fit");
    }));
}

}  // namespace
}  // namespace pipward::operation
