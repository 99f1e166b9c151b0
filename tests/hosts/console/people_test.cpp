// SPDX-License-Identifier: MIT
// What people see of every example, at the widths of usual terminals.
#include "console/people.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <sstream>

#include "console/finding_lines.h"
#include "console/help.h"
#include "operation/every_example.h"
#include "pipward/record/terminal_text.h"
#include "pipward/value/utf8.h"

namespace pipward::console {
namespace {

using testing::all_examples;
using testing::ExampleOf;
using testing::form_of;
using testing::name_of;

constexpr std::array widths{80, 110, 160};

class Columns {
  public:
    explicit Columns(int width) { setenv("COLUMNS", std::to_string(width).c_str(), 1); }
    ~Columns() { unsetenv("COLUMNS"); }
    Columns(const Columns&) = delete;
    Columns& operator=(const Columns&) = delete;
};

/// No line is wider, and nothing in it would upset a terminal.
void expect_to_fit(const std::string& text, int width) {
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        EXPECT_LE(terminal_width(line), width) << line;
        EXPECT_FALSE(has_unseen_characters(line) && line.find("\uFFFD") == std::string::npos) << line;
    }
}

class EveryExample : public ::testing::TestWithParam<ExampleOf> {};

TEST_P(EveryExample, FitsTheScreen) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto& [operation, example] = GetParam();
    Call call{.operation = operation, .form = form_of(sample, *example)};
    const auto outcome = operation->run(call.form, {});
    for (const int width : widths) {
        const Columns columns(width);
        call.output.table.clear();
        expect_to_fit(text_for_people(call, outcome), width);
        for (const auto& table : outcome.tables) {
            call.output.table = table.shape.name;
            expect_to_fit(text_for_people(call, outcome), width);
        }
    }
}

/// Every known cell of the table, in the text.
void expect_whole(const Table& table, std::string text) {
    const auto without_blanks = [](std::string of) {
        std::erase_if(of, [](char c) { return c == ' ' || c == '\n'; });
        return of;
    };
    text = without_blanks(text);
    for (const auto& row : table.rows) {
        for (std::size_t column = 0; column < row.cells.size(); ++column) {
            if (std::holds_alternative<std::int64_t>(row.cells[column])) {
                EXPECT_NE(text.find(without_blanks(to_text(row.cells[column]))), std::string::npos)
                    << table.shape.name << " " << table.shape.columns[column].name;
            }
        }
    }
}

TEST_P(EveryExample, ShowsAllOfATableThatIsAskedFor) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto& [operation, example] = GetParam();
    Call call{.operation = operation, .form = form_of(sample, *example)};
    const auto outcome = operation->run(call.form, {});
    const Columns columns(widths.front());
    for (const auto& table : outcome.tables) {
        call.output.table = table.shape.name;
        expect_whole(table, text_for_people(call, outcome));
        EXPECT_TRUE(left_out(call, outcome).empty());
    }
    call.output = {.wide = true};
    const auto wide = text_for_people(call, outcome);
    for (const auto& table : outcome.tables) {
        expect_whole(table, wide);
        EXPECT_NE(wide.find(table.shape.title), std::string::npos);
    }
}

INSTANTIATE_TEST_SUITE_P(Console, EveryExample, ::testing::ValuesIn(all_examples()), name_of);

TEST(Help, FitsTheScreen) {
    for (const int width : {40, 80, 110}) {
        const Columns columns(width);
        expect_to_fit(overview(), width);
        expect_to_fit(operation_list(), width);
        for (const auto& operation : operation::operations()) {
            expect_to_fit(operation_help(*operation), width);
        }
    }
}

Findings missing_days(int number) {
    Findings findings;
    for (int day = 0; day < number; ++day) {
        findings.push_back({Level::warning, "temperature", "Home", "", "",
                            say("{} is missing.", to_iso(Day{20000 + day})), say("Import it.")});
    }
    return findings;
}

TEST(FindingLines, OneStandsForAllOfItsKind) {
    const auto lines = finding_lines(missing_days(38), false);
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_TRUE(lines.front().ends_with("Import it. (37 more; --findings all)")) << lines.front();
    EXPECT_EQ(finding_lines(missing_days(38), true).size(), 38U);
    EXPECT_EQ(finding_lines(missing_days(3), false).size(), 3U);
}

TEST(FindingLines, TheWeightiestComesFirst) {
    auto findings = missing_days(2);
    findings.push_back({Level::error, "tree", "", "", "", say("No trees."), {}});
    EXPECT_TRUE(finding_lines(findings, false).front().starts_with("error:"));
}

TEST(FindingLines, AlikeRowsAreNamedAndCounted) {
    Findings findings;
    for (const auto* row : {"A-01", "A-02", "A-03", "A-04", "A-05"}) {
        findings.push_back({Level::notice, "tree", row, "", "", say("It has no height."), {}});
    }
    EXPECT_EQ(finding_lines(findings, false),
              std::vector<std::string>{"notice: tree A-01, A-02, A-03 and 2 more: It has no height."});
}

}  // namespace
}  // namespace pipward::console
