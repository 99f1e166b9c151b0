// SPDX-License-Identifier: MIT
#include "pipward/value/finding.h"

#include <gtest/gtest.h>

namespace pipward {
namespace {

const Finding wrong_stage{Level::error,
                          "bloom_observation",
                          "fid 12",
                          "bbch",
                          "66",
                          verbatim("The scale has no such stage."),
                          verbatim("Use 65 or 67.")};

TEST(Finding, SaysWhatWhereAndWhatToDo) {
    EXPECT_EQ(to_text(wrong_stage),
              "error: bloom_observation fid 12, bbch = 66: The scale has no such stage. Use 65 or 67.");
    EXPECT_EQ(to_text(Finding{Level::notice, "", "", "", "", verbatim("Nothing to do."), {}}),
              "notice: Nothing to do.");
}

TEST(Finding, OnlyErrorsPreventAResult) {
    EXPECT_FALSE(has_errors({}));
    EXPECT_FALSE(has_errors({{Level::warning, "", "", "", "", verbatim("odd"), {}},
                             {Level::notice, "", "", "", "", verbatim("so"), {}}}));
    EXPECT_TRUE(has_errors({{Level::notice, "", "", "", "", verbatim("so"), {}}, wrong_stage}));
}

TEST(Error, CarriesEveryFinding) {
    const Error error(Trouble::input, Findings{wrong_stage, wrong_stage});
    EXPECT_EQ(error.findings().size(), 2U);
    EXPECT_EQ(error.trouble(), Trouble::input);
    EXPECT_NE(std::string(error.what()).find("\nerror: bloom_observation"), std::string::npos);
}

TEST(Findings, ThatDifferInTheirRowOnlyAreToldTogether) {
    const Finding other{Level::warning, "tree", "A-9", "label", "", verbatim("It is odd."), {}};
    Findings findings{other};
    for (const auto* row : {"A-1", "A-2", "A-3"}) {
        findings.push_back({Level::error, "accession", row, "kind", "apple", verbatim("No kind."),
                            verbatim("Use another.")});
    }
    EXPECT_EQ(told_together(findings), findings);
    for (const auto* row : {"A-4", "A-5"}) {
        findings.push_back({Level::error, "accession", row, "kind", "apple", verbatim("No kind."),
                            verbatim("Use another.")});
    }
    findings.push_back(
        {Level::error, "accession", "A-6", "kind", "pear", verbatim("No kind."), verbatim("Use another.")});
    const auto told = told_together(findings);
    ASSERT_EQ(told.size(), 3U);
    EXPECT_EQ(told[0], other);
    EXPECT_EQ(told[1].row, "A-1, A-2, A-3 and 2 more");
    EXPECT_EQ(told[2].value, "pear");
}

TEST(Finding, IsOneReadableLineWhateverStandsInTheBook) {
    const Finding strange{Level::error,
                          "tree",
                          "A\n1\x1B[31m",
                          "label",
                          std::string(90000, 'x'),
                          verbatim("Tree \u202E1 is odd."),
                          verbatim("Correct\nit.")};
    const auto text = to_text(strange);
    EXPECT_LT(text.size(), 1000U);
    EXPECT_EQ(text.find_first_of("\n\x1B"), std::string::npos);
    EXPECT_EQ(text.find("\u202E"), std::string::npos);
    EXPECT_NE(text.find("error: tree A 1"), std::string::npos) << text;
    EXPECT_NE(text.find("Correct it."), std::string::npos) << text;
}

}  // namespace
}  // namespace pipward
