// SPDX-License-Identifier: MIT
#include "pipward/value/finding.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

const Finding wrong_stage{
    Level::error, "bloom_note", "fid 12", "bbch", "66", "The scale has no such stage.", "Use 65 or 67."};

TEST(Finding, SaysWhatWhereAndWhatToDo) {
    EXPECT_EQ(to_text(wrong_stage),
              "error: bloom_note fid 12, bbch = 66: The scale has no such stage. Use 65 or 67.");
    EXPECT_EQ(to_text(Finding{Level::note, "", "", "", "", "Nothing to do.", ""}), "note: Nothing to do.");
}

TEST(Finding, OnlyErrorsPreventAResult) {
    EXPECT_FALSE(has_errors({}));
    EXPECT_FALSE(
        has_errors({{Level::warning, "", "", "", "", "odd", ""}, {Level::note, "", "", "", "", "so", ""}}));
    EXPECT_TRUE(has_errors({{Level::note, "", "", "", "", "so", ""}, wrong_stage}));
}

TEST(Error, CarriesEveryFinding) {
    const Error error(Trouble::input, Findings{wrong_stage, wrong_stage});
    EXPECT_EQ(error.findings().size(), 2U);
    EXPECT_EQ(error.trouble(), Trouble::input);
    EXPECT_NE(std::string(error.what()).find("\nerror: bloom_note"), std::string::npos);
}

TEST(Finding, IsOneReadableLineWhateverStandsInTheBook) {
    const Finding strange{
        Level::error,           "tree",     "A\n1\x1B[31m", "label", std::string(90000, 'x'),
        "Tree \u202E1 is odd.", "Mend\nit."};
    const auto text = to_text(strange);
    EXPECT_LT(text.size(), 1000U);
    EXPECT_EQ(text.find_first_of("\n\x1B"), std::string::npos);
    EXPECT_EQ(text.find("\u202E"), std::string::npos);
    EXPECT_NE(text.find("error: tree A 1"), std::string::npos) << text;
    EXPECT_NE(text.find("Mend it."), std::string::npos) << text;
}

}  // namespace
}  // namespace pipward
