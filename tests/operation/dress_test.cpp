// SPDX-License-Identifier: MIT
// Who dresses a book, and when.
#include <gtest/gtest.h>

#include <algorithm>

#include "operation/sample_copy.h"
#include "pipward/operation/book/dress_book.h"
#include "pipward/operation/operation.h"
#include "pipward/operation/season/result_tables.h"

namespace pipward::operation {
namespace {

Outcome run(const std::string& id, const Form& form) {
    return find_operation(id)->run(form, {});
}

TEST(BookDress, SaysOfEveryLayerWhatWasDone) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = run("book-dress", {{"book", sample.book()}});
    ASSERT_EQ(outcome.tables.size(), 1U);
    EXPECT_EQ(outcome.tables[0].rows.size(), book::book_tables().size() + 1);
    const auto again = run("book-dress", {{"book", sample.book()}});
    EXPECT_TRUE(again.summary.text().starts_with("0 written")) << again.summary.text();
}

TEST(BookDress, ANewBookIsDressedAtOnce) {
    const testing::SampleCopy folder;
    run("book-new", {{"book", folder.path("new.gpkg")}, {"crs", "EPSG:25832"}});
    EXPECT_TRUE(book::look_at_book(folder.path("new.gpkg")).dressed);
    EXPECT_TRUE(dress_book(folder.path("new.gpkg")).written.empty());
}

TEST(BookDress, APlanBringsItsLayersIntoTheMapOfADressedBook) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const Form form{{"book", sample.book()}, {"as-of", "2026-03-20"}};
    run("season-plan", form);
    const auto report = dress_book(sample.book());
    EXPECT_TRUE(report.written.empty());
    EXPECT_TRUE(report.changed_by_user.empty());
    for (const auto& shape : find_operation("season-plan")->results()) {
        EXPECT_EQ(std::ranges::count(report.unchanged, shape.name), 1) << shape.name;
    }
}

TEST(BookDress, APlanLeavesABookUndressedThatNeverWas) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    book::create_book(sample.path("plain.gpkg"), "EPSG:25832");
    EXPECT_TRUE(refresh_dress(sample.path("plain.gpkg")).empty());
    EXPECT_FALSE(book::look_at_book(sample.path("plain.gpkg")).dressed);
}

TEST(BookDress, ABookThatCannotBeDressedAnewOnlyWarns) {
    const auto findings = refresh_dress("nowhere.gpkg");
    ASSERT_FALSE(findings.empty());
    EXPECT_FALSE(has_errors(findings));
}

TEST(BookDress, NoAliasOfAResultIsACodeWord) {
    for (const auto& shape : book_result_shapes()) {
        const auto dress = find_dress(shape.name, std::nullopt);
        ASSERT_TRUE(dress) << shape.name;
        EXPECT_EQ(dress->fields.size(), shape.columns.size() + 1);
        for (const auto& field : dress->fields) {
            EXPECT_EQ(field.alias.find('_'), std::string::npos) << shape.name << ": " << field.alias;
            EXPECT_FALSE(field.alias.empty());
        }
    }
    EXPECT_FALSE(find_dress("no_such_table", std::nullopt));
}

}  // namespace
}  // namespace pipward::operation
