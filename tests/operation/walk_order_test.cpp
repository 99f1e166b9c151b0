// SPDX-License-Identifier: MIT
// Walks on the sample: two blocks of five rows.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"
#include "pipward/record/table_text.h"

namespace pipward::operation {
namespace {

const std::string gate = "48.1335,9.3009";

Outcome walked(const testing::SampleCopy& sample, Form form) {
    form["book"] = sample.book();
    form.try_emplace("as-of", "2026-03-20");
    return find_operation("walk-order")->run(form, {});
}

std::string walk_value(const Table& table, std::size_t row, const std::string& column) {
    const auto at =
        std::ranges::find(table.shape.columns, column, &Column::name) - table.shape.columns.begin();
    return row < table.rows.size() ? to_text(table.rows[row].cells.at(static_cast<std::size_t>(at)))
                                   : "no row";
}

std::vector<std::string> labels(const Outcome& outcome) {
    std::vector<std::string> labels;
    for (std::size_t row = 0; row < outcome.tables[0].rows.size(); ++row) {
        labels.push_back(walk_value(outcome.tables[0], row, "tree"));
    }
    return labels;
}

double length_of(const std::vector<MapPoint>& line) {
    double metres = 0;
    for (std::size_t i = 1; i < line.size(); ++i) {
        metres += std::hypot(line[i].x - line[i - 1].x, line[i].y - line[i - 1].y);
    }
    return metres;
}

Findings walk_complaints(const testing::SampleCopy& sample, Form form) {
    try {
        (void)walked(sample, std::move(form));
    } catch (const Error& error) {
        return error.findings();
    }
    return {};
}

TEST(WalkOrder, VisitsEveryStandingTreeOfAnAccessionOnceAndDrawsTheWay) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = walked(sample, {{"accessions", "Wrenlea"}, {"at", gate}, {"back", "yes"}});
    std::vector<std::string> wanted;
    for (const auto& tree : book::read_book(sample.book()).orchard.trees) {
        if (tree.accession == "Wrenlea" && !tree.removed_on) {
            wanted.push_back(tree.label);
        }
    }
    auto found = labels(outcome);
    std::ranges::sort(found);
    std::ranges::sort(wanted);
    EXPECT_EQ(found, wanted);
    const auto& legs = outcome.tables[1];
    ASSERT_EQ(legs.rows.size(), wanted.size() + 1);
    for (std::size_t leg = 0; leg < legs.rows.size(); ++leg) {
        // The grid's scale and the meridian's turn differ from the ground by less than one in a thousand.
        const double said = std::stod(walk_value(legs, leg, "distance_m"));
        EXPECT_NEAR(length_of(legs.rows[leg].line), said, 0.05 + said / 1000);
    }
    EXPECT_EQ(walk_value(legs, 0, "from"), "start");
    EXPECT_EQ(walk_value(legs, legs.rows.size() - 1, "to"), "end");
    EXPECT_EQ(outcome.crs, "EPSG:25832");
    EXPECT_NE(to_csv(legs).find("LINESTRING"), std::string::npos);
}

TEST(WalkOrder, CrossesTheAlleyBetweenTwoRows) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto outcome = walked(sample, {{"trees", "LO-03-05"}, {"at", "LO-02-05"}});
    EXPECT_EQ(walk_value(outcome.tables[0], 0, "distance_m"), "2");  // rows are 4 m apart, one stands 1 m off
    EXPECT_EQ(walk_value(outcome.tables[0], 0, "alley"), "between rows 3 and 2");
    EXPECT_EQ(walk_value(outcome.tables[0], 0, "address"), "block Lower, row 3, position 5");
    const auto round = walked(sample, {{"trees", "LO-04-05"}, {"at", "LO-02-05"}});
    EXPECT_GT(std::stod(walk_value(round.tables[0], 0, "distance_m")), 25);
    const auto straight = walked(sample, {{"trees", "LO-04-05"}, {"at", "LO-02-05"}, {"alleys", "no"}});
    EXPECT_NEAR(std::stod(walk_value(straight.tables[0], 0, "distance_m")), 8, 0.1);
}

