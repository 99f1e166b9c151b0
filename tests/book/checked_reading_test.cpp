// SPDX-License-Identifier: MIT
#include "pipward/book/checked_reading.h"

#include <gtest/gtest.h>

#include "book/book_testing.h"

namespace pipward::book {
namespace {

class CheckedReading : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
    }
    void add_note_of_nobody() const {
        Table remarks;
        remarks.shape.name = "bloom_observation";
        remarks.shape.columns = {{"accession", CellType::text, "", "", ""},
                                 {"observed_on", CellType::day, "", "", ""},
                                 {"bbch", CellType::whole, "", "", ""}};
        remarks.rows = {{{std::string("Nobody's"), testing::day("2025-04-28"), std::int64_t{65}}}};
        append_rows(book, remarks);
    }
};

const Day spring = testing::day("2026-03-20");

TEST_F(CheckedReading, TellsItsStepsAndMayBeStopped) {
    std::vector<std::string> steps;
    (void)read_checked_without_weather(book, spring,
                                       [&](double, const Sentence& doing) { steps.push_back(doing.text()); });
    EXPECT_EQ(steps, (std::vector<std::string>{"Reading the book", "Checking the book"}));
    EXPECT_THROW((void)read_checked(book, spring, [](double, const Sentence&) { throw 1; }), int);
}

TEST_F(CheckedReading, RefusesABookWithErrorsUnlessTheyAreOfBloomAndNobodyAsks) {
    add_note_of_nobody();
    EXPECT_THROW((void)read_checked(book, spring), Error);
    for (const auto& finding : read_checked_without_weather(book, spring).findings) {
        EXPECT_NE(finding.table, "bloom_observation");
    }
}

TEST_F(CheckedReading, WhatCanBeReadIsEnoughToFindATree) {
    EXPECT_TRUE(read_trees(book).orchard.trees.empty());
    EXPECT_FALSE(has_errors(read_stands(book).findings));
    EXPECT_FALSE(has_errors(read_line(book).findings));
}

TEST(TellAsWarnings, LeavesObservationsAsTheyAre) {
    Findings findings(3);
    findings[0].level = Level::error;
    findings[1].level = Level::warning;
    findings[2].level = Level::notice;
    tell_as_warnings(findings);
    EXPECT_EQ(findings[0].level, Level::warning);
    EXPECT_EQ(findings[1].level, Level::warning);
    EXPECT_EQ(findings[2].level, Level::notice);
}

}  // namespace
}  // namespace pipward::book
