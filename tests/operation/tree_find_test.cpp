// SPDX-License-Identifier: MIT
// Finding trees on the sample, from the search texts that a breeder has.
#include <gtest/gtest.h>

#include <algorithm>

#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

Outcome found_with(const testing::SampleCopy& sample, Form form) {
    form["book"] = sample.book();
    form.try_emplace("as-of", "2026-03-20");
    return find_operation("tree-find")->run(form, {});
}

std::string found_value(const Outcome& outcome, std::size_t row, const std::string& column) {
    const auto& table = outcome.tables.at(0);
    const auto at =
        std::ranges::find(table.shape.columns, column, &Column::name) - table.shape.columns.begin();
    return row < table.rows.size() ? to_text(table.rows[row].cells.at(static_cast<std::size_t>(at)))
                                   : "no row";
}

std::string first_label(const testing::SampleCopy& sample, const std::string& query) {
    return found_value(found_with(sample, {{"search", query}}), 0, "tree");
}

TEST(TreeFindOperation, FindsATreeOfTheSampleFromEachKindOfQuery) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    EXPECT_EQ(first_label(sample, "up-05-04"), "UP-05-04");
    EXPECT_EQ(first_label(sample, "17-02-a"), "LO-03-09");
    EXPECT_EQ(first_label(sample, "Dapplestead × Greywether no. 2"), "UP-05-10");
    EXPECT_EQ(first_label(sample, "17-02-02"), "UP-05-10");
    EXPECT_EQ(first_label(sample, "Upper 5 10"), "UP-05-10");
    EXPECT_EQ(first_label(sample, "voles"), "LO-01-03");
    EXPECT_EQ(found_value(found_with(sample, {{"search", "Dapelstead"}}), 0, "accession"), "Dapplestead");
}

TEST(TreeFindOperation, FindsEveryTreeByItsOwnLabel) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    for (const auto& tree : book::read_book(sample.book()).orchard.trees) {
        const auto outcome = found_with(sample, {{"search", tree.label}, {"limit", "1"}});
        EXPECT_EQ(found_value(outcome, 0, "tree"), tree.label);
        EXPECT_EQ(found_value(outcome, 0, "score"), "1") << tree.label;
    }
}

TEST(TreeFindOperation, TellsWhereATreeStandsAndWhatItCameOf) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = found_with(sample, {{"search", "17-01-03"}});
    EXPECT_EQ(found_value(outcome, 0, "address"), "block Upper, row 5, position 3");
    EXPECT_EQ(found_value(outcome, 0, "status"), "removed 2024-11-16: Culled: scab every year.");
    EXPECT_EQ(found_value(outcome, 0, "lineage"),
              "Larkfold Red × Larkfold Mix (Larkfold Early, Owlcombe, Tansy Lane)");
    EXPECT_EQ(found_value(outcome, 0, "geo_uri"),
              "geo:" + found_value(outcome, 0, "lat") + "," + found_value(outcome, 0, "lon") + ";u=0.5");
    EXPECT_EQ(outcome.crs, "EPSG:25832");
    EXPECT_TRUE(outcome.tables[0].rows[0].at);
    EXPECT_EQ(found_value(outcome, 0, "distance_m"), "");
}

TEST(TreeFindOperation, MeasuresFromWhereOneStands) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto tree = found_with(sample, {{"search", "UP-05-04"}});
    const auto here = found_value(tree, 0, "lat") + "," + found_value(tree, 0, "lon");
    const auto near = found_with(sample, {{"at", here}, {"limit", "3"}});
    EXPECT_EQ(found_value(near, 0, "tree"), "UP-05-04");
    EXPECT_LT(std::stod(found_value(near, 0, "distance_m")), 0.1);
    EXPECT_EQ(found_value(near, 1, "distance_m"), "3");  // the next in the row: trees stand 3 m apart
    EXPECT_EQ(found_value(near, 2, "distance_m"), "3");
}

TEST(TreeFindOperation, PutsTheNearestOfOneAccessionFirst) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto tree = found_with(sample, {{"search", "UP-03-09"}});
    const auto here = found_value(tree, 0, "lat") + "," + found_value(tree, 0, "lon");
    const auto outcome = found_with(sample, {{"search", "Kettlefen"}, {"at", here}});
    double before = 0;
    for (std::size_t row = 0; row < outcome.tables[0].rows.size(); ++row) {
        EXPECT_GE(std::stod(found_value(outcome, row, "distance_m")), before);
        before = std::stod(found_value(outcome, row, "distance_m"));
    }
    EXPECT_GT(outcome.tables[0].rows.size(), 3U);
    EXPECT_GT(before, 50.0);
}

TEST(TreeFindOperation, OffersTheNearestNamesWhereNothingIsFound) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = found_with(sample, {{"search", "Greyfriars"}});
    EXPECT_TRUE(outcome.tables[0].rows.empty());
    EXPECT_EQ(outcome.summary, "Nothing was found.");
    ASSERT_EQ(outcome.findings.size(), 1U);
    EXPECT_NE(outcome.findings[0].remedy.text().find("Greywether"), std::string::npos)
        << outcome.findings[0].remedy.text();
}

TEST(TreeFindOperation, WorksOnABookThatCannotBePlannedWith) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const Table goal{{"cross_goal",
                      "",
                      "",
                      false,
                      {{"code", CellType::text, "", "", ""},
                       {"season", CellType::whole, "", "", ""},
                       {"seed_parent", CellType::text, "", "", ""},
                       {"pollen_parent", CellType::text, "", "", ""},
                       {"seedlings_wanted", CellType::whole, "", "", ""}}},
                     {{{"26-98", std::int64_t{2026}, "Nobody", "No one", std::int64_t{10}}}}};
    book::append_rows(sample.book(), goal);
    EXPECT_THROW(
        (void)find_operation("season-plan")->run({{"book", sample.book()}, {"as-of", "2026-03-20"}}, {}),
        Error);
    EXPECT_EQ(first_label(sample, "UP-05-04"), "UP-05-04");
}

TEST(TreeFindOperation, LeavesEveryByteOfTheBook) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto before = sample.bytes();
    (void)found_with(sample, {{"search", "Wrenlea"}});
    EXPECT_EQ(sample.bytes(), before);
}

TEST(TreeFindOperation, SaysThatABookHasNoTrees) {
    const testing::SampleCopy folder;
    (void)find_operation("book-new")->run({{"book", folder.path("new.gpkg")}, {"crs", "EPSG:25832"}}, {});
    const auto outcome =
        find_operation("tree-find")
            ->run({{"book", folder.path("new.gpkg")}, {"search", "A"}, {"as-of", "2026-03-20"}}, {});
    ASSERT_EQ(outcome.findings.size(), 1U);
    EXPECT_EQ(outcome.findings[0].remedy, "The book has no trees yet.");
}

TEST(TreeFindOperation, RefusesACallWithoutAnythingToLookFor) {
    const auto& operation = *find_operation("tree-find");
    EXPECT_EQ(operation.check({{"book", "b.gpkg"}, {"as-of", "2026-03-20"}}).size(), 1U);
    EXPECT_EQ(operation.check({{"book", "b.gpkg"}, {"as-of", "2026-03-20"}, {"search", "  "}}).size(), 1U);
    EXPECT_EQ(operation.check({{"book", "b.gpkg"}, {"as-of", "2026-03-20"}, {"search", "A"}, {"at", "north"}})
                  .size(),
              1U);
    EXPECT_EQ(operation.check({{"book", "b.gpkg"}, {"as-of", "2026-03-20"}, {"at", "48,9"}}).size(), 0U);
}

}  // namespace
}  // namespace pipward::operation
