// SPDX-License-Identifier: MIT
// Sheets to be filled in, made from a copy of the sample.
#include <gtest/gtest.h>

#include <algorithm>

#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/intake/cells.h"
#include "pipward/intake/record_kind.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

Outcome made(const testing::SampleCopy& sample, const std::string& kind, Form more = {}) {
    more.insert({{"book", sample.book()}, {"kind", kind}, {"as-of", "2026-05-01"}});
    return find_operation("record-template")->run(more, {});
}

std::size_t lines_of(const std::string& sheet) {
    return static_cast<std::size_t>(std::ranges::count(sheet, '\n'));
}

TEST(RecordTemplate, EverySheetIsReadBackAndNothingOfItIsFilledIn) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    for (const auto& word : words(intake::RecordKind{})) {
        const std::string kind(word.word);
        const auto outcome = made(sample, kind, {{"trait", "taste"}});
        ASSERT_EQ(outcome.files.size(), 2U);
        EXPECT_EQ(outcome.files[0].name, "records-" + kind + ".csv");
        EXPECT_EQ(outcome.tables.at(0).rows.size(), intake::table_of(word.value).columns.size());
        const auto read = find_operation("record-import")
                              ->run({{"book", sample.book()},
                                     {"records-file", sample.put("sheet.csv", outcome.files[0].content)},
                                     {"as-of", "2026-05-01"}},
                                    {});
        EXPECT_TRUE(read.findings.empty()) << kind;
        EXPECT_EQ(read.tables.at(0).rows.size() + 1, lines_of(outcome.files[0].content)) << kind;
        for (const auto& row : read.tables[0].rows) {
            EXPECT_EQ(to_text(row.cells[2]), "not_filled_in") << kind;
        }
    }
}

TEST(RecordTemplate, AnEmptySheetIsAHeader) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    EXPECT_EQ(made(sample, "harvest", {{"prefill", "no"}}).files.at(0).content,
              "tag,harvested_on,fruits,seeds_sound,seeds_empty,remark\r\n");
}

TEST(RecordTemplate, LotsWithSeedLeftAndLivingSeedlingsStandInIt) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto counts = made(sample, "germination").files.at(0).content;
    EXPECT_NE(counts.find("S-25-03,,"), std::string::npos);
    EXPECT_EQ(counts.find("S-16-01"), std::string::npos);
    const auto scores = made(sample, "score", {{"trait", "taste"}}).files.at(0).content;
    EXPECT_NE(scores.find("UP-05-12,,taste,,,"), std::string::npos) << scores.substr(0, 300);
    EXPECT_EQ(scores.find("LO-01-01"), std::string::npos);
}

TEST(RecordTemplate, TheFilledSheetIsTakenIn) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    auto sheet = made(sample, "germination").files.at(0).content;
    sheet.replace(sheet.find("S-25-03,,"), 9, "S-25-03,2026-03-30,58");
    const auto outcome = find_operation("record-import")
                             ->run({{"book", sample.book()},
                                    {"records-file", sample.put("sheet.csv", sheet)},
                                    {"write", "yes"},
                                    {"as-of", "2026-05-01"}},
                                   {});
    EXPECT_NE(outcome.summary.text().find("1 row"), std::string::npos) << outcome.summary.text();
}

TEST(RecordTemplate, NoCellOfASheetIsAFormula) {
    EXPECT_EQ(intake::harmless("=cmd|' /C calc'!A0"), "'=cmd|' /C calc'!A0");
    EXPECT_EQ(intake::harmless("-A1"), "'-A1");
    EXPECT_EQ(intake::harmless("UP-05-12"), "UP-05-12");
    for (const auto* name : {"=x", "+x", "-x", "@x"}) {
        EXPECT_EQ(intake::without_apostrophe(intake::harmless(name)), name);
    }
    EXPECT_EQ(intake::without_apostrophe("'t Hooft"), "'t Hooft");
}

}  // namespace
}  // namespace pipward::operation
