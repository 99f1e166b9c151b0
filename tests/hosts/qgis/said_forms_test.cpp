// SPDX-License-Identifier: GPL-2.0-or-later
#include "translation/said_forms.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace pipward::desktop {
namespace {

using Forms = std::set<std::string>;

TEST(SaidForms, AreThoseOfTheCalls) {
    EXPECT_EQ(said_forms("return say(\"{} days\", 3);"), Forms{"{} days"});
    EXPECT_EQ(said_forms("f(pipward::say( \"a\" ), say(\n  \"b\", say(\"c\")))"), (Forms{"a", "b", "c"}));
}

TEST(SaidForms, JoinTheirPieces) {
    EXPECT_EQ(said_forms("say(\"one \"\n  // between\n  \"and two\")"), Forms{"one and two"});
}

TEST(SaidForms, ReadAsTheProgramSeesThem) {
    EXPECT_EQ(said_forms(R"(say("a \"b\" \\ c\nd"))"), Forms{"a \"b\" \\ c\nd"});
    EXPECT_EQ(said_forms(R"(say("\u00a0\u2013\xC2\xB0"))"), Forms{"\u00a0–°"});
    EXPECT_EQ(said_forms("say(R\"(the \"raw\" \\n)\", 1)"), Forms{"the \"raw\" \\n"});
    EXPECT_EQ(said_forms("say(R\"-(a)\")-\")"), Forms{"a)\""});
}

TEST(SaidForms, AreNotWhatCommentsLiteralsAndOtherNamesHold) {
    EXPECT_EQ(said_forms("// say(1)\n/* say(2) */ \"say(3)\" R\"(say(4))\" '\"' say_so(5) essay(6) say;"),
              Forms{});
    EXPECT_EQ(said_forms("'\\'' say(\"after a quoted quote\") 1'000 say(\"after a number\")"),
              (Forms{"after a quoted quote", "after a number"}));
}

TEST(SaidForms, AreRefusedWhereTheyCannotBeTranslated) {
    try {
        said_forms("\n\nsay(form, 3)");
        FAIL() << "a form that is no literal was taken";
    } catch (const std::runtime_error& error) {
        EXPECT_EQ(std::string(error.what()), "line 3: say() without a literal form");
    }
}

}  // namespace
}  // namespace pipward::desktop
