// SPDX-License-Identifier: MIT
// Who styles a book, and when.
#include <gtest/gtest.h>

#include <algorithm>

#include "operation/sample_copy.h"
#include "pipward/operation/book/style_book.h"
#include "pipward/operation/operation.h"
#include "pipward/operation/season/result_tables.h"

namespace pipward::operation {
namespace {

Outcome styled(const std::string& id, const Form& form) {
    return find_operation(id)->run(form, {});
}

TEST(BookStyle, SaysOfEveryLayerWhatWasDone) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = styled("book-style", {{"book", sample.book()}});
    ASSERT_EQ(outcome.tables.size(), 1U);
    EXPECT_EQ(outcome.tables[0].rows.size(), book::book_tables().size() + 1);
    const auto again = styled("book-style", {{"book", sample.book()}});
    EXPECT_TRUE(again.summary.text().starts_with("0 written")) << again.summary.text();
}

TEST(BookStyle, ANewBookIsStyledAtOnce) {
    const testing::SampleCopy folder;
    styled("book-new", {{"book", folder.path("new.gpkg")}, {"crs", "EPSG:25832"}});
    EXPECT_TRUE(book::look_at_book(folder.path("new.gpkg")).styled);
    EXPECT_TRUE(style_book(folder.path("new.gpkg")).written.empty());
}

TEST(BookStyle, APlanBringsItsLayersIntoTheMapOfAStyledBook) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const Form form{{"book", sample.book()}, {"as-of", "2026-03-20"}};
    styled("season-plan", form);
    const auto report = style_book(sample.book());
    EXPECT_TRUE(report.written.empty());
    EXPECT_TRUE(report.changed_by_user.empty());
    for (const auto& shape : find_operation("season-plan")->results()) {
        EXPECT_EQ(std::ranges::count(report.unchanged, shape.name), 1) << shape.name;
    }
}

TEST(BookStyle, APlanLeavesABookUnstyledThatNeverWas) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    book::create_book(sample.path("plain.gpkg"), "EPSG:25832");
    EXPECT_TRUE(refresh_style(sample.path("plain.gpkg")).empty());
    EXPECT_FALSE(book::look_at_book(sample.path("plain.gpkg")).styled);
}

TEST(BookStyle, ABookThatCannotBeStyledAgainOnlyWarns) {
    const auto findings = refresh_style("nowhere.gpkg");
    ASSERT_FALSE(findings.empty());
    EXPECT_FALSE(has_errors(findings));
}

TEST(BookStyle, NoAliasOfAResultIsACodeWord) {
    for (const auto& shape : book_result_shapes()) {
        const auto style = find_style(shape.name, std::nullopt);
        ASSERT_TRUE(style) << shape.name;
        EXPECT_EQ(style->fields.size(), shape.columns.size() + 1);
        for (const auto& field : style->fields) {
            EXPECT_EQ(field.alias.find('_'), std::string::npos) << shape.name << ": " << field.alias;
            EXPECT_FALSE(field.alias.empty());
        }
    }
    EXPECT_FALSE(find_style("no_such_table", std::nullopt));
}

}  // namespace
}  // namespace pipward::operation
