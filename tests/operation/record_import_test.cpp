// SPDX-License-Identifier: MIT
// Sheets of notes, good and spoilt, taken into a copy of the sample.
#include <gtest/gtest.h>

#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

class RecordImport : public ::testing::Test {
  protected:
    void SetUp() override { NEED_SAMPLE(); }

    Outcome imported(const std::string& sheet, Form more = {}) {
        more.insert({{"book", sample.book()},
                     {"records-file", sample.put("notes.csv", sheet)},
                     {"as-of", "2026-05-20"}});
        return find_operation("record-import")->run(more, {});
    }
    Outcome written(const std::string& sheet, Form more = {}) {
        more["write"] = "yes";
        return imported(sheet, std::move(more));
    }
    /// What is said of a sheet that is refused; that nothing was written is seen to.
    Findings refused(const std::string& sheet, Form more = {}) {
        const auto before = sample.bytes();
        Findings findings;
        try {
            written(sheet, std::move(more));
            ADD_FAILURE() << "it was taken";
        } catch (const Error& error) {
            EXPECT_EQ(error.trouble(), Trouble::input);
            findings = error.findings();
        }
        EXPECT_EQ(sample.bytes(), before) << "something was written";
        return findings;
    }
    void undo() { find_operation("record-undo")->run({{"book", sample.book()}}, {}); }
    Orchard orchard() { return book::read_book(sample.book()).orchard; }

    testing::SampleCopy sample;
};

std::vector<std::string> column(const Outcome& outcome, std::size_t number) {
    std::vector<std::string> texts;
    for (const auto& row : outcome.tables.at(0).rows) {
        texts.push_back(to_text(row.cells.at(number)));
    }
    return texts;
}

std::vector<std::string> verdicts(const Outcome& outcome) {
    return column(outcome, 2);
}

/// Whether something is said of that line and heading, with these words.
::testing::AssertionResult told(const Findings& findings, const std::string& row, const std::string& field,
                                const std::string& words, Level level = Level::error) {
    std::string all;
    for (const auto& finding : findings) {
        const auto said = finding.message.text() + " " + finding.remedy.text();
        if (finding.level == level && finding.row == row && finding.field == field &&
            said.find(words) != std::string::npos) {
            return ::testing::AssertionSuccess();
        }
        all += "\n  " + to_text(finding);
    }
    return ::testing::AssertionFailure()
           << "nothing of " << row << ", " << field << " says \"" << words << "\" among:" << all;
}

const std::string germination = "lot,counted_on,germinated\n";
const std::string work = "tag,cross,tree,pollinated_on,flowers\n";

TEST_F(RecordImport, ShowsFirstThenWritesAndTakesBackAtOnce) {
    const auto sheet = germination + "S-25-03,2026-03-23,58\n\nS-25-03,2026-03-30,60\nS-25-02,,\n";
    const auto before = orchard().germination_counts.size();
    const auto shown = imported(sheet);
    EXPECT_EQ(verdicts(shown),
              (std::vector<std::string>{"would_be_written", "would_be_written", "not_filled_in"}));
    EXPECT_EQ(column(shown, 0), (std::vector<std::string>{"2", "4", "5"}));
    EXPECT_EQ(orchard().germination_counts.size(), before);
    EXPECT_EQ(verdicts(written(sheet)), (std::vector<std::string>{"written", "written", "not_filled_in"}));
    EXPECT_EQ(orchard().germination_counts.size(), before + 2);
    undo();
    EXPECT_EQ(orchard().germination_counts.size(), before);
}

TEST_F(RecordImport, ASheetReadAgainAddsNothingTwice) {
    const auto sheet = germination + "S-25-03,2026-03-23,58\n";
    written(sheet);
    const auto again = written(sheet + "S-25-03,2026-03-30,60\n");
    EXPECT_EQ(verdicts(again), (std::vector<std::string>{"there_already", "written"}));
    EXPECT_TRUE(again.findings.empty());
    EXPECT_EQ(verdicts(written(sheet)), (std::vector<std::string>{"there_already"}));
}

TEST_F(RecordImport, ARowOfTheBookAnswersForOneLine) {
    const std::string harvests = "tag,harvested_on,fruits\n25-03-b,2025-10-05,2\n25-03-b,2025-10-05,2\n";
    const auto both = written(harvests);
    EXPECT_EQ(verdicts(both), (std::vector<std::string>{"written", "written"}));
    EXPECT_TRUE(told(both.findings, "line 3", "", "the same as line 2", Level::warning));
    EXPECT_EQ(verdicts(imported(harvests)), (std::vector<std::string>{"there_already", "there_already"}));
}

