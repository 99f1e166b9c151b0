// SPDX-License-Identifier: MIT
// The whole way out and back: a block laid out, trees measured with a poor receiver, numbered, labelled; a
// label scanned years later leads to its tree, and a walk to its place.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "asked.h"
#include "operation/sample_copy.h"
#include "paper/printing.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"
#include "pipward/paper/label_grid.h"

namespace pipward::operation {
namespace {

using testing::run;
using testing::SampleCopy;
using testing::value;

constexpr double noise = 0.4;  // metres, root mean square of both axes: a fifth of the spacing

/// Trees on the block's positions as a receiver gives them; the label keeps the truth.
Table measured_trees(const Table& positions) {
    std::mt19937 source(4);
    std::normal_distribution<double> off(0, noise / std::sqrt(2.0));
    Table trees;
    trees.shape.name = "tree";
    trees.shape.columns = {{"label", CellType::text, "", "", ""}, {"purpose", CellType::text, "", "", ""}};
    for (std::size_t i = 0; i < positions.rows.size(); ++i) {
        if (value(positions, i, "block") == "Trial" && i % 8 != 3) {
            Row row{{fmt::format("T{}-{}", value(positions, i, "row"), value(positions, i, "position")),
                     std::string("seedling")}};
            row.at = positions.rows[i].at;
            row.at->x += off(source);
            row.at->y += off(source);
            trees.rows.push_back(std::move(row));
        }
    }
    return trees;
}

TEST(RoundTrip, FromTheLaidRowOverTheScannedLabelBackToTheTree) {
    NEED_SAMPLE();
    NEED_PROGRAM("pdftoppm");
    NEED_PROGRAM("zbarimg");
    const SampleCopy sample;
    run(sample, "row-lay",
        {{"block", "Trial"},
         {"add-block", "yes"},
         {"spacing", "2"},
         {"row-distance", "4"},
         {"rows", "4"},
         {"points", "522460 5331330, 522520 5331347.5"},
         {"write", "yes"}});
    book::append_rows(sample.book(), measured_trees(*book::read_result(sample.book(), "row_position")));
    run(sample, "row-number",
        {{"block", "Trial"}, {"write", "yes"}, {"spacing", "2"}, {"row-distance", "4"}});

    const auto labels = run(sample, "label-sheet", {{"block", "Trial"}});
    const auto& table = labels.tables.at(0);
    ASSERT_GT(table.rows.size(), 90U);
    const testing::PrintedFile file(labels.files.at(0).content);
    const std::size_t row = 57;
    const auto box = paper::label_box(paper::grid_of(paper::LabelSheet::a4_70x37),
                                      std::stoi(value(table, row, "place")) - 1);
    auto scanned = testing::codes_in(file, std::stoi(value(table, row, "page")), 300, {box});
    ASSERT_FALSE(scanned.empty());
    scanned.pop_back();
    EXPECT_EQ(scanned, value(table, row, "label"));

    const auto found = run(sample, "tree-find", {{"search", scanned}, {"as-of", "2026-03-20"}});
    EXPECT_EQ(value(found.tables.at(0), 0, "tree"), scanned);
    EXPECT_EQ(fmt::format("T{}-{}", value(found.tables[0], 0, "row"), value(found.tables[0], 0, "position")),
              scanned)
        << "the number found is the one it was laid on";

    const auto walk = run(sample, "walk-order",
                          {{"trees", scanned + ", LO-01-01"}, {"at", "LO-01-01"}, {"as-of", "2026-03-20"}});
    bool reached = false;
    for (std::size_t i = 0; i < walk.tables.at(0).rows.size(); ++i) {
        reached = reached || value(walk.tables[0], i, "tree") == scanned;
    }
    EXPECT_TRUE(reached);
}

}  // namespace
}  // namespace pipward::operation
