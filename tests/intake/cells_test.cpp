// SPDX-License-Identifier: MIT
#include "pipward/intake/cells.h"

#include <gtest/gtest.h>

namespace pipward::intake {
namespace {

TEST(Cells, ReadsNumbersWithAPointOrACommaAndTheirUnit) {
    EXPECT_EQ(read_number("446,5"), 446.5);
    EXPECT_EQ(read_number(" 446.5 m", "m"), 446.5);
    EXPECT_EQ(read_number("+3"), 3);
    EXPECT_EQ(read_number("\xE2\x88\x92"
                          "3"),
              -3)
        << "a minus sign of typography";
    EXPECT_FALSE(read_number("1,234,5"));
    EXPECT_FALSE(read_number("3 m"));
    EXPECT_FALSE(read_number("inf"));
    EXPECT_FALSE(read_number(""));
}

TEST(Cells, KnowsTheWaysOfSayingNothing) {
    for (const auto* text : {"", " ", "-", "--", "?", "n/a", "NA", "Null", "none", "<NULL>"}) {
        EXPECT_TRUE(says_nothing(text)) << text;
    }
    EXPECT_FALSE(says_nothing("0"));
    EXPECT_FALSE(says_nothing("x"));
}

TEST(Cells, TellsFormulasAndErrorsOfASpreadsheet) {
    for (const auto* text : {"=A1", "@x", "+A1", "-$B$2*3"}) {
        ASSERT_TRUE(formula_or_error(text)) << text;
        EXPECT_NE(formula_or_error(text)->message.text().find("formula"), std::string::npos);
    }
    for (const auto* text : {"#REF!", "#NAME?", "#N/A", "###"}) {
        ASSERT_TRUE(formula_or_error(text)) << text;
        EXPECT_NE(formula_or_error(text)->message.text().find("error"), std::string::npos);
    }
    for (const auto* text : {"-5", "+3", "#", "# 4", "26-04-a"}) {
        EXPECT_FALSE(formula_or_error(text)) << text;
    }
}

TEST(Cells, DoubtsAPointThatMayPartThousands) {
    EXPECT_TRUE(may_have_thousands("1.200"));
    EXPECT_TRUE(may_have_thousands("12,345,678"));
    EXPECT_FALSE(may_have_thousands("1.20"));
    EXPECT_FALSE(may_have_thousands("0.200"));
    EXPECT_FALSE(may_have_thousands("1200"));
}

TEST(Cells, AnApostropheKeepsATextFromBeingAFormula) {
    EXPECT_EQ(harmless("=A1"), "'=A1");
    EXPECT_EQ(without_apostrophe("'=A1"), "=A1");
    EXPECT_EQ(without_apostrophe("'s Hof"), "'s Hof");
}

}  // namespace
}  // namespace pipward::intake