TEST_F(RecordImport, ReadsSemicolonsDecimalCommasMarksLabelsAndGermanDays) {
    const auto outcome = written(
        "\xEF\xBB\xBFTree;Observed on;BBCH stage;Flowers open (%);Remark\r\n"
        "LO-04-07;12.05.2026;61;7,5;\"warm; dry\"\r\n"
        "LO-04-08;2026-05-13;61;;\r\n");
    EXPECT_EQ(verdicts(outcome), (std::vector<std::string>{"written", "written"}));
    const auto remarks = orchard().bloom_observations;
    EXPECT_EQ(remarks[remarks.size() - 2].open_percent, 7.5);
    EXPECT_EQ(remarks[remarks.size() - 2].remark, "warm; dry");
    EXPECT_EQ(to_iso(remarks[remarks.size() - 2].observed_on), "2026-05-12");
}

TEST_F(RecordImport, AnotherLineTellsTheOrderOfTheDays) {
    const auto outcome = imported(germination + "S-25-03,03/04/2026,58\nS-25-03,13/04/2026,60\n");
    EXPECT_NE(column(outcome, 1).at(0).find("2026-04-03"), std::string::npos);
    EXPECT_TRUE(told(outcome.findings, "", "counted_on", "day first, as line 3", Level::notice));
}

TEST_F(RecordImport, ADayThatMayBeTwoIsAsked) {
    const auto sheet = germination + "S-25-03,03/04/2026,58\n";
    EXPECT_TRUE(told(refused(sheet), "line 2", "counted_on", "2026-04-03, with the month first 2026-03-04"));
    EXPECT_EQ(verdicts(imported(sheet, {{"date-format", "day-month-year"}})).at(0), "would_be_written");
    EXPECT_TRUE(
        told(refused(germination + "S-25-03,03/04/2026,58\nS-25-03,13/04/2026,58\nS-25-03,04/13/2026,59\n"),
             "line 2", "counted_on", "Line 3 has the day first and line 4 the month"));
}

TEST_F(RecordImport, LinesWithoutADayGetOneOnlyWhereItIsGiven) {
    const auto sheet = germination + "S-25-03,,58\n";
    EXPECT_TRUE(told(refused(sheet), "line 2", "counted_on", "date-if-blank"));
    EXPECT_NE(column(imported(sheet, {{"date-if-blank", "2026-03-23"}}), 1).at(0).find("2026-03-23"),
              std::string::npos);
    EXPECT_EQ(verdicts(imported("lot,germinated\nS-25-03,58\n", {{"date-if-blank", "2026-03-23"}})).at(0),
              "would_be_written");
}

TEST_F(RecordImport, MoreGerminationThanSeedsAndACountOfNoLot) {
    const auto findings = refused(germination + "S-25-03,2026-03-23,92\nS-26-09,2026-03-23,3\n");
    EXPECT_TRUE(told(findings, "line 2", "germinated", "than the 91 of lot S-25-03"));
    EXPECT_TRUE(told(findings, "line 3", "lot", "no seed lot"));
    EXPECT_TRUE(told(findings, "line 3", "lot", "nearest"));
    EXPECT_EQ(findings.size(), 2U);
}

TEST_F(RecordImport, TagsUsedTwiceInTheFileOrTheBook) {
    const auto findings = refused(work +
                                  "26-04-a,26-04,LO-01-01,2026-05-08,40\n"
                                  "26-04-a,26-04,LO-01-02,2026-05-08,30\n"
                                  "25-03-b,26-04,LO-01-04,2026-05-08,30\n");
    EXPECT_TRUE(told(findings, "line 3", "tag", "The tag hangs at LO-01-01"));
    EXPECT_TRUE(told(findings, "line 4", "tag", "The tag hangs at LO-05-08"));
    EXPECT_TRUE(told(findings, "line 3", "tag", "of this day already"));
    EXPECT_EQ(findings.size(), 3U);
}

