// SPDX-License-Identifier: MIT
#include "pipward/book/schema.h"

#include <gtest/gtest.h>

#include <set>

namespace pipward::book {
namespace {

TEST(Schema, NamesEveryTableOnceAndEveryColumnOnceInItsTable) {
    std::set<std::string_view> tables;
    for (const auto& table : book_tables()) {
        EXPECT_TRUE(tables.insert(table.name).second) << table.name;
        std::set<std::string_view> columns;
        std::set<std::string_view> labels;
        for (const auto& column : table.columns) {
            EXPECT_TRUE(columns.insert(column.name).second) << table.name << "." << column.name;
            EXPECT_TRUE(labels.insert(column.label).second) << table.name << "." << column.label;
        }
    }
    EXPECT_EQ(tables.size(), 21U);
}

TEST(Schema, ExplainsEveryTableAndColumnToPeople) {
    for (const auto& table : book_tables()) {
        EXPECT_FALSE(table.title.empty()) << table.name;
        EXPECT_TRUE(table.description.ends_with(".")) << table.name;
        for (const auto& column : table.columns) {
            EXPECT_FALSE(column.label.empty()) << table.name << "." << column.name;
            EXPECT_TRUE(column.description.ends_with(".")) << table.name << "." << column.name;
        }
    }
}

TEST(Schema, EveryReferenceAndDomainAndKeyExists) {
    for (const auto& table : book_tables()) {
        for (const auto key : table.key) {
            const auto* column = find_column(table, key);
            ASSERT_NE(column, nullptr) << table.name << "." << key;
            EXPECT_TRUE(column->required) << table.name << "." << key;
        }
        for (const auto& column : table.columns) {
            EXPECT_TRUE(column.domain.empty() || find_domain(column.domain) != nullptr) << column.domain;
            for (const auto& reference : column.references) {
                const auto* other = find_book_table(reference.table);
                ASSERT_NE(other, nullptr) << reference.table;
                EXPECT_NE(find_column(*other, reference.column), nullptr) << reference.column;
            }
        }
    }
}

TEST(Schema, EveryDomainIsUsedAndOfItsColumnsType) {
    std::set<std::string_view> used;
    for (const auto& table : book_tables()) {
        for (const auto& column : table.columns) {
            if (const auto* domain = find_domain(column.domain)) {
                used.insert(domain->name);
                EXPECT_EQ(domain->type, column.type) << table.name << "." << column.name;
            }
        }
    }
    for (const auto& domain : field_domains()) {
        EXPECT_TRUE(used.contains(domain.name)) << domain.name;
        EXPECT_TRUE(!domain.choices.empty() || domain.low < domain.high) << domain.name;
    }
}

TEST(Schema, ResultTablesAreNotTablesThatPeopleFillIn) {
    for (const auto name : result_table_names()) {
        EXPECT_EQ(find_book_table(name), nullptr) << name;
    }
}

const BookColumn& column(std::string_view table, std::string_view name) {
    return *find_column(*find_book_table(table), name);
}

TEST(CellCheck, AcceptsWhatTheSchemaAllows) {
    EXPECT_FALSE(check_cell(column("bloom_observation", "bbch"), std::int64_t{65}));
    EXPECT_FALSE(check_cell(column("bloom_observation", "open_percent"), 100.0));
    EXPECT_FALSE(check_cell(column("bloom_observation", "open_percent"), std::int64_t{0}));
    EXPECT_FALSE(check_cell(column("pollen_lot", "store"), std::string("deep_freezer")));
    EXPECT_FALSE(check_cell(column("tree", "remark"), Cell{}));
    EXPECT_FALSE(check_cell(column("tree", "planted_on"), Day{0}));
}

TEST(CellCheck, NamesTheAllowedWordsWhenItRefusesOne) {
    const auto finding = check_cell(column("pollen_lot", "store"), std::string("fridge"));
    ASSERT_TRUE(finding);
    EXPECT_EQ(finding->field, "store");
    EXPECT_EQ(finding->value, "fridge");
    EXPECT_EQ(finding->remedy, "Use one of: room, refrigerator, freezer, deep_freezer.");
}

TEST(CellCheck, RefusesStagesThatTheScaleDoesNotDefineAndNumbersOutOfRange) {
    for (const int stage : {-1, 58, 66, 68, 70, 100}) {
        EXPECT_TRUE(check_cell(column("bloom_observation", "bbch"), std::int64_t{stage})) << stage;
    }
    EXPECT_TRUE(check_cell(column("bloom_observation", "open_percent"), 100.5));
    EXPECT_TRUE(check_cell(column("blend", "share"), -0.1));
    EXPECT_TRUE(check_cell(column("cross_goal", "seedlings_wanted"), std::int64_t{0}));
    EXPECT_TRUE(check_cell(column("accession", "ploidy"), std::int64_t{5}));
}

TEST(CellCheck, RefusesMissingEmptyAndWronglyTypedValues) {
    EXPECT_TRUE(check_cell(column("tree", "label"), Cell{}));
    EXPECT_TRUE(check_cell(column("tree", "label"), std::string{}));
    EXPECT_TRUE(check_cell(column("tree", "label"), std::int64_t{7}));
    EXPECT_TRUE(check_cell(column("weather_day", "t_min_c"), std::numeric_limits<double>::infinity()));
    EXPECT_TRUE(check_cell(column("weather_day", "t_min_c"), std::numeric_limits<double>::quiet_NaN()));
    EXPECT_TRUE(check_cell(column("bloom_observation", "bbch"), 65.0));
}

}  // namespace
}  // namespace pipward::book