TEST(WalkOrder, TakesTheTreesThatThePlanHasWorkFor) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto before = walk_complaints(sample, {{"urgency", "later"}});
    ASSERT_EQ(before.size(), 1U);
    EXPECT_EQ(before[0].remedy, "Make one with season-plan, then ask again.");
    (void)find_operation("season-plan")->run({{"book", sample.book()}, {"as-of", "2026-04-16"}}, {});
    const auto tasks = book::read_result(sample.book(), "field_task");
    ASSERT_TRUE(tasks && !tasks->rows.empty());
    const auto day = walk_value(*tasks, 0, "do_from");
    const auto outcome = walked(sample, {{"tasks-on", day}});
    const auto found = labels(outcome);
    EXPECT_NE(std::ranges::find(found, walk_value(*tasks, 0, "tree")), found.end());
    for (std::size_t row = 0; row < found.size(); ++row) {
        EXPECT_NE(walk_value(outcome.tables[0], row, "work"), "");
    }
    EXPECT_TRUE(labels(walked(sample, {{"tasks-on", "2031-01-01"}})).empty());
}

TEST(WalkOrder, OffersTheNearestLabelsForATreeThatIsNotThere) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto found =
        walk_complaints(sample, {{"trees", "LO-03-05, LO-03-99; nowhere at all"}, {"at", "UP-99-01"}});
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0].value, "LO-03-99");
    EXPECT_NE(found[0].remedy.text().find("The nearest labels are: LO-03-"), std::string::npos)
        << found[0].remedy.text();
    EXPECT_EQ(found[1].value, "nowhere at all");
    EXPECT_EQ(found[2].field, "at");
    EXPECT_EQ(labels(walked(sample, {{"trees", "lo 3 5"}})), std::vector<std::string>{"LO-03-05"});
}

TEST(WalkOrder, SaysThatLatitudeAndLongitudeAreSwapped) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto swapped = walk_complaints(sample, {{"block", "Upper"}, {"at", "9.3009,48.1335"}});
    ASSERT_EQ(swapped.size(), 1U);
    EXPECT_NE(swapped[0].message.text().find("wrong way round"), std::string::npos)
        << swapped[0].message.text();
    EXPECT_EQ(swapped[0].remedy, "Write the latitude first: 48.1335,9.3009.");
    const auto far = walk_complaints(sample, {{"block", "Upper"}, {"at", "-33.9,151.2"}});
    ASSERT_EQ(far.size(), 1U);
    EXPECT_NE(far[0].message.text().find("km from the nearest tree"), std::string::npos)
        << far[0].message.text();
}

TEST(WalkOrder, LeavesOutRemovedTreesAndTreesWithoutAPlaceAndSaysSo) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const Table without_place{
        {"tree",
         "",
         "",
         false,
         {{"label", CellType::text, "", "", ""}, {"purpose", CellType::text, "", "", ""}}},
        {{{"NEW-1", "seedling"}}}};
    book::append_rows(sample.book(), without_place);
    const auto outcome = walked(sample, {{"trees", "NEW-1, LO-01-03, LO-01-04"}});
    EXPECT_EQ(labels(outcome), std::vector<std::string>{"LO-01-04"});
    int said = 0;
    for (const auto& finding : outcome.findings) {
        said += finding.message.text().find("it is left out") != std::string::npos ? 1 : 0;
    }
    EXPECT_EQ(said, 2);
}

TEST(WalkOrder, RefusesCallsThatMeanNothing) {
    const auto& operation = *find_operation("walk-order");
    EXPECT_EQ(operation.check({{"book", "b"}, {"as-of", "2026-03-20"}}).size(), 1U);
    EXPECT_EQ(operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"trees", " "}}).size(), 1U);
    EXPECT_EQ(
        operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"trees", "A"}, {"back", "yes"}}).size(),
        1U);
    EXPECT_EQ(operation
                  .check({{"book", "b"},
                          {"as-of", "2026-03-20"},
                          {"trees", "A"},
                          {"at", "B"},
                          {"end", "C"},
                          {"back", "yes"}})
                  .size(),
              1U);
    EXPECT_EQ(
        operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"trees", "A"}, {"gap-m", "-1"}}).size(),
        1U);
    EXPECT_EQ(
        operation.check({{"book", "b"}, {"as-of", "2026-03-20"}, {"trees", "A"}, {"urgency", "soon"}}).size(),
        1U);
}

TEST(WalkOrder, LeavesEveryByteOfTheBook) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    const auto before = sample.bytes();
    (void)walked(sample, {{"block", "Lower"}});
    EXPECT_EQ(sample.bytes(), before);
}

}  // namespace
}  // namespace pipward::operation