TEST_F(RecordImport, DaysOfTheWrongYear) {
    EXPECT_TRUE(told(refused(work + "26-04-a,26-04,LO-01-01,2062-05-08,40\n"), "line 2", "pollinated_on",
                     "still to come"));
    const auto last_year = imported(work + "26-04-a,26-04,LO-01-01,2025-05-08,40\n");
    EXPECT_TRUE(told(last_year.findings, "line 2", "cross", "season 2026, and this is 2025", Level::warning));
    EXPECT_EQ(verdicts(last_year).at(0), "would_be_written");
}

TEST_F(RecordImport, AYearThatOnlyOneLineHasIsAWarning) {
    const auto sheet = work + "26-04-a,26-04,LO-01-01,2026-05-08,40\n26-04-b,26-04,LO-01-02,2025-05-08,40\n" +
                       "26-04-c,26-04,LO-01-03,2026-05-09,40\n";
    EXPECT_TRUE(
        told(imported(sheet).findings, "line 3", "pollinated_on", "of about 2026-05-08", Level::warning));
}

TEST_F(RecordImport, ATagOfTheBookIsShownAsItStandsThere) {
    EXPECT_TRUE(told(refused(work + "25-03-b,25-03,LO-05-08,2025-05-12,61\n"), "line 2", "tag",
                     "of this day already"));
}

TEST_F(RecordImport, NumbersThatAreNone) {
    const auto findings = refused(germination +
                                  "S-25-03,2026-03-23,-5\n"
                                  "S-25-03,2026-03-24,1.200\n"
                                  "S-25-03,2026-03-25,\"1,200\"\n"
                                  "S-25-03,2026-03-26,about 60\n"
                                  "S-25-03,2026-03-27,60.5\n"
                                  "S-25-03,2026-03-28,99999999999999999999\n");
    EXPECT_TRUE(told(findings, "line 2", "germinated", "below zero"));
    EXPECT_TRUE(told(findings, "line 3", "germinated", "Write 1200"));
    EXPECT_TRUE(told(findings, "line 4", "germinated", "Write 1200"));
    EXPECT_TRUE(told(findings, "line 5", "germinated", "no integer"));
    EXPECT_TRUE(told(findings, "line 6", "germinated", "no integer"));
    EXPECT_TRUE(told(findings, "line 7", "germinated", "too large"));
    EXPECT_EQ(findings.size(), 6U);
}

TEST_F(RecordImport, FormulasAndErrorsOfASpreadsheet) {
    const auto findings = refused(work +
                                  "=A1,26-04,LO-01-01,2026-05-08,=SUM(A1:A3)\n"
                                  "26-04-b,26-04,#REF!,=TODAY(),+A1\n"
                                  "26-04-c,26-04,LO-01-01,2026-05-08,#VALUE!\n"
                                  "@x,26-04,LO-01-01,2026-05-08,####\n");
    EXPECT_TRUE(told(findings, "line 2", "tag", "formula"));
    EXPECT_TRUE(told(findings, "line 2", "flowers", "formula"));
    EXPECT_TRUE(told(findings, "line 3", "tree", "spreadsheet's error"));
    EXPECT_TRUE(told(findings, "line 3", "pollinated_on", "formula"));
    EXPECT_TRUE(told(findings, "line 3", "flowers", "formula"));
    EXPECT_TRUE(told(findings, "line 4", "flowers", "spreadsheet's error"));
    EXPECT_TRUE(told(findings, "line 5", "tag", "formula"));
    EXPECT_TRUE(told(findings, "line 5", "flowers", "spreadsheet's error"));
    EXPECT_EQ(findings.size(), 8U);
}

TEST_F(RecordImport, HeadersThatAreMissingOrOther) {
    EXPECT_TRUE(told(refused("S-25-03,2026-03-23,58\n"), "line 1", "", "does not name the columns"));
    EXPECT_TRUE(told(refused("lot,counted_on,germinatd\nS-25-03,2026-03-23,58\n"), "line 1", "germinatd",
                     "Did you mean germinated?"));
    EXPECT_TRUE(told(refused("lot,counted_on,germinatd\nS-25-03,2026-03-23,58\n"), "line 1", "germinated",
                     "is missing"));
    EXPECT_TRUE(told(refused("lot,counted_on,germinated,Germinated\nS-25-03,2026-03-23,58,59\n"), "line 1",
                     "Germinated", "Two columns"));
    EXPECT_TRUE(told(refused("tag,note\n25-03-b,x\n"), "line 1", "", "several kinds"));
    EXPECT_TRUE(
        told(refused("lot,counted_on,germinated,\nS-25-03,2026-03-23,58,x\n"), "line 1", "", "no heading"));
    EXPECT_TRUE(told(refused(germination + "S-25-03,2026-03-23,58\n", {{"kind", "bloom"}}), "line 1", "",
                     "It should be: tree"));
}

