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

}  // namespace
}  // namespace pipward
