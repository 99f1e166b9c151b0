// SPDX-License-Identifier: MIT
#include "pipward/record/table_text.h"

#include <gtest/gtest.h>

#include "pipward/record/spreadsheet_text.h"

namespace pipward {
namespace {

Table sample() {
    using enum CellType;
    Table table{{"parts",
                 "Parts",
                 "Some parts.",
                 false,
                 {{"name", text, "", "Name", "Its name."},
                  {"mass_mg", number, "mg", "Mass", "Its mass."},
                  {"seen_on", day, "", "Seen on", "When."},
                  {"count", whole, "", "Count", "How many."},
                  {"good", yes_no, "", "Good", "Whether."}}},
                {}};
    table.rows = {{{"A", 1.25, Day{0}, std::int64_t{12}, true}}, {{"", {}, {}, {}, {}}}};
    return table;
}

Table of_text(const std::string& text) {
    return {{"t", "T", "T.", false, {{"a", CellType::text, "", "A", "A."}}}, {{{text}}}};
}

TEST(Csv, HasAHeaderAndCrLfEndsAndEmptyUnknowns) {
    EXPECT_EQ(to_csv(sample()), "name,mass_mg,seen_on,count,good\r\nA,1.25,1970-01-01,12,yes\r\n,,,,\r\n");
}

TEST(Csv, QuotesOnlyWhereRfc4180Asks) {
    EXPECT_EQ(to_csv(of_text("plain text; \xC3\xA4")), "a\r\nplain text; \xC3\xA4\r\n");
    EXPECT_EQ(to_csv(of_text("a,b")), "a\r\n\"a,b\"\r\n");
    EXPECT_EQ(to_csv(of_text("say \"yes\"")), "a\r\n\"say \"\"yes\"\"\"\r\n");
    EXPECT_EQ(to_csv(of_text("two\nlines")), "a\r\n\"two\nlines\"\r\n");
}

// Begun with =, +, - or @, behind a tab or line end too: OWASP, CSV Injection (from memory).
TEST(Csv, TextThatASpreadsheetWouldCalculateHasAnApostropheBeforeIt) {
    for (const auto* formula :
         {"=HYPERLINK(A1)", "+A1", "-A1+2", "@SUM(A1)", "\t=A1", "\r=A1", "\n=A1", " =A1",
          "\xEF\xBC\x9D"
          "A1"}) {
        const auto csv = to_csv(of_text(formula));
        EXPECT_NE(csv.find("'" + std::string(formula)), std::string::npos) << csv;
        EXPECT_EQ(without_guard("'" + std::string(formula)), formula);
    }
    EXPECT_EQ(to_csv(of_text("-3.5")), "a\r\n-3.5\r\n");
    EXPECT_EQ(to_csv(of_text("UP-05-12")), "a\r\nUP-05-12\r\n");
    EXPECT_EQ(without_guard("'t Hooft"), "'t Hooft");
}

TEST(Csv, ControlCharactersOfTerminalsAreMarks) {
    EXPECT_EQ(to_csv(of_text("a\x1B[31mb\xC2\x9B"
                             "c")),
              "a\r\na\xEF\xBF\xBD[31mb\xEF\xBF\xBD"
              "c\r\n");
}

TEST(TerminalTable, AlignsColumnsWithUnitsInTheHead) {
    EXPECT_EQ(to_terminal(sample()),
              "Parts\n"
              "Name  Mass (mg)  Seen on     Count  Good\n"
              "A          1.25  1970-01-01     12  yes\n"
              "              -  -               -  -\n");
}

TEST(TerminalTable, SaysWhereThereIsNothing) {
    auto table = sample();
    table.rows.clear();
    EXPECT_NE(to_terminal(table).find("(nothing)"), std::string::npos);
}

TEST(TerminalTable, ShortensNumbersWithoutLosingWholeOnes) {
    const auto shown = [](double number) {
        Table table{{"t", "T", "T.", false, {{"a", CellType::number, "", "A", "A."}}}, {{{number}}}};
        return to_terminal(table);
    };
    EXPECT_EQ(shown(100), "T\n  A\n100\n");
    EXPECT_EQ(shown(2.0 / 3), "T\n    A\n0.667\n");
    EXPECT_EQ(shown(-0.0001), "T\nA\n0\n");
}

TEST(TerminalTable, KeepsALineEndInsideATextFromBreakingTheTable) {
    EXPECT_EQ(to_terminal(of_text("two\nlines")), "T\nA\ntwo lines\n");
}

TEST(TerminalTable, KeepsATextInItsCellWhateverItHolds) {
    EXPECT_EQ(to_terminal(of_text("red \x1B[31m")), "T\nA\nred \uFFFD[31m\n");
    EXPECT_EQ(to_terminal(of_text("A\u202E1-10")), "T\nA\nA\uFFFD1-10\n");
    EXPECT_EQ(to_terminal(of_text("a\u2028b")), "T\nA\na b\n");
    EXPECT_LT(to_terminal(of_text(std::string(90000, 'x'))).size(), 1000U);
}

TEST(TerminalTable, ShowsPlainWordsWhereScriptsGetCodes) {
    auto table = of_text("mean_day");
    EXPECT_EQ(to_terminal(table), "T\nA\nmean_day\n");
    table.shape.columns.front().words = {{"mean_day", "mean date"}};
    EXPECT_EQ(to_terminal(table), "T\nA\nmean date\n");
    EXPECT_EQ(to_csv(table), "a\r\nmean_day\r\n");
}

}  // namespace
}  // namespace pipward
