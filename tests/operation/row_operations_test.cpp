// SPDX-License-Identifier: MIT
// Rows laid into the sample, trees set out on them through a noisy receiver, and numbered again.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

#include "asked.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using testing::cell_of;
using testing::complaints;
using testing::has;
using testing::run;
using testing::SampleCopy;

const Form new_block{{"block", "Trial"},
                     {"add-block", "yes"},
                     {"spacing", "2"},
                     {"as-of", "2026-03-20"},
                     {"row-distance", "4"},
                     {"rows", "6"},
                     {"points", "522460 5331330, 522520 5331347.5"},
                     {"write", "yes"}};

std::string row_complaint(const SampleCopy& sample, Form changes) {
    Form form = new_block;
    for (auto& [key, value] : changes) {
        form[key] = value;
    }
    const auto before = sample.bytes();
    const auto findings = complaints(sample, "row-lay", form);
    EXPECT_EQ(sample.bytes(), before) << "a refused request must not touch the book";
    return findings.empty() ? "nothing" : to_text(findings.back());
}

/// Trees on the positions of the block, each some decimetres off, without row and position.
Table trees_on(const Table& positions, double off, const std::string& block) {
    Table trees;
    trees.shape.name = "tree";
    trees.shape.columns = {{"label", CellType::text, "", "", ""}, {"purpose", CellType::text, "", "", ""}};
    // Errors that came back every few trees would look like a second spacing, and be asked about.
    std::mt19937 random(7);
    std::uniform_real_distribution<double> error(-off, off);
    for (std::size_t i = 0; i < positions.rows.size(); ++i) {
        if (to_text(cell_of(positions, i, "block")) != block || i % 9 == 4) {
            continue;
        }
        Row row;
        row.cells.emplace_back(fmt::format("T{}-{}", to_text(cell_of(positions, i, "row")),
                                           to_text(cell_of(positions, i, "position"))));
        row.cells.emplace_back(std::string("seedling"));
        row.at = positions.rows[i].at;
        row.at->x += error(random);
        row.at->y += error(random);
        trees.rows.push_back(std::move(row));
    }
    return trees;
}

TEST(RowLayOperation, AddsRowsAndWritesThePositionsOfAllRows) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto before = book::read_book(sample.book()).orchard;
    const auto outcome = run(sample, "row-lay", new_block);
    const auto after = book::read_book(sample.book());
    EXPECT_FALSE(has_errors(after.findings));
    EXPECT_EQ(after.orchard.rows.size(), before.rows.size() + 6);
    EXPECT_EQ(after.orchard.blocks.size(), before.blocks.size() + 1);
    EXPECT_EQ(after.orchard.trees.size(), before.trees.size());
    const auto positions = book::read_result(sample.book(), "row_position");
    ASSERT_TRUE(positions);
    std::map<std::string, int> states;
    for (std::size_t i = 0; i < positions->rows.size(); ++i) {
        ++states[to_text(cell_of(*positions, i, "block")) + " " + to_text(cell_of(*positions, i, "state"))];
    }
    EXPECT_EQ(states["Trial vacant"], 192);
    EXPECT_EQ(states["Lower taken"] + states["Upper taken"], 115);
    EXPECT_FALSE(has_errors(book::check_orchard(after.orchard, make_day({2026, 3, 20}).value())));
}

TEST(RowLayOperation, TellsAPositionThatIsReservedForATreeToCome) {
    NEED_SAMPLE();
    const SampleCopy sample;
    run(sample, "row-lay", new_block);
    Table tree;
    tree.shape.name = "tree";
    for (const auto* name : {"label", "block", "row", "position", "planted_on"}) {
        tree.shape.columns.push_back({name, CellType::text, "", "", ""});
    }
    tree.rows.push_back({{std::string("N1"), std::string("Trial"), std::string("2"), std::int64_t{3},
                          make_day({2026, 11, 1}).value()}});
    book::append_rows(sample.book(), tree);
    const auto outcome =
        run(sample, "row-lay",
            {{"block", "Trial"}, {"spacing", "2"}, {"points", "522460 5331300, 522500 5331300"}});
    const auto& positions = outcome.tables.at(1);
    for (std::size_t i = 0; i < positions.rows.size(); ++i) {
        if (to_text(cell_of(positions, i, "tree")) == "N1") {
            EXPECT_EQ(to_text(cell_of(positions, i, "state")), "reserved");
            EXPECT_EQ(to_text(cell_of(positions, i, "address")), "block Trial, row 2, position 3");
            return;
        }
    }
    FAIL() << "the tree to come has no position";
}

TEST(RowLayOperation, ShowsWithoutWriting) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto before = sample.bytes();
    auto form = new_block;
    form.erase("write");
    EXPECT_EQ(run(sample, "row-lay", form).tables.at(0).rows.size(), 6u);
    EXPECT_EQ(sample.bytes(), before);
}

