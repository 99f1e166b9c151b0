// SPDX-License-Identifier: MIT
// Standing at trees of the sample with receivers good and bad.
#include <gtest/gtest.h>

#include <fmt/format.h>
#include <algorithm>

#include "asked.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using testing::value;

Outcome near(const testing::SampleCopy& sample, Form form) {
    form["book"] = sample.book();
    form.try_emplace("as-of", "2026-03-20");
    return find_operation("tree-near")->run(form, {});
}

TEST(TreeNear, FindsEveryStandingTreeByASurveyorsReceiver) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    for (const auto& tree : book::read_book(sample.book()).orchard.trees) {
        if (tree.removed_on) {
            continue;
        }
        const auto outcome = near(sample, {{"at-grid", fmt::format("{},{}", tree.at->x, tree.at->y)},
                                           {"accuracy-m", "0.1"},
                                           {"trunk-m", "0.3"}});
        EXPECT_EQ(value(outcome.tables[0], 0, "tree"), tree.label);
        // Some of the trees themselves were placed to half a metre, others to a metre and more.
        EXPECT_GT(std::stod(value(outcome.tables[0], 0, "probability")), 0.7) << tree.label;
    }
}

TEST(TreeNear, AsksWhatWouldSettleItAndTakesTheAnswerIn) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const Form form{{"at-grid", "522401.7,5331200.5"}, {"accuracy-m", "3"}};
    const auto outcome = near(sample, form);
    EXPECT_GT(outcome.tables[0].rows.size(), 3U);
    ASSERT_GT(outcome.tables[1].rows.size(), 1U);
    const auto key = value(outcome.tables[1], 0, "key");
    EXPECT_NE(outcome.summary.text().find(value(outcome.tables[1], 0, "question")), std::string::npos);
    EXPECT_GE(std::stod(value(outcome.tables[1], 0, "bits")) + 0.11,
              std::stod(value(outcome.tables[1], 1, "bits")));
    auto answered = form;
    answered["answers"] = key + "=yes";
    const auto after = near(sample, answered);
    EXPECT_NE(value(after.tables[1], 0, "key"), key);
    EXPECT_GT(std::stod(value(after.tables[0], 0, "probability")),
              std::stod(value(outcome.tables[0], 0, "probability")));
}

TEST(TreeNear, TellsGapsByTheirPlaceAndWhyTheTreeWent) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome =
        near(sample, {{"at-grid", "522406.72,5331201.96"}, {"accuracy-m", "0.5"}, {"gap-weight", "1"}});
    EXPECT_EQ(value(outcome.tables[0], 0, "tree"), "LO-01-03");
    EXPECT_EQ(value(outcome.tables[0], 0, "status").rfind("removed 2021-11-18", 0), 0U);
    EXPECT_NE(outcome.summary.text().find("the gap at block Lower, row 1, position 3"), std::string::npos)
        << outcome.summary.text();
}

TEST(TreeNear, SaysThatNoTreeIsNearOrThatThePlaceIsOff) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto between = near(sample, {{"at-grid", "522370,5331350"}, {"accuracy-m", "3"}});
    EXPECT_TRUE(between.tables[0].rows.empty());
    EXPECT_EQ(between.summary, "No tree is near.");
    ASSERT_EQ(between.findings.size(), 1U);
    EXPECT_EQ(between.findings[0].level, Level::warning);
    const auto off = near(sample, {{"at-grid", "522400,5331193"}, {"accuracy-m", "1"}});
    ASSERT_EQ(off.findings.size(), 1U);
    EXPECT_NE(off.findings[0].message.text().find("7.0 m away"), std::string::npos)
        << off.findings[0].message.text();
}

TEST(TreeNear, SaysThatCoordinatesAreSwapped) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    for (const Form& form : {Form{{"at", "9.3009,48.1335"}}, Form{{"at-grid", "5331200,522400"}}}) {
        try {
            (void)near(sample, form);
            FAIL() << "it was taken";
        } catch (const Error& error) {
            EXPECT_EQ(error.trouble(), Trouble::input);
            ASSERT_EQ(error.findings().size(), 1U);
            EXPECT_NE(error.findings()[0].message.text().find("km from the nearest tree"), std::string::npos);
            EXPECT_NE(error.findings()[0].remedy.text().find("first"), std::string::npos);
        }
    }
}

TEST(TreeNear, WarnsOfAnAnswerToAQuestionThatIsNotAsked) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = near(sample, {{"at-grid", "522401.7,5331200.5"}, {"answers", "colour=yes"}});
    ASSERT_EQ(outcome.findings.size(), 1U);
    EXPECT_EQ(outcome.findings[0].value, "colour");
}

TEST(TreeNear, RefusesCallsThatMeanNothing) {
    const auto& operation = *find_operation("tree-near");
    EXPECT_EQ(operation.check({{"book", "b"}, {"as-of", "2026-03-20"}}).size(), 1U);
    EXPECT_EQ(
        operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"at", "48,9"}, {"at-grid", "1,2"}}).size(),
        1U);
    EXPECT_EQ(operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"at", "north"}}).size(), 1U);
    EXPECT_EQ(operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"at-grid", "1;2"}}).size(), 1U);
    EXPECT_EQ(
        operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"at", "48,9"}, {"answers", "tree-ahead"}})
            .size(),
        1U);
    EXPECT_EQ(
        operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"at", "48,9"}, {"answers", "a=perhaps"}})
            .size(),
        1U);
    EXPECT_EQ(
        operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"at", "48,9"}, {"accuracy-m", "0"}}).size(),
        1U);
    EXPECT_EQ(
        operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"at", "48,9"}, {"answers", "a=yes; b=no"}})
            .size(),
        0U);
}

}  // namespace
}  // namespace pipward::operation
