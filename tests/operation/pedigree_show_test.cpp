// SPDX-License-Identifier: MIT
// The pedigrees of accessions and the traits in them, on the sample.
#include <gtest/gtest.h>

#include <algorithm>

#include "asked.h"
#include "operation/sample_copy.h"
#include "paper/markup_check.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using testing::complaint;
using testing::has;
using testing::run;
using testing::SampleCopy;

std::string rows_of(const Table& table) {
    std::string text;
    for (const auto& row : table.rows) {
        for (const auto& cell : row.cells) {
            text += to_text(cell) + "|";
        }
        text += "\n";
    }
    return text;
}

TEST(PedigreeShow, DrawsTellsSharesAndWritesTheNotation) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "pedigree-show", {{"accessions", "LF 11-023"}});
    EXPECT_TRUE(has(rows_of(outcome.tables.at(0)), "Larkfold Early//Kettlefen/Wrenlea"));
    EXPECT_TRUE(has(rows_of(outcome.tables.at(0)), "Larkfold Early × (Kettlefen × Wrenlea)"));
    EXPECT_TRUE(has(rows_of(outcome.tables.at(1)), "LF 11-023|Kettlefen|0.25|2|2|1|yes||"));
    ASSERT_EQ(outcome.files.size(), 3U);
    EXPECT_EQ(testing::MarkupCheck(outcome.files[0].content).trouble, "");
    EXPECT_TRUE(outcome.files[1].content.starts_with("%PDF"));
    EXPECT_EQ(outcome.files[2].content,
              "LF 11-023\n├─ seed parent: Larkfold Early\n└─ pollen parent: Dapplestead\n"
              "   ├─ seed parent: Kettlefen\n   └─ pollen parent: Wrenlea\n");
    EXPECT_TRUE(has(outcome.summary.text(), "50 % of Larkfold Early, 25 % of Kettlefen, 25 % of Wrenlea"));
}

TEST(PedigreeShow, TakesABlendByItsShares) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "pedigree-show", {{"accessions", "17-01-03"}});
    const auto shares = rows_of(outcome.tables.at(1));
    EXPECT_TRUE(has(shares, "Larkfold Red|0.5|1|1|1|yes||"));
    EXPECT_TRUE(has(shares, "Larkfold Early|0.2|1|1|1|yes|By a pollen blend, weighted by its shares.|"));
    EXPECT_TRUE(has(shares, "Owlcombe|0.175|"));
    EXPECT_TRUE(has(outcome.files[0].content, ">Larkfold Early 40 %<"));
    EXPECT_TRUE(has(outcome.files[2].content, "in the blend, 40 %: Larkfold Early"));
}

TEST(PedigreeShow, SaysWhatIsNotKnown) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "pedigree-show", {{"accessions", "Amberwell"}});
    EXPECT_TRUE(has(rows_of(outcome.tables.at(0)), "Swanmarsh/unknown"));
    EXPECT_TRUE(has(rows_of(outcome.tables.at(1)), "|0.5|||||From unknown parents.|"));
    EXPECT_TRUE(has(outcome.files[0].content, ">unknown<"));
    EXPECT_TRUE(has(outcome.files[2].content, "pollen parent: unknown"));
    EXPECT_TRUE(has(run(sample, "pedigree-show", {{"accessions", "Wrenlea"}}).summary.text(),
                    "No parent of Wrenlea is recorded."));
}

TEST(PedigreeShow, TakesTreeLabelsAndOffersTheNearestName) {
    NEED_SAMPLE();
    const SampleCopy sample;
    EXPECT_TRUE(has(run(sample, "pedigree-show", {{"accessions", "up-05-04"}}).files[2].content, "17-01-04"));
    EXPECT_TRUE(
        has(run(sample, "pedigree-show", {{"accessions", "tansy  lane"}}).summary.text(), "Tansy Lane"));
    const auto said = complaint(sample, "pedigree-show", {{"accessions", "Tansi Lane"}});
    EXPECT_TRUE(has(said, "no accession and no tree of this name")) << said;
    EXPECT_TRUE(has(said, "Tansy Lane")) << said;
    EXPECT_TRUE(has(complaint(sample, "pedigree-show", {{"accessions", "Wrenlea"}, {"traits", "colour"}}),
                    "The book has scores of: fruit_mass_g, scab, taste."));
}

TEST(PedigreeShow, SaysWhatIsLeftOut) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "pedigree-show", {{"accessions", "LF 11-023"}, {"generations-up", "1"}});
    const auto told = std::ranges::find_if(outcome.findings, [](const Finding& finding) {
        return has(finding.message, "farther back than generation 1 are not drawn: 2");
    });
    ASSERT_NE(told, outcome.findings.end());
    EXPECT_TRUE(has(told->remedy, "Set more generations up."));
}

