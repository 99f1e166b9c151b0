// SPDX-License-Identifier: MIT
#include "pipward/value/utf8.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

TEST(Utf8, OneLineKeepsPlainTextOfAnyScript) {
    for (const auto* text : {"", "Larkfold Red", "26-01", "Äpfel × Birnen", "梨", "תפוח", "🍎"}) {
        EXPECT_EQ(one_line(text, 80), text);
        EXPECT_FALSE(has_unseen_characters(text)) << text;
    }
}

TEST(Utf8, OneLineHasNoLineEndsAndNothingThatMovesTheCursorOrTurnsTheText) {
    EXPECT_EQ(one_line("two\nlines\tand\r\na third\xE2\x80\xA8more", 80), "two lines and  a third more");
    EXPECT_EQ(one_line("red \x1B[31m", 80), "red \uFFFD[31m");
    EXPECT_EQ(one_line("a\xC2\x9B"
                       "b",
                       80),
              "a\uFFFDb");
    EXPECT_EQ(one_line("A\u202E1-10", 80), "A\uFFFD1-10");
    EXPECT_EQ(one_line("broken \xFF", 80), "broken \uFFFD");
    for (const auto* text : {"two\nlines", "\x1B[2J", "A\u202E1", "\u2066x", "broken \xFF", "\x7F"}) {
        EXPECT_TRUE(has_unseen_characters(text)) << text;
    }
}

TEST(Utf8, OneLineEndsInAnEllipsisWhereItIsTooLong) {
    EXPECT_EQ(one_line("äöüß", 4), "äöüß");
    EXPECT_EQ(one_line("äöüßa", 4), "äöü…");
    EXPECT_EQ(one_line(std::string(100000, 'x'), 10), "xxxxxxxxx…");
}

}  // namespace
}  // namespace pipward
