// SPDX-License-Identifier: MIT
// Which crosses to make, on the sample.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "asked.h"
#include "operation/sample_copy.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using testing::has;
using testing::SampleCopy;

Outcome suggested(const SampleCopy& sample, Form form) {
    form["book"] = sample.book();
    form.emplace("as-of", "2026-03-20");
    return find_operation("cross-suggest")->run(form, {});
}

std::vector<std::string> column_of(const Table& table, const std::string& name) {
    const auto at = std::ranges::find(table.shape.columns, name, &Column::name) - table.shape.columns.begin();
    std::vector<std::string> texts;
    for (const auto& row : table.rows) {
        texts.push_back(to_text(row.cells.at(static_cast<std::size_t>(at))));
    }
    return texts;
}

std::string refusal_text(const SampleCopy& sample, Form form) {
    try {
        suggested(sample, std::move(form));
    } catch (const Error& error) {
        return to_text(error.findings().back());
    }
    return "nothing";
}

TEST(CrossSuggest, RanksByTheSeedlingsToGrowAndKeepsTheLimitOfAParent) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = suggested(sample, {{"weights", "taste=2; scab=-1"}, {"per-parent", "1"}});
    const auto& table = outcome.tables.at(0);
    std::vector<int> seedlings;
    for (const auto& number : column_of(table, "seedlings")) {
        seedlings.push_back(std::stoi(number));
    }
    EXPECT_GT(seedlings.size(), 3U);
    EXPECT_TRUE(std::ranges::is_sorted(seedlings));
    std::map<std::string, int> times;
    for (const auto* name : {"seed_parent", "pollen_parent"}) {
        for (const auto& parent : column_of(table, name)) {
            EXPECT_EQ(++times[parent], 1) << parent;
        }
    }
    for (const auto& why : column_of(table, "why")) {
        EXPECT_TRUE(has(why, "95 % confidence")) << why;
    }
}

TEST(CrossSuggest, TellsOfEveryPairWhyItIsLeftOut) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome =
        suggested(sample, {{"accessions", "Wrenlea, Marlside, Tansy Lane, Larkfold Red, Amberwell"}});
    EXPECT_EQ(outcome.tables.at(0).rows.size() + outcome.tables.at(1).rows.size(), 10U);
    int across = 0;
    const auto reasons = column_of(outcome.tables.at(1), "reason");
    for (const auto& reason : reasons) {
        EXPECT_FALSE(reason.empty());
        across += has(reason, "two genera") ? 1 : 0;
    }
    EXPECT_EQ(across, 4) << "Amberwell is a pear";
}

TEST(CrossSuggest, SaysHowPollenWouldBeHadAndLeavesTheBookAlone) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto before = sample.bytes();
    const auto outcome = suggested(sample, {{"accessions", "Larkfold Early, Ridgewhistle"}});
    EXPECT_EQ(sample.bytes(), before);
    ASSERT_EQ(outcome.tables.at(0).rows.size() + outcome.tables.at(1).rows.size(), 1U);
}

TEST(CrossSuggest, RefusesWhatItCannotReadAndNamesTheNearest) {
    NEED_SAMPLE();
    const SampleCopy sample;
    EXPECT_TRUE(has(refusal_text(sample, {{"weights", "taste=much"}}), "The weights cannot be read."));
    EXPECT_TRUE(has(refusal_text(sample, {{"weights", "tast=1"}}), "taste"));
    EXPECT_TRUE(has(refusal_text(sample, {{"accessions", "Wrenle, Marlside"}}), "Wrenlea"));
    EXPECT_TRUE(has(refusal_text(sample, {{"accessions", "Wrenlea"}}), "A cross needs two parents."));
    EXPECT_TRUE(has(refusal_text(sample, {{"better-than", "Wrenlea"}}), "Give the traits with weights."));
}

// After the season nothing is forecast, and the rest of the advice still stands.
TEST(CrossSuggest, AdvisesInAutumnWithoutBloom) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = suggested(sample, {{"weights", "taste"}, {"as-of", "2025-08-15"}});
    ASSERT_FALSE(outcome.tables.at(0).rows.empty());
    EXPECT_TRUE(has(column_of(outcome.tables.at(0), "concerns").front(), "was not calculated"));
}

}  // namespace
}  // namespace pipward::operation
