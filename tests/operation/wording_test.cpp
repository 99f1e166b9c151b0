// SPDX-License-Identifier: MIT
// Every example in a made-up language: what people read lies in its brackets, so nothing escapes translation.
#include <gtest/gtest.h>

#include <regex>

#include "bracketed.h"
#include "operation/every_example.h"
#include "paths.h"
#include "pipward/book/book.h"

namespace pipward::operation {
namespace {

using testing::all_examples;
using testing::bracketed;
using testing::ExampleOf;
using testing::form_of;
using testing::has_letters;
using testing::name_of;
using testing::outside_brackets;
using testing::without_brackets;

// What somebody wrote into the book stays as it is written.
std::vector<std::string> remarks_of_sample() {
    std::vector<std::string> remarks;
    for (const auto& tree : book::read_tables(testing::sample_book(), {"tree"}).orchard.trees) {
        if (tree.remark) {
            remarks.push_back(*tree.remark);
        }
    }
    return remarks;
}

std::string without_remarks(std::string text) {
    static const auto remarks = remarks_of_sample();
    for (const auto& remark : remarks) {
        if (const auto at = text.find(remark); at != text.npos) {
            text.erase(at, remark.size());
        }
    }
    return text;
}

bool reads_like_a_sentence(const std::string& text) {
    return text.ends_with('.') && std::ranges::count(text, ' ') >= 2;
}

void expect_translated(const std::string& text, const std::string& where) {
    EXPECT_FALSE(has_letters(outside_brackets(text))) << where << ": " << text;
}

// A row is called by its key, which is nobody's language, or by words such as these.
const std::regex words_of_rows("season|line|row|header|more");

void expect_translated(const Findings& findings) {
    for (const auto& finding : findings) {
        expect_translated(finding.message, finding.table + " message");
        EXPECT_FALSE(std::regex_search(outside_brackets(finding.row.text()), words_of_rows))
            << finding.row.text();
        expect_translated(finding.remedy, finding.table + " remedy");
    }
}

void expect_translated(const Table& table) {
    for (const auto& row : table.rows) {
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            const auto text = to_text(row.cells[c]);
            if (reads_like_a_sentence(without_brackets(text))) {
                expect_translated(without_remarks(text),
                                  table.shape.name + " " + table.shape.columns[c].name);
            }
        }
    }
}

Run lent_run() {
    Run lent;
    lent.wording = bracketed;
    lent.progress = [](double, std::string_view step) { expect_translated(std::string(step), "a step"); };
    lent.note = [](std::string_view line) { expect_translated(std::string(line), "a note"); };
    return lent;
}

class InAnotherLanguage : public ::testing::TestWithParam<ExampleOf> {};

TEST_P(InAnotherLanguage, EveryExampleSaysEverythingInIt) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto& [operation, example] = GetParam();
    const auto outcome = operation->run(form_of(sample, *example), lent_run());
    expect_translated(outcome.findings);
    expect_translated(outcome.summary, "summary");
    EXPECT_TRUE(outcome.summary.text().starts_with("⟦")) << outcome.summary.text();
    for (const auto& line : outcome.answer) {
        expect_translated(line.topic, "topic");
        expect_translated(line.words, line.topic);
    }
    for (const auto& table : outcome.tables) {
        expect_translated(table);
    }
}

TEST_P(InAnotherLanguage, ItSaysTheSameAsInEnglish) {
    NEED_SAMPLE();
    const auto& [operation, example] = GetParam();
    const auto told = [&](const pipward::operation::Run& lent) {
        const testing::SampleCopy sample;
        return operation->run(form_of(sample, *example), lent).summary.text();
    };
    // The sample is styled in English: in another language the count of what is written again differs.
    if (operation->about().id != "book-style") {
        EXPECT_EQ(without_brackets(told(lent_run())), told({}));
    }
}

INSTANTIATE_TEST_SUITE_P(Operations, InAnotherLanguage, ::testing::ValuesIn(all_examples()), name_of);

// Nothing given, a parameter that there is not, and values that cannot be.
std::vector<Form> wrong_forms(const Operation& operation) {
    Form odd;
    for (const auto& parameter : operation.parameters()) {
        odd[parameter.key] = "-7.5 apples";
    }
    return {{}, {{"apples", "7"}}, odd};
}

TEST(Refusals, AreSaidInTheWordsOfTheHost) {
    for (const auto& operation : operations()) {
        for (const auto& form : wrong_forms(*operation)) {
            try {
                (void)operation->run(form, lent_run());
                ADD_FAILURE() << operation->about().id << " took it";
            } catch (const Error& error) {
                EXPECT_FALSE(error.findings().empty());
                expect_translated(error.findings());
            }
        }
    }
}

}  // namespace
}  // namespace pipward::operation