TEST(PedigreeShow, ListsDescendantsWithTheirShares) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto rows = rows_of(run(sample, "pedigree-show", {{"accessions", "Tansy Lane"}}).tables.at(2));
    EXPECT_TRUE(has(rows, "Marlside|0.5|1|Larkfold Red|Tansy Lane||"));
    EXPECT_TRUE(has(rows, "17-01-01|0.125|1|Larkfold Red|Larkfold Mix||"));
}

std::string all_complaints(const SampleCopy& sample, const std::string& id, Form form) {
    std::string text;
    try {
        run(sample, id, std::move(form));
    } catch (const Error& error) {
        for (const auto& finding : error.findings()) {
            text += to_text(finding) + "\n";
        }
    }
    return text;
}

TEST(PedigreeShow, TakesAListAndDrawsAPageForEach) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome =
        run(sample, "pedigree-show", {{"accessions", "LF 11-023, UP-05-04; lf 11-023"}});  // once each
    ASSERT_EQ(outcome.files.size(), 4U);
    EXPECT_EQ(outcome.files[0].name, "pedigree.svg");
    EXPECT_TRUE(has(outcome.files[0].content, "LF 11-023"));
    EXPECT_EQ(outcome.files[1].name, "pedigree-2.svg");
    EXPECT_TRUE(has(outcome.files[1].content, "17-01-04"));
    EXPECT_TRUE(has(outcome.files[2].content, "/Count 2"));
    EXPECT_TRUE(outcome.files[3].content.starts_with("LF 11-023\n├─"));
    EXPECT_TRUE(has(outcome.files[3].content, "\n\n17-01-04\n├─"));
    EXPECT_EQ(outcome.tables.at(0).rows.size(), 4U);
    EXPECT_TRUE(has(rows_of(outcome.tables.at(0)), "17-01-04|Purdy notation|"));
    EXPECT_TRUE(has(rows_of(outcome.tables.at(1)), "LF 11-023|Kettlefen|0.25|"));
    EXPECT_TRUE(has(outcome.summary.text(), "\n17-01-04 descends from "));
}

TEST(PedigreeShow, RefusesEveryUnknownNameOfAList) {
    NEED_SAMPLE();
    const SampleCopy sample;
    for (const auto* id : {"pedigree-show", "pedigree-traits"}) {
        const auto said = all_complaints(
            sample, id, {{"accessions", "Wrenlea, Tansi Lane, Nobody"}, {"traits", "taste, colour"}});
        EXPECT_TRUE(has(said, "Tansi Lane")) << said;
        EXPECT_TRUE(has(said, "Nobody")) << said;
        EXPECT_TRUE(has(said, "colour")) << said;
        EXPECT_FALSE(has(said, "Wrenlea:")) << said;
        EXPECT_TRUE(has(all_complaints(sample, id, {{"accessions", " , "}}), "no accession and no tree"));
    }
}

TEST(PedigreeTraits, RefusesATraitThatWasNotScored) {
    NEED_SAMPLE();
    const SampleCopy sample;
    EXPECT_TRUE(has(complaint(sample, "pedigree-traits", {{"traits", "tast"}}),
                    "The book has scores of: fruit_mass_g, scab, taste."));
}

TEST(PedigreeTraits, TakesAList) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome =
        run(sample, "pedigree-traits", {{"accessions", "17-01-01, 17-01-03"}, {"traits", "taste"}});
    const auto rows = rows_of(outcome.tables.at(0));
    EXPECT_EQ(outcome.tables[0].rows.size(), 2U) << rows;
    EXPECT_TRUE(has(rows, "17-01-03|taste|")) << rows;
    EXPECT_TRUE(has(outcome.summary.text(), "17-01-01: taste")) << outcome.summary.text();
    EXPECT_TRUE(has(outcome.summary.text(), "17-01-03: taste")) << outcome.summary.text();
}

TEST(PedigreeTraits, TellsInWhomATraitWasSeen) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "pedigree-traits", {{"accessions", "17-01-01"}});
    const auto rows = rows_of(outcome.tables.at(0));
    EXPECT_EQ(outcome.tables[0].rows.size(), 3U) << rows;
    EXPECT_TRUE(has(rows, "17-01-01|taste|")) << rows;
    EXPECT_TRUE(has(outcome.summary.text(), "seen in: ")) << outcome.summary.text();
    EXPECT_FALSE(run(sample, "pedigree-traits", {}).tables.at(0).rows.empty());
    const auto before = run(sample, "pedigree-traits", {{"accessions", "17-01-01"}, {"as-of", "2015-01-01"}});
    EXPECT_TRUE(before.tables.at(0).rows.empty()) << "nothing scored later is used";
}

}  // namespace
}  // namespace pipward::operation
