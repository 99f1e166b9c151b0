// SPDX-License-Identifier: MIT
// A book of accessions without any tree: whatever needs no place still works.
#include <gtest/gtest.h>

#include <algorithm>

#include "operation/own_rows.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

/// The sample with its trees taken away and their notes written of their accessions.
struct TreelessBook {
    TreelessBook() {
        if (testing::SampleCopy::exists()) {
            testing::change_rows(
                sample.book(),
                {"UPDATE bloom_observation SET accession = (SELECT accession FROM tree WHERE label = "
                 "bloom_observation.tree) WHERE tree IS NOT NULL",
                 "UPDATE bloom_observation SET tree = NULL",
                 "DELETE FROM bloom_observation WHERE accession IS NULL", "DELETE FROM pollination",
                 "DELETE FROM fruit", "DELETE FROM trait_score", "DELETE FROM tree"});
        }
    }

    Outcome run(const std::string& operation, Form form = {}) const {
        form["book"] = sample.book();
        form.try_emplace("as-of", "2026-03-20");
        return find_operation(operation)->run(form, {});
    }

    testing::SampleCopy sample;
};

std::string value_without(const Table& table, std::size_t row, const std::string& column) {
    const auto at =
        std::ranges::find(table.shape.columns, column, &Column::name) - table.shape.columns.begin();
    return to_text(table.rows[row].cells.at(static_cast<std::size_t>(at)));
}

TEST(ABookWithoutTrees, HasItsBloomForecastFromItsObservationsAtTheStationsHeight) {
    NEED_SAMPLE();
    const TreelessBook book;
    const auto table = book.run("bloom-forecast", {{"keep", "no"}}).tables.front();
    const auto accessions = book::read_book(book.sample.book()).orchard.accessions;
    EXPECT_EQ(table.rows.size(), accessions.size());
    int by_own_notes = 0;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        EXPECT_EQ(value_without(table, row, "tree"), "");
        EXPECT_NE(value_without(table, row, "full_p50"), "");
        by_own_notes +=
            value_without(table, row, "model").find("own_observations") != std::string::npos ? 1 : 0;
    }
    EXPECT_GT(by_own_notes, 15);
}

TEST(ABookWithoutTrees, IsFittedAndScored) {
    NEED_SAMPLE();
    const TreelessBook book;
    EXPECT_FALSE(book.run("bloom-fit", {{"keep", "no"}}).tables.front().rows.empty());
    EXPECT_FALSE(book.run("bloom-skill", {{"keep", "no"}}).tables.front().rows.empty());
}

TEST(ABookWithoutTrees, HasAClockALineAndCrosses) {
    NEED_SAMPLE();
    const TreelessBook book;
    EXPECT_FALSE(book.run("chill-heat").tables.front().rows.empty());
    EXPECT_FALSE(book.run("kinship").tables.front().rows.empty());
    EXPECT_FALSE(book.run("pedigree-show", {{"accessions", "16-01-04"}}).tables.front().rows.empty());
    EXPECT_FALSE(book.run("s-alleles").tables.front().rows.empty());
    EXPECT_FALSE(book.run("seed-status").tables.front().rows.empty());
}

TEST(ABookWithoutTrees, HasSuggestedCrossesAndAllelesEvenWithoutWeather) {
    NEED_SAMPLE();
    const TreelessBook book;
    EXPECT_FALSE(book.run("cross-suggest").tables.front().rows.empty());
    testing::change_rows(book.sample.book(),
                         {"DELETE FROM bloom_observation", "DELETE FROM weather_day", "DELETE FROM station"});
    EXPECT_FALSE(book.run("cross-suggest").tables.front().rows.empty());
    EXPECT_FALSE(book.run("s-alleles").tables.front().rows.empty());
}

TEST(ABookWithoutTrees, IsToldSoByTheCheck) {
    NEED_SAMPLE();
    const TreelessBook book;
    const auto findings = book.run("book-check").findings;
    const auto told = std::ranges::find(findings, "tree", &Finding::table);
    ASSERT_NE(told, findings.end());
    EXPECT_EQ(told->level, Level::warning);
    EXPECT_EQ(told->message, "The book has no trees.");
}

TEST(ABookWithoutTrees, IsPlannedForWithNoWay) {
    NEED_SAMPLE();
    const TreelessBook book;
    const auto outcome = book.run("season-plan", {{"keep", "no"}, {"method", "mean_day"}});
    for (const auto& table : outcome.tables) {
        if (table.shape.name == "pollen_task" || table.shape.name == "field_task") {
            EXPECT_TRUE(table.rows.empty()) << table.shape.name;
        }
    }
}

}  // namespace
}  // namespace pipward::operation
