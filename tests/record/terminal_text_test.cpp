// SPDX-License-Identifier: MIT
#include "pipward/record/terminal_text.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

using Lines = std::vector<std::string>;

TEST(TerminalWidth, CountsCharactersAsATerminalShowsThem) {
    EXPECT_EQ(terminal_width("abc"), 3);
    EXPECT_EQ(terminal_width("\xC3\xA4pfel"), 5);      // a-umlaut in two bytes
    EXPECT_EQ(terminal_width("a\xCC\x88"), 1);         // a and a combining mark
    EXPECT_EQ(terminal_width("\xE6\xA2\xA8"), 2);      // an East Asian wide character
    EXPECT_EQ(terminal_width("\xF0\x9F\x8D\x8E"), 2);  // a character beyond the first plane
    EXPECT_EQ(terminal_width("\xC3"), 1);              // a broken byte
}

TEST(TerminalText, LeavesShortTextOnOneLine) {
    EXPECT_EQ(broken_into_lines("two words", 9), Lines{"two words"});
    EXPECT_EQ(broken_into_lines("", 9), Lines{""});
}

TEST(TerminalText, BreaksAtBlanks) {
    EXPECT_EQ(broken_into_lines("two words", 8), (Lines{"two", "words"}));
    EXPECT_EQ(broken_into_lines("  one   two ", 20), Lines{"one two"});
}

TEST(TerminalText, BreaksAWordOnlyWhereItIsLongerThanALine) {
    EXPECT_EQ(broken_into_lines("an abcdefgh z", 4), (Lines{"an", "abcd", "efgh", "z"}));
}

// Three characters of two columns each (Unicode Standard Annex 11: East_Asian_Width W).
TEST(TerminalText, CountsWideCharactersTwice) {
    EXPECT_EQ(terminal_width("\u6797\u6A94\u6D77"), 6);
    EXPECT_EQ(broken_into_lines("\u6797\u6A94\u6D77", 5), (Lines{"\u6797\u6A94", "\u6D77"}));
}

TEST(TerminalText, KeepsAMarkWithItsLetter) {
    EXPECT_EQ(terminal_width("e\u0301e"), 2);
    EXPECT_EQ(broken_into_lines("e\u0301ee", 2), (Lines{"e\u0301e", "e"}));
}

TEST(TerminalText, FindsTheLongestWord) {
    EXPECT_EQ(longest_word("a \u6797\u6A94\u6D77 bcd"), 6);
    EXPECT_EQ(longest_word(""), 0);
}

// Whatever the text and the width: no line is wider, and nothing but blanks is lost.
TEST(TerminalText, HoldsAnyTextInAnyWidth) {
    const std::string text =
        "Cut branches of \u6797\u6A94 e\u0301e\u0301 at UP-03-02 to force; incomprehensibilities.";
    const auto without_blanks = [](std::string of) {
        std::erase(of, ' ');
        return of;
    };
    for (int width = 2; width < 90; ++width) {
        std::string all;
        for (const auto& line : broken_into_lines(text, width)) {
            EXPECT_LE(terminal_width(line), width) << line;
            all += line;
        }
        EXPECT_EQ(without_blanks(all), without_blanks(text)) << width;
    }
}

}  // namespace
}  // namespace pipward
