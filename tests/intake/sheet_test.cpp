// SPDX-License-Identifier: MIT
// Bytes in every encoding and form that a file may have, as records with their lines.
#include "pipward/intake/sheet.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "intake/own_workbook.h"

namespace pipward::intake {
namespace {

using Fields = std::vector<std::string>;

bool is_known(std::string_view heading) {
    return heading == "tree" || heading == "day" || heading == "note";
}

Sheet read(const std::string& bytes) {
    return read_sheet(bytes, "notes.csv", is_known);
}

const Finding* told(const Sheet& sheet, Level level, const std::string& words) {
    const auto found = std::ranges::find_if(sheet.findings, [&](const Finding& one) {
        return one.level == level && one.message.text().find(words) != std::string::npos;
    });
    return found == sheet.findings.end() ? nullptr : &*found;
}

/// ASCII and Latin-1 letters as UTF-16.
std::string utf16(const std::string& text, bool little) {
    std::string bytes = little ? "\xFF\xFE" : "\xFE\xFF";
    for (const char letter : text) {
        bytes += little ? std::string{letter, '\0'} : std::string{'\0', letter};
    }
    return bytes;
}

TEST(Sheet, KeepsTheLineOfEveryRecordPastQuotesAndEmptyLines) {
    const auto sheet =
        read("# by a logger\n\ntree,day,note\r\nA,1,\"two\nlines, \"\"one\"\" cell\"\n\n ,,\nB, 2 ,\n");
    ASSERT_EQ(sheet.records.size(), 3U);
    EXPECT_EQ(sheet.records[0].line, 3);
    EXPECT_EQ(sheet.records[1].line, 4);
    EXPECT_EQ(sheet.records[1].fields, (Fields{"A", "1", "two\nlines, \"one\" cell"}));
    EXPECT_EQ(sheet.records[2].line, 8);
    EXPECT_EQ(sheet.records[2].fields, (Fields{"B", "2", ""}));
    EXPECT_TRUE(sheet.findings.empty());
}

TEST(Sheet, TakesTheDelimiterOfTheHeading) {
    EXPECT_EQ(read("tree;day\nA;1,5\n").records.at(1).fields, (Fields{"A", "1,5"}));
    EXPECT_EQ(read("tree\tday\nA\t1\n").records.at(1).fields, (Fields{"A", "1"}));
    EXPECT_EQ(read("\"tree;one\",day\nA,1\n").records.at(0).fields, (Fields{"tree;one", "day"}));
}

TEST(Sheet, ReadsAFileOfOneColumn) {
    const auto sheet = read("tree\nA, B\nC\n");
    ASSERT_EQ(sheet.records.size(), 3U);
    EXPECT_EQ(sheet.records[1].fields, (Fields{"A, B"}));
}

TEST(Sheet, ReadsUtf16OfBothOrdersAndSaysSo) {
    for (const bool little : {true, false}) {
        const auto sheet = read(utf16("tree\tday\r\nK\xFChl\t1\r\n", little));
        ASSERT_EQ(sheet.records.size(), 2U);
        EXPECT_EQ(sheet.records[1].fields, (Fields{"K\xC3\xBChl", "1"}));
        EXPECT_TRUE(told(sheet, Level::notice, "UTF-16"));
        EXPECT_FALSE(sheet.is_refused());
    }
}

TEST(Sheet, RefusesUtf16ThatIsCutOff) {
    const auto sheet = read(utf16("tree\tday\r\n", true) + "A");
    EXPECT_TRUE(told(sheet, Level::error, "damaged"));
    EXPECT_TRUE(sheet.records.empty());
}

// 0xFC and 0x80 of Windows-1252 are U+00FC and U+20AC (the Unicode Consortium's table CP1252.TXT, from
// memory).
TEST(Sheet, ReadsWindows1252AndWarnsOfTheFirstLine) {
    const auto sheet = read("tree,note\nA,dry\nB,k\xFChl\nC,5 \x80\n");
    EXPECT_EQ(sheet.records.at(2).fields, (Fields{"B", "k\xC3\xBChl"}));
    EXPECT_EQ(sheet.records.at(3).fields, (Fields{"C", "5 \xE2\x82\xAC"}));
    const auto* warning = told(sheet, Level::warning, "This line and 1 more hold letters that are not UTF-8");
    ASSERT_TRUE(warning);
    EXPECT_EQ(warning->row, "line 3");
    EXPECT_EQ(warning->value, "B,k\xC3\xBChl");
}

TEST(Sheet, RefusesAMixtureOfEncodingsAndBytesOfNoLetter) {
    const auto mixed = read("tree,note\nA,k\xC3\xBChl\nB,k\xFChl\n");
    ASSERT_TRUE(told(mixed, Level::error, "not UTF-8"));
    EXPECT_EQ(told(mixed, Level::error, "not UTF-8")->row, "line 3");
    EXPECT_TRUE(read("tree\nA\x81\n").is_refused());
    const auto zero = read(std::string("tree\nA\nB\0\n", 10));
    ASSERT_TRUE(told(zero, Level::error, "byte of zero"));
    EXPECT_EQ(told(zero, Level::error, "byte of zero")->row, "line 3");
}

TEST(Sheet, PassesOverATitleAndSaysSo) {
    const auto sheet = read("Notes of spring 2026\n\ntree;day;note\nA;1;\n");
    ASSERT_EQ(sheet.records.size(), 2U);
    EXPECT_EQ(sheet.records[0].line, 3);
    EXPECT_EQ(sheet.records[1].fields, (Fields{"A", "1", ""}));
    const auto* remark = told(sheet, Level::notice, "Line 3 heads the columns");
    ASSERT_TRUE(remark);
    EXPECT_EQ(remark->row, "line 1");
    EXPECT_EQ(remark->value, "Notes of spring 2026");
}

TEST(Sheet, TakesNoHeadingForATitle) {
    const auto unknown = read("label,when,what\nA,1,x\ntree,day,note\n");
    EXPECT_EQ(unknown.records.size(), 3U) << "a line above that is as full is no title";
    EXPECT_TRUE(unknown.findings.empty());
    EXPECT_EQ(read("label\nA\n").records.size(), 2U);
    EXPECT_EQ(read("a,b,c,,\ntree,b,c,d,\n").records.size(), 2U) << "nor is one that is half as full";
}

TEST(Sheet, TellsAQuotationMarkThatIsNeverClosed) {
    const auto sheet = read("tree,day\nA,\"1\nB,2\n");
    ASSERT_TRUE(told(sheet, Level::error, "never closed"));
    EXPECT_EQ(told(sheet, Level::error, "never closed")->row, "line 2");
}

TEST(Sheet, ReadsWorkbooksWithTheSpreadsheetsOwnLines) {
    for (const std::string driver : {"XLSX", "ODS"}) {
        SCOPED_TRACE(driver);
        const auto sheet = read(testing::workbook(
            driver,
            {{"Notes of spring"}, {}, {"tree", "day", "note"}, {"K\xC3\xBChl", "2026-05-12", "7.5"}}));
        ASSERT_EQ(sheet.records.size(), 2U);
        EXPECT_EQ(sheet.records[0].line, 3);
        EXPECT_EQ(sheet.records[1].line, 4);
        EXPECT_EQ(sheet.records[1].fields, (Fields{"K\xC3\xBChl", "2026-05-12", "7.5"}));
        EXPECT_TRUE(told(sheet, Level::notice, "Line 3 heads the columns"));
    }
}

TEST(Sheet, AsksWhichSheetOfAWorkbookIsMeant) {
    const auto sheet = read(testing::workbook("XLSX", {{"tree"}, {"A"}}, 2));
    ASSERT_TRUE(told(sheet, Level::error, "several sheets"));
    EXPECT_EQ(told(sheet, Level::error, "several sheets")->value, "Sheet1, Sheet2");
    EXPECT_TRUE(sheet.records.empty());
}

TEST(Sheet, RefusesWhatIsNoTable) {
    EXPECT_TRUE(told(read("PK\x03\x04 and so on"), Level::error, "workbook (.xlsx"));
    EXPECT_TRUE(told(read("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"), Level::error, "(.xls)"));
    EXPECT_TRUE(read("").records.empty());
}

TEST(QuotedCell, IsReadAsItWas) {
    for (const std::string text :
         {"plain", "a,b;c\td", "say \"hi\"", " blanks ", "# no comment", "two\nlines"}) {
        const auto sheet = split_text("x," + quoted_cell(text) + "\n", {});
        EXPECT_EQ(sheet.records.at(0).fields.at(1), text == " blanks " ? "blanks" : text);
    }
}

}  // namespace
}  // namespace pipward::intake
