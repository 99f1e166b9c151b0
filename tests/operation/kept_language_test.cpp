// SPDX-License-Identifier: MIT
// What a run leaves in the book is in the language of who asked for it.
#include <gtest/gtest.h>

#include "bracketed.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using testing::bracketed;
using testing::without_brackets;

Outcome run_in(const Wording& wording, const std::string& id, const Form& form) {
    pipward::operation::Run lent;
    lent.wording = wording;
    return find_operation(id)->run(form, lent);
}

std::size_t column_at(const Table& table, std::string_view name) {
    return static_cast<std::size_t>(std::ranges::find(table.shape.columns, name, &Column::name) -
                                    table.shape.columns.begin());
}

std::vector<std::string> texts_in(const Table& table, std::string_view name) {
    const auto column = column_at(table, name);
    std::vector<std::string> texts;
    for (const auto& row : table.rows) {
        texts.push_back(to_text(row.cells.at(column)));
    }
    return texts;
}

// The table of positions that a book holds after a row was added.
std::optional<Table> positions_kept(const Wording& wording) {
    const testing::SampleCopy sample;
    run_in(wording, "row-lay",
           {{"book", sample.book()},
            {"block", "Upper"},
            {"spacing", "3"},
            {"points", "522400 5331200, 522440 5331210"},
            {"row", "77"},
            {"write", "yes"},
            {"as-of", "2026-03-20"}});
    return book::read_result(sample.book(), "row_position");
}

TEST(KeptLanguage, SentencesOfAResultAreKeptInTheWordsOfTheHostAndCodesStay) {
    NEED_SAMPLE();
    const auto kept = positions_kept(bracketed);
    const auto english = positions_kept(in_english);
    ASSERT_TRUE(kept && english);
    ASSERT_EQ(kept->rows.size(), english->rows.size());
    EXPECT_EQ(texts_in(*kept, "state"), texts_in(*english, "state"));
    const auto said = texts_in(*kept, "address");
    const auto plain = texts_in(*english, "address");
    for (std::size_t i = 0; i < said.size(); ++i) {
        EXPECT_TRUE(said[i].starts_with("⟦")) << said[i];
        EXPECT_EQ(without_brackets(said[i]), plain[i]);
    }
}

TEST(KeptLanguage, AStyleOfOursIsPutIntoTheLanguageOfWhoStyles) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const Form form{{"book", sample.book()}};
    const auto first = without_brackets(run_in(bracketed, "book-style", form).summary.text());
    EXPECT_TRUE(first.find(" written, 0 unchanged, 0 of your own kept") != first.npos) << first;
    const auto again = without_brackets(run_in(bracketed, "book-style", form).summary.text());
    EXPECT_TRUE(again.starts_with("0 written")) << again;
}

}  // namespace
}  // namespace pipward::operation
