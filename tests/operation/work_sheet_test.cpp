// SPDX-License-Identifier: MIT
// Sheets to take along: the work of a day or a week, fruit to pick, seedlings to plant, years to wait.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "asked.h"
#include "operation/sample_copy.h"
#include "paper/markup_check.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using testing::has;
using testing::MarkupCheck;
using testing::SampleCopy;

Outcome run_sheet(const SampleCopy& sample, const std::string& id, Form form) {
    form["book"] = sample.book();
    return find_operation(id)->run(form, {});
}

std::vector<std::string> sheet_column(const Table& table, const std::string& name) {
    const auto at = std::ranges::find(table.shape.columns, name, &Column::name) - table.shape.columns.begin();
    std::vector<std::string> texts;
    for (const auto& row : table.rows) {
        texts.push_back(to_text(row.cells.at(static_cast<std::size_t>(at))));
    }
    return texts;
}

TEST(WorkSheet, HoldsEachDaysWorkOnceAndNothingOfLaterDays) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto week = run_sheet(sample, "work-sheet", {{"as-of", "2026-04-03"}, {"days", "7"}}).tables.at(0);
    const auto day = run_sheet(sample, "work-sheet", {{"as-of", "2026-04-03"}}).tables.at(0);
    EXPECT_GT(week.rows.size(), day.rows.size());
    for (const auto& from : sheet_column(week, "do_from")) {
        EXPECT_LE(from, "2026-04-09");
    }
    const auto works = [](const Table& table) {
        auto texts = sheet_column(table, "what");
        const auto lots = sheet_column(table, "lot");
        for (std::size_t i = 0; i < texts.size(); ++i) {
            texts[i] += " " + lots[i];
        }
        return texts;
    };
    const auto of_week = works(week);
    for (const auto& work : works(day)) {
        EXPECT_EQ(std::ranges::count(of_week, work), 1) << work;
    }
}

TEST(WorkSheet, PutsTreesIntoWalkingOrderAndTheBenchLast) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome =
        run_sheet(sample, "work-sheet", {{"as-of", "2026-03-28"}, {"days", "14"}, {"at", "48.1335,9.3009"}});
    const auto& table = outcome.tables.at(0);
    std::vector<double> walked;
    bool on_bench = false;
    const auto labels = sheet_column(table, "tree");
    const auto metres = sheet_column(table, "walked_m");
    for (std::size_t i = 0; i < labels.size(); ++i) {
        on_bench = on_bench || metres[i].empty();
        EXPECT_EQ(on_bench, metres[i].empty()) << "work on the bench stands last";
        if (!metres[i].empty()) {
            walked.push_back(std::stod(metres[i]));
        }
    }
    EXPECT_GT(walked.size(), 2U);
    EXPECT_TRUE(std::ranges::is_sorted(walked));
}

TEST(WorkSheet, IsAPageThatAnIndependentReaderTakes) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run_sheet(sample, "work-sheet", {{"as-of", "2025-10-05"}, {"days", "7"}});
    const auto& html = outcome.files.at(0).content;
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_TRUE(has(html, "Seeds are poisonous."));
    EXPECT_FALSE(has(html, "Fire blight.")) << "no flower is worked in October";
}

// A season that is over has no flowers left, and that is no fault of the book.
TEST(WorkSheet, DoesNotComplainInSummerThatBloomIsOver) {
    NEED_SAMPLE();
    const SampleCopy sample;
    for (const auto& finding : run_sheet(sample, "work-sheet", {{"as-of", "2025-08-15"}}).findings) {
        EXPECT_FALSE(has(finding.message, "season ended")) << finding.message.text();
    }
}

TEST(HarvestList, CountsFromTheBloomOfTheTreeAndLetsUnripeSeedHang) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto summer = run_sheet(sample, "harvest-list", {{"as-of", "2025-07-01"}}).tables.at(0);
    ASSERT_EQ(summer.rows.size(), 7U);
    for (const auto& state : sheet_column(summer, "state")) {
        EXPECT_TRUE(has(state, "harvest not before")) << state;
    }
    const auto autumn = run_sheet(sample, "harvest-list", {{"as-of", "2025-09-24"}, {"days", "10"}});
    const auto& table = autumn.tables.at(0);
    const auto orders = sheet_column(table, "order");
    EXPECT_EQ(orders.front(), "1");
    EXPECT_GT(std::ranges::count_if(orders, [](const auto& order) { return !order.empty(); }), 3);
    EXPECT_EQ(MarkupCheck(autumn.files.at(0).content).trouble, "");
}

// The sample's fruit was harvested by its own story: some days after the seed was ripe.
TEST(HarvestList, AgreesWithTheDaysOnWhichTheSamplesFruitWasHarvested) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto table = run_sheet(sample, "harvest-list", {{"as-of", "2025-09-01"}}).tables.at(0);
    const auto tags = sheet_column(table, "tag");
    const auto from = sheet_column(table, "harvest_from");
    const auto to = sheet_column(table, "harvest_to");
    for (const auto& fruit : book::read_book(sample.book()).orchard.fruits) {
        const auto at = static_cast<std::size_t>(std::ranges::find(tags, fruit.tag) - tags.begin());
        if (at < tags.size()) {
            EXPECT_GE(fruit.harvested_on + 10, *parse_iso_day(from[at])) << fruit.tag;
            EXPECT_LE(fruit.harvested_on, *parse_iso_day(to[at])) << fruit.tag;
        }
    }
}

TEST(FirstFruit, IsKeptAsALayerAndTellsOfEveryStandingSeedling) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run_sheet(sample, "first-fruiting", {{"as-of", "2026-03-20"}});
    EXPECT_EQ(outcome.tables.at(0).rows.size(), 19U);
    const auto kept = book::read_result(sample.book(), "first_fruiting");
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->rows.size(), 19U);
    const auto traits = sheet_column(outcome.tables.at(1), "trait");
    EXPECT_TRUE(std::ranges::find(traits, "taste") != traits.end());
}

TEST(RowAssign, PrintsTheSheetOfThePlantingAndItsTrays) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run_sheet(
        sample, "row-assign", {{"as-of", "2026-03-20"}, {"block", "Upper"}, {"crosses", "24-01=2; 24-02=1"}});
    ASSERT_EQ(outcome.files.size(), 1U);
    EXPECT_EQ(MarkupCheck(outcome.files[0].content).trouble, "");
    EXPECT_TRUE(has(outcome.files[0].content, "Tray 1"));
    EXPECT_EQ(outcome.summary.text(),
              "In block Upper these would have positions: 3 seedlings of 2 crosses; nothing was written.");
}

}  // namespace
}  // namespace pipward::operation
