// SPDX-License-Identifier: MIT
#include "pipward/value/sentence.h"

#include <gtest/gtest.h>

#include <map>

namespace pipward {
namespace {

std::string german(std::string_view form) {
    static const std::map<std::string_view, std::string> words{
        {"{} blooms on {}.", "{} blüht am {}."}, {"{} days", "{} Tage"},
        {"{} before {}", "vor {1} noch {0}"},    {"{:.1f} % in {}", "{} % in {}"},
        {"Give a day.", "Einen Tag angeben."},   {"Too few words: {}.", "Zu wenig: {} und {}."},
    };
    const auto found = words.find(form);
    return found == words.end() ? std::string(form) : found->second;
}

TEST(Sentence, ReadsAsItsEnglishText) {
    EXPECT_EQ(say("{} blooms on {}.", "Larkfold Red", 12).text(), "Larkfold Red blooms on 12.");
    EXPECT_EQ(say("{:.1f} % in {{braces}}, {:>4}", 58.26, 7).text(), "58.3 % in {braces},    7");
    EXPECT_EQ(say("{1} and {0} and {1}", "a", "b").text(), "b and a and b");
}

TEST(Sentence, IsSaidInTheWordsOfTheHost) {
    EXPECT_EQ(say("{} blooms on {}.", "Larkfold Red", 12).in(german), "Larkfold Red blüht am 12.");
    EXPECT_EQ(say("Give a day.").in(german), "Einen Tag angeben.");
}

TEST(Sentence, SaysItsFillingsInTheWordsOfTheHostToo) {
    EXPECT_EQ(say("{:.1f} % in {}", 58.26, say("{} days", 3)).in(german), "58.3 % in 3 Tage");
}

TEST(Sentence, LetsTheHostTurnItsFillingsRound) {
    EXPECT_EQ(say("{} before {}", say("{} days", 3), "bloom").in(german), "vor bloom noch 3 Tage");
}

TEST(Sentence, StaysEnglishWhereTheHostHasNoWords) {
    EXPECT_EQ(say("{} trees", 4).in(german), "4 trees");
    EXPECT_EQ(say("Too few words: {}.", "one").in(german), "Too few words: one.");
}

TEST(Sentence, StandsInARowWithOthers) {
    Sentence row = say("Give a day.");
    row += verbatim(" ");
    row += say("{} days", 2);
    EXPECT_EQ(row.text(), "Give a day. 2 days");
    EXPECT_EQ(row.in(german), "Einen Tag angeben. 2 Tage");
    EXPECT_EQ(joined({say("{} days", 1), say("{} days", 2)}, verbatim("; ")).in(german), "1 Tage; 2 Tage");
}

TEST(Sentence, CanBePutBehindItself) {
    Sentence twice = say("{} days", 2);
    twice += twice;
    EXPECT_EQ(twice.in(german), "2 Tage2 Tage");
}

TEST(Sentence, KeepsVerbatimWordsAndBracesInThem) {
    EXPECT_EQ(verbatim("Give a day.").in(german), "Give a day.");
    EXPECT_EQ(say("{} days", verbatim("{} {0}")).in(german), "{} {0} Tage");
}

}  // namespace
}  // namespace pipward
