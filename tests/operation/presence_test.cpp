// SPDX-License-Identifier: MIT
// A day of removal or of planting that lies ahead: every operation asks whether a tree stands on its own day.
#include <gtest/gtest.h>

#include <fmt/format.h>
#include <algorithm>
#include <set>

#include "asked.h"
#include "operation/own_rows.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using testing::value;

const std::string tree = "LO-02-02";  // of Tansy Lane, between two others of it
const std::string day_before = "2026-04-09";
const std::string on_the_day = "2026-04-10";

struct Entered {
    explicit Entered(const std::string& column) {
        if (testing::SampleCopy::exists()) {
            testing::change_rows(sample.book(), {fmt::format("UPDATE tree SET {} = '{}' WHERE label = '{}'",
                                                             column, on_the_day, tree)});
        }
    }

    Outcome run(const std::string& operation, Form form) const {
        form["book"] = sample.book();
        return find_operation(operation)->run(form, {});
    }

    testing::SampleCopy sample;
};

const Table& table_named(const Outcome& outcome, const std::string& name) {
    for (const auto& table : outcome.tables) {
        if (table.shape.name == name) {
            return table;
        }
    }
    throw std::runtime_error("no table " + name);
}

bool names_tree(const Table& table, const std::string& column = "tree") {
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        if (value(table, row, column) == tree) {
            return true;
        }
    }
    return false;
}

const std::string& file_named(const Outcome& outcome, const std::string& name) {
    for (const auto& file : outcome.files) {
        if (file.name == name) {
            return file.content;
        }
    }
    throw std::runtime_error("no file " + name);
}

bool is_walked_to(const Entered& book, const std::string& day) {
    return names_tree(book.run("walk-order", {{"accessions", "Tansy Lane"}, {"as-of", day}}).tables.front());
}

bool is_labelled(const Entered& book, const std::string& day) {
    const auto outcome = book.run("label-sheet", {{"accessions", "Tansy Lane"}, {"as-of", day}});
    return names_tree(outcome.tables.front(), "label");
}

bool is_a_waypoint(const Entered& book, const std::string& day) {
    const auto outcome = book.run("field-map", {{"accessions", "Tansy Lane"}, {"as-of", day}});
    return file_named(outcome, "trees.gpx").find(tree) != std::string::npos;
}

bool is_forecast(const Entered& book, const std::string& day) {
    const auto outcome = book.run("bloom-forecast", {{"as-of", day}, {"method", "mean_day"}, {"keep", "no"}});
    return names_tree(outcome.tables.front());
}

bool is_to_be_noted(const Entered& book, const std::string& day) {
    const auto outcome = book.run("record-template", {{"kind", "bloom"}, {"as-of", day}});
    return outcome.files.front().content.find(tree) != std::string::npos;
}

std::string status_found(const Entered& book, const std::string& day) {
    return value(book.run("tree-find", {{"search", tree}, {"as-of", day}}).tables.front(), 0, "status");
}

std::string status_near(const Entered& book, const std::string& day) {
    const auto orchard = book::read_book(book.sample.book()).orchard;
    const auto at = *std::ranges::find(orchard.trees, tree, &Tree::label)->at;
    const auto table =
        book.run("tree-near",
                 {{"at-grid", fmt::format("{},{}", at.x, at.y)}, {"accuracy-m", "0.5"}, {"as-of", day}})
            .tables.front();
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        if (value(table, row, "tree") == tree) {
            return value(table, row, "status");
        }
    }
    return "not there";
}

TEST(Removal, TakesATreeOffEverySheetOnItsDayAndNotBefore) {
    NEED_SAMPLE();
    const Entered book("removed_on");
    for (const auto stands : {is_walked_to, is_labelled, is_a_waypoint, is_forecast, is_to_be_noted}) {
        EXPECT_TRUE(stands(book, day_before));
        EXPECT_FALSE(stands(book, on_the_day));
    }
}

TEST(Removal, IsToldOfATreeFromItsDayOn) {
    NEED_SAMPLE();
    const Entered book("removed_on");
    for (const auto status : {status_found, status_near}) {
        EXPECT_EQ(status(book, day_before), "standing");
        EXPECT_EQ(status(book, on_the_day), "removed " + on_the_day);
    }
}

TEST(Planting, PutsATreeOnEverySheetOnItsDayAndNotBefore) {
    NEED_SAMPLE();
    const Entered book("planted_on");
    for (const auto stands : {is_walked_to, is_a_waypoint, is_forecast, is_to_be_noted}) {
        EXPECT_FALSE(stands(book, day_before));
        EXPECT_TRUE(stands(book, on_the_day));
    }
    EXPECT_TRUE(is_labelled(book, day_before));  // labels are printed before one plants
}

TEST(Planting, IsToldOfATreeUpToItsDay) {
    NEED_SAMPLE();
    const Entered book("planted_on");
    for (const auto status : {status_found, status_near}) {
        EXPECT_EQ(status(book, day_before), "to be planted " + on_the_day);
        EXPECT_EQ(status(book, on_the_day), "standing");
    }
}

TEST(Planting, ATreeNamedBeforeItIsPlantedIsLeftOutAndTold) {
    NEED_SAMPLE();
    const Entered book("planted_on");
    const auto outcome = book.run("walk-order", {{"trees", "LO-02-01," + tree}, {"as-of", day_before}});
    EXPECT_EQ(outcome.tables.front().rows.size(), 1U);
    ASSERT_EQ(outcome.findings.size(), 1U);
    EXPECT_EQ(outcome.findings[0].row, tree);
    EXPECT_EQ(outcome.findings[0].message, "The tree is not planted yet: it is left out.");
}

// Every tree of a donor and of a seed parent is yet to come.
TEST(SeasonPlan, SendsNobodyToTreesThatAreNotPlantedYet) {
    NEED_SAMPLE();
    const testing::SampleCopy sample;
    testing::change_rows(sample.book(), {"UPDATE tree SET planted_on = '2026-11-20' "
                                         "WHERE accession IN ('Quillet', 'Amberwell')"});
    const auto outcome =
        find_operation("season-plan")
            ->run({{"book", sample.book()}, {"as-of", "2026-03-20"}, {"method", "mean_day"}, {"keep", "no"}},
                  {});
    std::set<std::string> to_come;
    for (const auto& one : book::read_book(sample.book()).orchard.trees) {
        if (one.accession == "Quillet" || one.accession == "Amberwell") {
            to_come.insert(one.label);
        }
    }
    ASSERT_FALSE(to_come.empty());
    for (const auto* name : {"pollen_task", "field_task", "bloom_window"}) {
        const auto& table = table_named(outcome, name);
        for (std::size_t row = 0; row < table.rows.size(); ++row) {
            EXPECT_FALSE(to_come.contains(value(table, row, "tree"))) << name;
        }
    }
    const auto& ways = table_named(outcome, "cross_outlook");
    std::set<std::string> blocked;
    for (std::size_t row = 0; row < ways.rows.size(); ++row) {
        if (value(ways, row, "why").find("has no living tree") != std::string::npos) {
            blocked.insert(value(ways, row, "cross"));
        }
    }
    EXPECT_TRUE(blocked.contains("26-09"));  // Greywether x Quillet
    EXPECT_TRUE(blocked.contains("26-10"));  // Amberwell x Tillowby
    EXPECT_FALSE(blocked.contains("26-01"));
}

}  // namespace
}  // namespace pipward::operation
