// SPDX-License-Identifier: MIT
// Every declared example, run on a copy of the sample: it works, and it returns what it declares.
#include <gtest/gtest.h>

#include <algorithm>

#include "operation/every_example.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::record {

bool operator==(const Column& a, const Column& b) {
    return a.name == b.name && a.type == b.type && a.unit == b.unit && a.label == b.label &&
           a.description == b.description && a.words == b.words;
}

}  // namespace pipward::record

namespace pipward::operation {

namespace {

using testing::all_examples;
using testing::ExampleOf;
using testing::form_of;
using testing::name_of;

bool fits(const Cell& cell, CellType type) {
    if (std::holds_alternative<std::monostate>(cell)) {
        return true;
    }
    switch (type) {
        case CellType::text:
            return std::holds_alternative<std::string>(cell);
        case CellType::whole:
            return std::holds_alternative<std::int64_t>(cell);
        case CellType::number:
            return std::holds_alternative<double>(cell);
        case CellType::day:
            return std::holds_alternative<Day>(cell);
        case CellType::yes_no:
            return std::holds_alternative<bool>(cell);
    }
    return false;
}

void expect_sound_rows(const Table& table) {
    for (const auto& row : table.rows) {
        ASSERT_EQ(row.cells.size(), table.shape.columns.size()) << table.shape.name;
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            EXPECT_TRUE(fits(row.cells[c], table.shape.columns[c].type))
                << table.shape.name << " " << table.shape.columns[c].name;
        }
        EXPECT_TRUE(table.shape.has_points || !row.at) << table.shape.name;
        EXPECT_TRUE(table.shape.has_lines || row.line.empty()) << table.shape.name;
    }
}

// As scripts read them: the shortest text that reads back the same. Coordinates in degrees have the most.
void expect_no_idle_digits(const Table& table) {
    for (const auto& row : table.rows) {
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            if (std::holds_alternative<double>(row.cells[c])) {
                const auto text = to_text(row.cells[c]);
                EXPECT_LE(std::ranges::count_if(text, [](char d) { return d >= '0' && d <= '9'; }), 10)
                    << table.shape.name << " " << table.shape.columns[c].name << " " << text;
                EXPECT_FALSE(text == "-0") << table.shape.name << " " << table.shape.columns[c].name;
            }
        }
    }
}

void expect_plain_words(const Table& table) {
    for (const auto& row : table.rows) {
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            const auto& column = table.shape.columns[c];
            // Tables and fields are the book's own words, traits those of whoever scores.
            const bool is_a_name = column.name == "table" || column.name == "field" || column.name == "trait";
            EXPECT_TRUE(is_a_name || to_plain_text(column, row.cells[c]).find('_') == std::string::npos)
                << table.shape.name << " " << column.name << " " << to_text(row.cells[c]);
        }
    }
}

void expect_declared_results(const Operation& operation, const Outcome& outcome) {
    ASSERT_EQ(outcome.tables.size(), operation.results().size());
    for (std::size_t t = 0; t < outcome.tables.size(); ++t) {
        const auto& declared = operation.results()[t];
        const auto& returned = outcome.tables[t].shape;
        EXPECT_EQ(returned.name, declared.name);
        EXPECT_EQ(returned.has_points, declared.has_points);
        EXPECT_EQ(returned.has_lines, declared.has_lines);
        EXPECT_EQ(returned.columns, declared.columns) << declared.name;
        expect_sound_rows(outcome.tables[t]);
    }
}

class EveryExample : public ::testing::TestWithParam<ExampleOf> {};

TEST_P(EveryExample, RunsOnTheSampleAndReturnsWhatItDeclares) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto& [operation, example] = GetParam();
    const auto outcome = operation->run(form_of(sample, *example), {});
    expect_declared_results(*operation, outcome);
    EXPECT_FALSE(has_errors(outcome.findings));
    EXPECT_FALSE(outcome.summary.empty());
    EXPECT_EQ(outcome.summary.text().back(), '.');
}

TEST_P(EveryExample, GivesNumbersWithoutIdleDigitsAndPeoplePlainWords) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto& [operation, example] = GetParam();
    for (const auto& table : operation->run(form_of(sample, *example), {}).tables) {
        expect_no_idle_digits(table);
        expect_plain_words(table);
    }
}

TEST_P(EveryExample, GivesTheSameTwice) {
    NEED_SAMPLE();
    const auto& [operation, example] = GetParam();
    const auto once = [&] {
        const testing::SampleCopy sample;
        auto outcome = operation->run(form_of(sample, *example), {});
        std::string text;
        for (const auto& table : outcome.tables) {
            for (const auto& row : table.rows) {
                for (const auto& cell : row.cells) {
                    text += to_text(cell) + "|";
                }
            }
        }
        return text;
    };
    EXPECT_EQ(once(), once());
}

TEST_P(EveryExample, TellsProgressForwardsAndStopsWhenAsked) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto& [operation, example] = GetParam();
    std::vector<double> shares;
    pipward::operation::Run lent;
    lent.progress = [&](double share, std::string_view) { shares.push_back(share); };
    const auto form = form_of(sample, *example);
    (void)operation->run(form, lent);
    EXPECT_FALSE(shares.empty());
    EXPECT_TRUE(std::ranges::is_sorted(shares));
    EXPECT_TRUE(std::ranges::all_of(shares, [](double share) { return share >= 0 && share <= 1; }));
    lent.cancelled = [] { return true; };
    try {
        (void)operation->run(form, lent);
        FAIL() << "it went on";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::cancelled);
    }
}

INSTANTIATE_TEST_SUITE_P(Operations, EveryExample, ::testing::ValuesIn(all_examples()), name_of);

}  // namespace
}  // namespace pipward::operation