TEST(RowLayOperation, SaysWhatIsWrongAndTouchesNothing) {
    NEED_SAMPLE();
    const SampleCopy sample;
    EXPECT_TRUE(has(row_complaint(sample, {{"spacing", "0"}}), "out of its range"));
    EXPECT_TRUE(has(row_complaint(sample, {{"first-position", "-3"}}), "out of its range"));
    EXPECT_TRUE(has(row_complaint(sample, {{"points", "522460 5331330, 522460 5331330"}}), "no length"));
    EXPECT_TRUE(has(row_complaint(sample, {{"points", "522460 5331330"}}), "no length"));
    EXPECT_TRUE(has(row_complaint(sample, {{"points", "here and there"}}), "no line"));
    EXPECT_TRUE(has(row_complaint(sample, {{"points", "POLYGON ((0 0, 1 0, 1 1, 0 0))"}}), "no line"));
    EXPECT_TRUE(has(row_complaint(sample, {{"points", "5331330 522460, 5331347 522520"}}), "swapped"));
    EXPECT_TRUE(has(row_complaint(sample, {{"points", "9.302 48.134, 9.303 48.134"}}), "look like degrees"));
    EXPECT_TRUE(
        has(row_complaint(sample, {{"points", "48.134 9.302, 48.134 9.303"}, {"layer-crs", "EPSG:4326"}}),
            "swapped"));
    EXPECT_TRUE(has(row_complaint(sample, {{"layer-crs", "EPSG:99999999"}}), "not known"));
    EXPECT_TRUE(
        has(row_complaint(sample, {{"block", "Nowhere"}, {"add-block", "no"}}), "no block of this name"));
    EXPECT_TRUE(has(row_complaint(sample, {{"block", "Upper"}, {"row", "1"}}), "row of this name already"));
    EXPECT_TRUE(has(row_complaint(sample, {{"row", "gate"}}), "do not follow"));
    EXPECT_TRUE(has(row_complaint(sample, {{"row-distance", ""}}), "row-distance"));
    EXPECT_TRUE(has(row_complaint(sample, {{"layer-file", "/no/such/file"}}), "Points and a file"));
}

TEST(RowLayOperation, TakesPointsInAnotherSystemAndWithHeights) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto outcome = run(sample, "row-lay",
                             {{"block", "Upper"},
                              {"row", "G1"},
                              {"spacing", "2"},
                              {"layer-crs", "EPSG:4326"},
                              {"write", "yes"},
                              {"points", "9.3020 48.1340 440, 9.3026 48.1340 444"}});
    EXPECT_EQ(to_text(cell_of(outcome.tables[0], 0, "positions")), "23");
    const auto rows = book::read_book(sample.book()).orchard.rows;
    const auto row = std::ranges::find(rows, "G1", &TreeRow::name);
    ASSERT_NE(row, rows.end());
    ASSERT_TRUE(row->line.front().height);
    EXPECT_NEAR(row->line.front().height->value, 440, 1e-6);
}

TEST(RowLayOperation, TakesStrangeRowNames) {
    NEED_SAMPLE();
    const SampleCopy sample;
    for (const auto& name : {std::string("O'Brien \"3\""), std::string("🍎 Reihe"),
                             std::string(300, 'x') + "1", std::string("'); DROP TABLE tree; --")}) {
        auto form = new_block;
        form["rows"] = "1";
        form["row"] = name;
        run(sample, "row-lay", form);
        const auto rows = book::read_book(sample.book()).orchard.rows;
        EXPECT_NE(std::ranges::find(rows, name, &TreeRow::name), rows.end()) << name;
    }
}

TEST(RowLayOperation, ReadsLinesAndPointsFromAFileAndSaysWhatItLeftOut) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto points = sample.put("survey.csv",
                                   "row,lon,lat\nA,9.3020,48.1340\nA,9.3026,48.1340\nB,9.3020,48.1341\n"
                                   "B,9.3023,48.1341\nB,9.3026,48.1341\n");
    const auto outcome =
        run(sample, "row-lay",
            {{"block", "Upper"}, {"spacing", "2"}, {"layer-file", points}, {"layer-crs", "EPSG:4326"}});
    EXPECT_EQ(outcome.tables[0].rows.size(), 2u);
    const auto lines = sample.put("rows.geojson",
                                  R"({"type":"FeatureCollection","features":[
            {"type":"Feature","properties":{"name":"C"},"geometry":{"type":"LineString",
             "coordinates":[[9.3020,48.1342],[9.3026,48.1342]]}},
            {"type":"Feature","properties":{"name":"D"},"geometry":{"type":"Polygon",
             "coordinates":[[[9.30,48.13],[9.31,48.13],[9.31,48.14],[9.30,48.13]]]}}]})");
    const auto drawn = run(sample, "row-lay", {{"block", "Upper"}, {"spacing", "2"}, {"layer-file", lines}});
    EXPECT_EQ(drawn.tables[0].rows.size(), 1u);
    EXPECT_TRUE(std::ranges::any_of(
        drawn.findings, [](const Finding& f) { return has(f.message, "neither a point nor a line"); }));
}

