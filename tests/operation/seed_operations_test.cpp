// SPDX-License-Identifier: MIT
// The year after the flower, on the sample: where crosses stand, the cold, trials, planting, the calendar.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "asked.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using testing::cell_of;
using testing::complaint;
using testing::has;
using testing::run;
using testing::SampleCopy;

std::optional<std::size_t> row_with(const Table& table, const std::string& column, const std::string& value) {
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (to_text(cell_of(table, i, column)) == value) {
            return i;
        }
    }
    return std::nullopt;
}

TEST(SeedStatus, FollowsACrossFromFlowersToStandingTrees) {
    const SampleCopy sample;
    const auto outcome = run(sample, "seed-status", {});
    const auto& crosses = outcome.tables.at(0);
    const auto row = row_with(crosses, "cross", "16-01");
    ASSERT_TRUE(row);
    EXPECT_EQ(to_text(cell_of(crosses, *row, "flowers")), "112");
    EXPECT_EQ(to_text(cell_of(crosses, *row, "fruits")), "32");
    EXPECT_EQ(to_text(cell_of(crosses, *row, "fruit_set")), "29 % (21 to 38)");
    EXPECT_EQ(to_text(cell_of(crosses, *row, "germinated")), "130");
    EXPECT_EQ(crosses.rows.size(), book::read_book(sample.book()).orchard.goals.size());
}

TEST(SeedStatus, TakesAListOfCrossesAndNamesThoseThatAreNone) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto& status = *find_operation("seed-status");
    const Form form{{"book", sample.book()}, {"as-of", "2026-03-20"}, {"crosses", "24-01; 25-01"}};
    EXPECT_EQ(status.run(form, {}).tables.at(0).rows.size(), 2U);
    try {
        status.run({{"book", sample.book()}, {"as-of", "2026-03-20"}, {"crosses", "24-01, 99-99"}}, {});
        FAIL() << "it was taken";
    } catch (const Error& error) {
        ASSERT_EQ(error.findings().size(), 1U);
        EXPECT_EQ(error.findings().front().value, "99-99");
    }
}

TEST(SeedStatus, LeavesWhatNobodyCountedUnknown) {
    const SampleCopy sample;
    const auto crosses = run(sample, "seed-status", {{"as-of", "2024-06-15"}}).tables.at(0);
    const auto row = row_with(crosses, "cross", "24-01");
    ASSERT_TRUE(row);
    EXPECT_EQ(to_text(cell_of(crosses, *row, "fruits")), "");
    EXPECT_EQ(to_text(cell_of(crosses, *row, "fruit_set")), "");
    EXPECT_EQ(to_text(cell_of(crosses, *row, "next")), "harvest the fruit");
}

TEST(Stratification, TellsWhenALotIsReadyAndHowItsColdWasDisturbed) {
    const SampleCopy sample;
    const auto steady = run(sample, "stratification", {{"as-of", "2024-12-20"}}).tables.at(0);
    const auto row = row_with(steady, "lot", "S-24-01-A");
    ASSERT_TRUE(row);
    EXPECT_EQ(to_text(cell_of(steady, *row, "stratified_from")), "2024-11-28");
    EXPECT_EQ(to_text(cell_of(steady, *row, "stratified_days")), "23");
    EXPECT_EQ(to_text(cell_of(steady, *row, "ready")), "2025-02-26") << "ninety days later";
    const auto log = sample.put(
        "store.csv", "time,degrees\n2024-11-28 06:00,3\n2024-11-29 06:00,19\n2024-11-30 06:00,3\n");
    const auto logged = run(sample, "stratification", {{"as-of", "2024-11-30"}, {"log", log}}).tables.at(0);
    const auto same = row_with(logged, "lot", "S-24-01-A");
    ASSERT_TRUE(same);
    EXPECT_EQ(to_text(cell_of(logged, *same, "stratified_days")), "1");
    EXPECT_TRUE(has(to_text(cell_of(logged, *same, "state")), "Warm from 2024-11-29 to 2024-11-29"));
}

TEST(SeedTrial, ComparesTheSamplesTreatmentsAndDrawsThem) {
    const SampleCopy sample;
    const auto outcome = run(sample, "seed-trial", {});
    EXPECT_GE(outcome.tables.at(0).rows.size(), 3U);
    EXPECT_GE(outcome.tables.at(1).rows.size(), 3U);
    ASSERT_EQ(outcome.files.size(), 1U);
    EXPECT_TRUE(outcome.files[0].content.starts_with("<svg"));
    EXPECT_TRUE(has(outcome.files[0].content, "24-01"));
}

TEST(FieldCalendar, HoldsTheSeasonsWorkAndTheSeeds) {
    const SampleCopy sample;
    const auto outcome = run(sample, "field-calendar", {});
    const auto& text = outcome.files.at(0).content;
    EXPECT_TRUE(has(text, "SUMMARY:Pollinate"));
    EXPECT_TRUE(has(text, "SUMMARY:Collect pollen of"));
    std::size_t events = 0;
    for (auto at = text.find("BEGIN:VEVENT"); at != text.npos; at = text.find("BEGIN:VEVENT", at + 1)) {
        ++events;
    }
    EXPECT_EQ(events, outcome.tables.at(0).rows.size());
    EXPECT_EQ(run(sample, "field-calendar", {}).files.at(0).content, text);
}

TEST(OwnCounts, MoveTheFlowersThatAPlanAsksFor) {
    const SampleCopy sample;
    const auto flowers = [&](const char* own) {
        const auto outcome =
            run(sample, "cross-outlook", {{"own-counts", own}, {"fruit-set", "0.1"}, {"keep", "no"}});
        return to_text(cell_of(outcome.tables.at(0), 0, "flowers"));
    };
    EXPECT_NE(flowers("yes"), flowers("no"));
}

