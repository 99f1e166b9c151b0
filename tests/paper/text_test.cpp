// SPDX-License-Identifier: MIT
#include "pipward/paper/text.h"

#include <gtest/gtest.h>

#include "pipward/paper/detail/code_points.h"

using namespace pipward;
using namespace pipward::paper;

namespace {

TEST(EscapeMarkup, TurnsEveryCharacterThatMeansSomethingInMarkupIntoAReference) {
    EXPECT_EQ(escape_markup(R"(a < b & "c" > 'd')"), "a &lt; b &amp; &quot;c&quot; &gt; &#39;d&#39;");
}

TEST(EscapeMarkup, LeavesEveryScriptAndEmojiAsItIs) {
    EXPECT_EQ(escape_markup("Žluťák 日本の梨 🍎"), "Žluťák 日本の梨 🍎");
}

TEST(CleanText, PutsAReplacementForBytesThatAreNoText) {
    EXPECT_EQ(clean_text("a\xFFz"), "a\uFFFDz");
    EXPECT_EQ(clean_text("\xC0\xAF"), "\uFFFD\uFFFD") << "overlong slash";
    EXPECT_EQ(clean_text("\xED\xA0\x80"), "\uFFFD\uFFFD\uFFFD") << "surrogate";
    EXPECT_EQ(clean_text("\xF0\x9F\x8D"), "\uFFFD\uFFFD\uFFFD") << "cut emoji";
    EXPECT_EQ(clean_text("\xF4\x90\x80\x80"), "\uFFFD\uFFFD\uFFFD\uFFFD") << "beyond U+10FFFF";
}

TEST(CleanText, PutsAReplacementForControlCharactersAndASpaceForLineEnds) {
    EXPECT_EQ(clean_text(std::string("a\0b\x1B", 4)), "a\uFFFDb\uFFFD");
    EXPECT_EQ(clean_text("a\nb\tc"), "a b c");
    EXPECT_EQ(clean_text("\uFDD0\uFFFE"), "\uFFFD\uFFFD");
}

TEST(CleanText, ChangesNothingTheSecondTime) {
    for (const std::string text : {"plain", "a\xFF\x01", "🍐 & <b>", "\xE2\x80\xAE"}) {
        EXPECT_EQ(clean_text(clean_text(text)), clean_text(text));
    }
}

TEST(CodePoints, ComeBackAsTheSameBytesForEveryLength) {
    const std::string text = "$£€🍎";
    EXPECT_EQ(code_points_of(text), U"$£€🍎");
    EXPECT_EQ(to_utf8(code_points_of(text)), text);
}

TEST(WrapLines, KeepsShortTextOnOneLine) {
    EXPECT_EQ(wrap_lines("Ember", 20, 2), std::vector<std::string>{"Ember"});
    EXPECT_EQ(wrap_lines("", 20, 2), std::vector<std::string>{""});
}

TEST(WrapLines, BreaksAtSpaces) {
    EXPECT_EQ(wrap_lines("Larkfold Red", 6, 2), (std::vector<std::string>{"Larkfold", "Red"}));
}

TEST(WrapLines, NeverExceedsTheWidthNorTheLines) {
    for (const std::string& text :
         {std::string(300, 'W'), std::string(300, 'i'), std::string("日本の梨と林檎の木の名前"),
          std::string("a bb ccc dddd eeeee ffffff ggggggg hhhhhhhh")}) {
        const auto lines = wrap_lines(text, 9, 2);
        EXPECT_LE(lines.size(), 2u);
        for (const auto& line : lines) {
            EXPECT_LE(estimated_width(line), 9) << line;
        }
    }
}

TEST(WrapLines, EndsInAnEllipsisWhenSomethingIsLeftOut) {
    const auto lines = wrap_lines(std::string(300, 'x'), 10, 2);
    EXPECT_TRUE(lines.back().ends_with("…")) << lines.back();
    EXPECT_FALSE(lines.front().ends_with("…"));
}

TEST(WrapLines, LosesNoLetterWhenThereAreLinesEnough) {
    std::string joined;
    for (const auto& line : wrap_lines("one two three four five six seven", 5, 100)) {
        joined += (joined.empty() ? "" : " ") + line;
    }
    EXPECT_EQ(joined, "one two three four five six seven");
}

TEST(WrapLines, ComesToAnEndWhenNotEvenOneCharacterFits) {
    EXPECT_EQ(wrap_lines("WWW", 0.1, 100).size(), 3u);
}

TEST(WrapLines, KeepsAFamilyOfJoinedEmojiTogether) {
    const std::string family = "👩‍🌾";
    for (const auto& line : wrap_lines(family + family + family, 2, 10)) {
        EXPECT_EQ(line, family);
    }
}

}  // namespace