TEST_F(RecordImport, ALineWithMoreCellsThanTheHeader) {
    EXPECT_TRUE(told(refused(germination + "S-25-03,2026-03-23,58,5\n"), "line 2", "", "more cells"));
    EXPECT_EQ(verdicts(imported(germination + "S-25-03,2026-03-23,58,\n")).at(0), "would_be_written");
}

TEST_F(RecordImport, FilesThatAreNoText) {
    EXPECT_TRUE(told(refused(germination + "S-25-03,2026-03-23,58\nK\xFChl,2026-03-23,58\n\xC3\xA4,,\n"),
                     "line 3", "", "letters that are not UTF-8"))
        << "neither the one encoding nor the other";
    EXPECT_TRUE(told(refused(germination + "S-25-03,2026-03-23,5" + std::string(1, '\0') + "\n"), "line 2",
                     "", "byte of zero"));
    EXPECT_TRUE(told(refused("PK\x03\x04 and so on"), "", "", "workbook (.xlsx"));
    EXPECT_TRUE(told(refused("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"), "", "", "(.xls)"));
    EXPECT_TRUE(told(refused(std::string("\xFF\xFEl\0o", 5)), "", "", "UTF-16"));
    EXPECT_TRUE(told(refused(""), "", "", "empty"));
    EXPECT_TRUE(
        told(refused("lot,counted_on,germinated\n\"S-25-03,2026-03-23,58\n"), "line 2", "", "never closed"));
}

TEST_F(RecordImport, OtherEncodingsAndATitleAreReadAndTold) {
    const auto old =
        imported("tag,harvested_on,fruits,remark\n25-03-b,2025-10-05,2,K\xFChl\n25-03-b,2025-10-06,1,\xE4\n");
    EXPECT_TRUE(told(old.findings, "line 2", "", "This line and 1 more hold letters that are not UTF-8",
                     Level::warning));
    EXPECT_EQ(verdicts(old), (std::vector<std::string>{"would_be_written", "would_be_written"}));
    EXPECT_NE(column(old, 1).at(0).find("K\xC3\xBChl"), std::string::npos);
    const auto titled = imported("Cold store\n" + germination + "S-25-03,2026-03-23,58\n");
    EXPECT_TRUE(told(titled.findings, "line 1", "", "Line 2 heads the columns", Level::notice));
    EXPECT_EQ(column(titled, 0), (std::vector<std::string>{"3"}));
}

TEST_F(RecordImport, ARemarkWithoutACountIsNotLostInSilence) {
    const auto outcome = imported("tag,harvested_on,fruits,remark\n25-03-b,,,wasps\n25-03-a,,,\n");
    EXPECT_EQ(verdicts(outcome), (std::vector<std::string>{"not_filled_in", "not_filled_in"}));
    EXPECT_TRUE(told(outcome.findings, "line 2", "remark", "remark", Level::warning));
    EXPECT_EQ(outcome.findings.size(), 1U);
}

TEST_F(RecordImport, AllThatIsWrongIsShownWithoutWriting) {
    const auto outcome = imported(germination + "S-25-03,2026-03-23,58\nS-25-03,2026-03-24,92\n");
    EXPECT_EQ(verdicts(outcome), (std::vector<std::string>{"would_be_written", "wrong"}));
    EXPECT_NE(outcome.summary.text().find("1 line has an error"), std::string::npos);
}

TEST_F(RecordImport, AChangedRowKeepsTheWholeImport) {
    written(work + "26-04-a,26-04,LO-01-01,2026-05-08,40\n26-04-b,26-04,LO-01-02,2026-05-08,40\n");
    written("tag,harvested_on,fruits\n26-04-b,2026-05-19,1\n");
    undo();
    written("tag,harvested_on,fruits\n26-04-b,2026-05-19,1\n");
    find_operation("record-undo")->run({{"book", sample.book()}, {"entry", "fruit/21"}}, {});
    undo();
    EXPECT_EQ(orchard().pollinations.size(), 19U);
}

}  // namespace
}  // namespace pipward::operation