const Form trial_block{{"block", "Trial"},
                       {"add-block", "yes"},
                       {"spacing", "1"},
                       {"row-distance", "4"},
                       {"rows", "3"},
                       {"write", "yes"},
                       {"points", "522460 5331330, 522490 5331330"}};

const Form small_planting{{"block", "Trial"}, {"crosses", "24-01=30; 24-02=15"}, {"write", "yes"}};

TEST(RowAssign, GivesEverySeedlingANumberAParentageAndAPlace) {
    const SampleCopy sample;
    run(sample, "row-lay", trial_block);
    const auto before = book::read_book(sample.book()).orchard;
    const auto outcome = run(sample, "row-assign", small_planting);
    const auto after = book::read_book(sample.book()).orchard;
    ASSERT_EQ(after.trees.size(), before.trees.size() + 45);
    ASSERT_EQ(after.accessions.size(), before.accessions.size() + 45);
    const auto& first = after.trees[before.trees.size()];
    EXPECT_EQ(first.label, "24-01-001");
    EXPECT_EQ(first.position, 1);
    EXPECT_EQ(first.purpose, TreePurpose::seedling);
    const auto& seedling = after.accessions[before.accessions.size()];
    EXPECT_EQ(seedling.seed_parent, "Kettlefen");
    EXPECT_EQ(seedling.pollen_parent, "Marlside");
    EXPECT_EQ(seedling.species, "Malus domestica");
    std::set<std::pair<std::string, int>> places;
    for (auto i = before.trees.size(); i < after.trees.size(); ++i) {
        EXPECT_TRUE(places.emplace(*after.trees[i].row, *after.trees[i].position).second);
    }
    EXPECT_FALSE(has_errors(book::check_orchard(after, *parse_iso_day("2026-03-20"))));
}

TEST(RowAssign, NumbersOnWhereAnEarlierPlantingEnded) {
    const SampleCopy sample;
    run(sample, "row-lay", trial_block);
    run(sample, "row-assign", {{"block", "Trial"}, {"crosses", "24-01=2"}, {"write", "yes"}});
    const auto outcome = run(sample, "row-assign", {{"block", "Trial"}, {"crosses", "24-01=1"}});
    EXPECT_EQ(to_text(cell_of(outcome.tables.at(0), 0, "tree")), "24-01-003");
    EXPECT_EQ(to_text(cell_of(outcome.tables.at(0), 0, "position")), "3");
}

TEST(RowAssign, IsTakenBackAsAWhole) {
    const SampleCopy sample;
    run(sample, "row-lay", trial_block);
    const auto before = book::read_book(sample.book()).orchard;
    run(sample, "row-assign", small_planting);
    run(sample, "row-assign", {{"block", "Trial"}, {"undo", "yes"}, {"write", "yes"}});
    const auto after = book::read_book(sample.book()).orchard;
    EXPECT_EQ(after.trees.size(), before.trees.size());
    EXPECT_EQ(after.accessions.size(), before.accessions.size());
    EXPECT_TRUE(has(complaint(sample, "row-assign", {{"block", "Trial"}, {"undo", "yes"}}), "no trees"));
}

TEST(RowAssign, IsNotTakenBackOnceSomethingWasNotedOfIt) {
    const SampleCopy sample;
    run(sample, "row-lay", trial_block);
    run(sample, "row-assign", small_planting);
    run(sample, "record-score", {{"tree", "24-01-001"}, {"trait", "scab"}, {"score", "2"}});
    EXPECT_TRUE(has(complaint(sample, "row-assign", {{"block", "Trial"}, {"undo", "yes"}}), "24-01-001"));
}

TEST(RowAssign, RefusesMoreThanGerminatedOrFitsAndNamesWhatIsUnknown) {
    const SampleCopy sample;
    run(sample, "row-lay", trial_block);
    EXPECT_TRUE(has(complaint(sample, "row-assign", {{"block", "Trial"}, {"crosses", "24-01=9000"}}),
                    "positions are needed"));
    EXPECT_TRUE(has(complaint(sample, "row-assign", {{"block", "Trial"}, {"crosses", "99-99=1"}}), "99-99"));
    EXPECT_TRUE(
        has(complaint(sample, "row-assign", {{"block", "Trial"}, {"crosses", "24-01=x"}}), "cannot be read"));
    EXPECT_TRUE(
        has(complaint(sample, "row-assign", {{"block", "Trial"}, {"check-every", "5"}}), "not named"));
    EXPECT_TRUE(
        has(complaint(sample, "row-assign", {{"block", "Nowhere"}, {"crosses", "24-01=1"}}), "0 are vacant"));
}

TEST(RowAssign, MixesFamiliesTheSameWayForTheSameChance) {
    const SampleCopy sample;
    run(sample, "row-lay", trial_block);
    const auto labels = [&](const char* chance) {
        Form form{{"block", "Trial"},    {"crosses", "24-01=30; 24-02=15"},
                  {"families", "mixed"}, {"check-every", "9"},
                  {"check", "Wrenlea"},  {"random-seed", chance}};
        std::string all;
        const auto table = run(sample, "row-assign", form).tables.at(0);
        for (std::size_t i = 0; i < table.rows.size(); ++i) {
            all += to_text(cell_of(table, i, "tree")) + " ";
        }
        return all;
    };
    EXPECT_EQ(labels("4"), labels("4"));
    EXPECT_NE(labels("4"), labels("5"));
    EXPECT_TRUE(has(labels("4"), "check-Trial-1-9 "));
}

}  // namespace
}  // namespace pipward::operation