TEST(RowNumberOperation, FindsTheNumbersOfTreesAgainInTheRowsThatWereLaid) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto laid = run(sample, "row-lay", new_block);
    const auto trees = trees_on(laid.tables.at(1), 0.4, "Trial");
    book::append_rows(sample.book(), trees);
    const auto outcome = run(sample, "row-number", {{"block", "Trial"}, {"write", "yes"}});
    std::size_t right = 0;
    for (const auto& tree : book::read_book(sample.book()).orchard.trees) {
        if (tree.label.starts_with("T") && tree.row) {
            EXPECT_EQ(tree.label, fmt::format("T{}-{}", *tree.row, *tree.position));
            EXPECT_EQ(tree.block, "Trial");
            ++right;
        }
    }
    EXPECT_EQ(right, trees.rows.size());
    EXPECT_TRUE(outcome.findings.empty());
}

TEST(RowNumberOperation, FindsTheRowsFromTheTreesAloneAndAddsThem) {
    NEED_SAMPLE();
    const SampleCopy made;
    auto dry = new_block;
    dry.erase("write");
    const auto laid = run(made, "row-lay", dry);
    const auto trees = trees_on(laid.tables.at(1), 0.3, "Trial");
    book::append_rows(made.book(), trees);
    Table block;
    block.shape.name = "block";
    block.shape.columns = {{"name", CellType::text, "", "", ""}};
    block.rows.push_back({{std::string("Trial")}});
    book::append_rows(made.book(), block);
    const auto shown = run(made, "row-number", {{"block", "Trial"}});
    EXPECT_EQ(book::read_result(made.book(), "tree_number")->rows.size(), trees.rows.size());
    EXPECT_TRUE(std::ranges::none_of(book::read_book(made.book()).orchard.trees, [](const Tree& tree) {
        return tree.label.starts_with("T") && tree.row;
    })) << "without write no tree is changed";
    run(made, "row-number", {{"block", "Trial"}, {"write", "yes"}});
    const auto after = book::read_book(made.book()).orchard;
    int right = 0;
    for (const auto& tree : after.trees) {
        right += tree.label.starts_with("T") && tree.row &&
                         tree.label == fmt::format("T{}-{}", *tree.row, *tree.position)
                     ? 1
                     : 0;
    }
    EXPECT_GE(right, static_cast<int>(trees.rows.size()) - 1);
    EXPECT_EQ(std::ranges::count(after.rows, "Trial", &TreeRow::block), 6);
    // The rows it added hold the trees that it numbered.
    const auto again =
        run(made, "row-lay",
            {{"block", "Trial"}, {"spacing", "2"}, {"points", "522460 5331300, 522500 5331300"}});
    EXPECT_TRUE(std::ranges::none_of(
        again.findings, [](const Finding& finding) { return has(finding.message, "no such position"); }));
}

TEST(RowNumberOperation, LeavesOpenWhatTheBookSaysOtherwiseAndTellsEachTree) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto orchard = book::read_book(sample.book()).orchard;
    const auto standing = std::ranges::find_if(orchard.trees, [](const Tree& tree) {
        return tree.block == "Lower" && tree.row && !tree.removed_on;
    });
    Table twin;
    twin.shape.name = "tree";
    twin.shape.columns = {{"label", CellType::text, "", "", ""}};
    twin.rows.push_back({{std::string("Twin")}, standing->at});
    book::append_rows(sample.book(), twin);
    const auto outcome = run(sample, "row-number", {{"block", "Lower"}, {"write", "yes"}});
    ASSERT_EQ(outcome.findings.size(), 1u);
    EXPECT_EQ(outcome.findings[0].row, "Twin");
    EXPECT_TRUE(has(outcome.findings[0].message, standing->label)) << outcome.findings[0].message.text();
    const auto after = book::read_book(sample.book()).orchard.trees;
    EXPECT_FALSE(std::ranges::find(after, "Twin", &Tree::label)->row);
}

TEST(RowNumberOperation, NeverChangesTreesThatHaveANumberAndWritesNothingWhenDry) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto before = sample.bytes();
    const auto outcome = run(sample, "row-number", {{"block", "Upper"}, {"keep", "no"}});
    EXPECT_TRUE(outcome.tables.at(0).rows.empty());
    EXPECT_EQ(sample.bytes(), before);
    EXPECT_FALSE(complaints(sample, "row-number", {{"block", "Nowhere"}}).empty());
    EXPECT_FALSE(
        complaints(sample, "row-number", {{"block", "Upper"}, {"points", "1 2"}, {"write", "yes"}}).empty());
}

}  // namespace
}  // namespace pipward::operation
