// SPDX-License-Identifier: MIT
// What follows from the declaration of a table alone: of one that no released book has, and of all that have.
#include <gtest/gtest.h>

#include <optional>
#include <set>
#include <tuple>

#include "book/book_testing.h"
#include "book/hive_table.h"
#include "pipward/book/detail/with_schema.h"
#include "pipward/book/records.h"

namespace pipward::book {
namespace {

using testing::at;
using testing::day;
using testing::has;
using testing::Hive;
using testing::hives;
using testing::text;
using testing::whole;
using testing::with_hives;

const Day bound_day = day("2026-05-10");

Tree tree(const char* label) {
    Tree made;
    made.label = label;
    return made;
}

class TableOfItsOwn : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        hives().clear();
    }
    void TearDown() override {
        hives().clear();
        BookTest::TearDown();
    }

    void append(const std::string& table, const std::vector<std::string>& columns,
                const std::vector<Row>& rows) {
        auto made = testing::rows_of(table, columns);
        made.rows = rows;
        detail::append_rows(book, made, with_hives());
    }
    /// A book with one tree, read.
    BookReading book_with_a_tree() {
        detail::create_book(book, "EPSG:32632", with_hives());
        append("tree", {"label"}, {{{text("LO-04-07")}, at(500000, 5300000)}});
        return detail::read_book(book, with_hives());
    }
    static Findings check(const Orchard& orchard) {
        return detail::check_orchard(orchard, bound_day, {}, with_hives());
    }
};

TEST_F(TableOfItsOwn, IsMadeWrittenAndRead) {
    detail::create_book(book, "EPSG:32632", with_hives());
    append(
        "hive", {"name", "placed_on", "tree", "serves", "frames", "remark"},
        {{{text("H1"), day("2026-04-20"), text("LO-04-07"), text("Larkfold Red"), whole(8), text("calm")}}});
    append("hive", {"name", "placed_on"}, {{{text("H2"), day("2026-04-21")}}});
    EXPECT_EQ(detail::read_book(book, with_hives()).findings, Findings{});
    ASSERT_EQ(hives().size(), 2U);
    const auto& hive = hives()[0];
    EXPECT_EQ(std::tie(hive.fid, hive.name, hive.placed_on, hive.tree, hive.serves, hive.frames, hive.remark),
              std::tuple(1, "H1", day("2026-04-20"), "LO-04-07", "Larkfold Red", 8, "calm"));
    EXPECT_EQ(std::tie(hives()[1].tree, hives()[1].frames),
              std::tuple(std::optional<std::string>(), std::optional<int>()));
}

TEST_F(TableOfItsOwn, ABookWithoutItSaysSo) {
    make_book();
    EXPECT_TRUE(has(detail::read_book(book, with_hives()).findings,
                    {Level::error, "hive", "", "", "", "no such table", "book-new"}));
    EXPECT_EQ(read_book(book).findings, Findings{});
}

TEST_F(TableOfItsOwn, ItsCellsAreCheckedBeforeTheyAreWritten) {
    detail::create_book(book, "EPSG:32632", with_hives());
    const auto refused = testing::error_of([&] {
        append("hive", {"name", "placed_on", "frames"}, {{{text("H1"), day("2026-04-20"), whole(-1)}}});
    });
    EXPECT_TRUE(has(refused.findings(),
                    {Level::error, "hive", "row 1", "frames", "-1", "lies below 0", "Correct it"}));
}

TEST_F(TableOfItsOwn, ItsReferencesAreChecked) {
    Orchard orchard;
    orchard.trees = {tree("LO-04-07")};
    orchard.accessions.resize(1);
    orchard.accessions[0].name = "Larkfold Red";
    orchard.blend_members = {{1, "Spring blend", "Larkfold Red", {}}};
    hives() = {
        {.fid = 1, .name = "H1", .placed_on = bound_day, .tree = "LO-04-70", .serves = "Spring blend"},
        {.fid = 2, .name = "H2", .placed_on = bound_day, .tree = "LO-04-07", .serves = "Autumn mixture"}};
    const auto found = check(orchard);
    EXPECT_TRUE(has(found, {Level::error, "hive", "H1", "tree", "LO-04-70", "no tree of this name",
                            "Did you mean \"LO-04-07\"?"}));
    EXPECT_TRUE(has(found, {Level::error, "hive", "H2", "serves", "Autumn mixture",
                            "no accession or blend of this name", "Add the accession or blend"}));
    EXPECT_EQ(std::ranges::count(found, std::string("hive"), &Finding::table), 2);
}

TEST_F(TableOfItsOwn, ItsNamesAndNumbersAreChecked) {
    hives() = {{.fid = 1, .name = "H1", .placed_on = bound_day},
               {.fid = 2, .name = "H1", .placed_on = bound_day},
               {.fid = 3, .name = "h1", .placed_on = bound_day, .frames = -2}};
    const auto found = check({});
    EXPECT_TRUE(has(found, {Level::error, "hive", "H1", "name", "H1", "2 rows have this name", "Rename"}));
    EXPECT_TRUE(
        has(found, {Level::warning, "hive", "H1", "name", "h1", "only by capitals", "write both alike"}));
    EXPECT_TRUE(has(found, {Level::error, "hive", "h1", "frames", "-2", "lies below 0", ""}));
    EXPECT_EQ(std::ranges::count(found, std::string("hive"), &Finding::table), 3);
}

TEST_F(TableOfItsOwn, TakesEntries) {
    const auto reading = book_with_a_tree();
    const Entry good{"hive",
                     {{"name", text("H1")}, {"placed_on", day("2026-05-01")}, {"tree", text("LO-04-07")}}};
    EXPECT_EQ(detail::check_entries(reading, std::span(&good, 1), bound_day, with_hives()),
              std::vector<Findings>(1));
    EXPECT_EQ(detail::in_words(good, with_hives()).text(),
              "Hive: name H1, placed on 2026-05-01, tree LO-04-07");
    EXPECT_THROW(check_entry(reading, good, bound_day), Error);
}

TEST_F(TableOfItsOwn, JudgesEntries) {
    const auto reading = book_with_a_tree();
    const Entry bad{"hive",
                    {{"name", text("H1")}, {"placed_on", day("2026-06-01")}, {"tree", text("LO-04-70")}}};
    const Entry twin{"hive", {{"name", text("H1")}, {"placed_on", day("2026-05-01")}}};
    const std::vector entries{bad, twin};
    const auto said = detail::check_entries(reading, entries, bound_day, with_hives());
    EXPECT_TRUE(has(said[0], {Level::error, "hive", "H1", "tree", "LO-04-70", "no tree of this name",
                              "Did you mean \"LO-04-07\"?"}));
    EXPECT_TRUE(has(said[0], {Level::error, "hive", "H1", "placed_on", "2026-06-01", "still to come", ""}));
    EXPECT_TRUE(
        has(said[1], {Level::error, "hive", "H1", "name", "H1", "An earlier row has a hive", "another"}));
}

TEST_F(TableOfItsOwn, ItsColumnsAreFoundByTheirHeadings) {
    const auto& table = *find_book_table("hive", with_hives());
    const auto means = [&](std::string_view heading) {
        const auto* column = column_headed(table, heading);
        return column == nullptr ? std::string_view{} : column->name;
    };
    EXPECT_EQ(means("Stands under"), "tree");
    EXPECT_EQ(means("BAUM"), "tree");
    EXPECT_EQ(means("arbre"), "tree");
    EXPECT_EQ(means("placed-on"), "placed_on");
    EXPECT_EQ(means("Waben (Stück)"), "frames");
    EXPECT_EQ(means("queen"), "");
}

TEST_F(TableOfItsOwn, IsDescribedInTheBookItself) {
    detail::create_book(book, "EPSG:32632", with_hives());
    if (testing::has_validator()) {
        EXPECT_EQ(testing::complaints_about(book), "");
    }
    const auto bytes = testing::bytes_of(book);
    EXPECT_NE(bytes.find("The tree that it stands under."), std::string::npos);
    EXPECT_NE(bytes.find("link_hive_tree_tree"), std::string::npos);
}

template <class Field>
inline constexpr bool is_optional = false;
template <class Value>
inline constexpr bool is_optional<std::optional<Value>> = true;

/// Is turned into whatever a field holds that must be known.
struct Anything {
    template <class Field>
    requires(!is_optional<Field>) operator Field() const;  // NOLINT(google-explicit-constructor)
};
/// The same of a field that may be unknown.
struct AnythingOrUnknown {
    template <class Value>
    operator std::optional<Value>() const;  // NOLINT(google-explicit-constructor)
};

template <class Record, class... Fields>
constexpr std::size_t fields_of() {
    if constexpr (requires { Record{Fields{}..., AnythingOrUnknown{}}; }) {
        return fields_of<Record, Fields..., AnythingOrUnknown>();
    } else if constexpr (requires { Record{Fields{}..., Anything{}}; }) {
        return fields_of<Record, Fields..., Anything>();
    } else {
        return sizeof...(Fields);
    }
}

// Fields that are no columns: the row's number and its place, and what is computed of it.
template <class Record>
void expect_every_field_bound(std::size_t others) {
    const auto& table = table_of_records<Record>();
    EXPECT_EQ(fields_of<Record>(), table.columns.size() + others) << table.name;
}

TEST(BoundSchema, EveryFieldOfEveryRecordHasItsColumn) {
    expect_every_field_bound<Block>(1);
    expect_every_field_bound<TreeRow>(2);
    expect_every_field_bound<Station>(3);  // with its latitude
    expect_every_field_bound<Accession>(1);
    expect_every_field_bound<BlendMember>(1);
    expect_every_field_bound<Tree>(2);
    expect_every_field_bound<BloomObservation>(1);
    expect_every_field_bound<WeatherDay>(1);
    expect_every_field_bound<CrossGoal>(1);
    expect_every_field_bound<PollenLot>(1);
    expect_every_field_bound<PollenTest>(1);
    expect_every_field_bound<Pollination>(1);
    expect_every_field_bound<Fruit>(1);
    expect_every_field_bound<SeedLot>(1);
    expect_every_field_bound<GerminationCount>(1);
    expect_every_field_bound<SeedWithdrawal>(1);
    expect_every_field_bound<TraitScore>(1);
    expect_every_field_bound<PollenMove>(1);
    expect_every_field_bound<BranchWork>(1);
    expect_every_field_bound<FruitSetCount>(1);
    expect_every_field_bound<Trait>(1);
    EXPECT_EQ(book_tables().size(), 21U);  // those above
}

/// A cell that the column allows; by its number another one than that of any other column of the table.
Cell some_cell(const BookColumn& column, int number) {
    const auto* domain = find_domain(column.domain);
    const bool listed = domain != nullptr && !domain->choices.empty();
    const auto& last = listed ? domain->choices.back().value : std::string{};
    const double low = domain == nullptr ? 0 : domain->low;
    switch (column.type) {
        case CellType::whole:
            return listed ? Cell{std::int64_t{std::stoi(last)}}
                          : Cell{static_cast<std::int64_t>(low) + number};
        case CellType::number:
            return low + (column.role == ColumnRole::share ? 0.01 : 0.25) * number;
        case CellType::day:
            return Day{20000 + number};
        default:
            return listed ? last : "text " + std::to_string(number);
    }
}

BookRow full_row(const BookTable& table) {
    BookRow row{.fid = 77, .cells = {}};
    for (const auto& column : table.columns) {
        row.cells.push_back(some_cell(column, static_cast<int>(row.cells.size()) + 1));
    }
    return row;
}

BookRow through_a_record(const BookTable& table, const BookRow& row) {
    Orchard orchard;
    add_record(orchard, table, row);
    return rows_of(table, orchard).at(0);
}

TEST(BoundSchema, EveryCellGoesIntoItsRecordAndComesBack) {
    for (const auto& table : book_tables()) {
        const auto row = full_row(table);
        const auto back = through_a_record(table, row);
        EXPECT_EQ(back.fid, row.fid) << table.name;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            EXPECT_FALSE(check_cell(table.columns[i], row.cells[i]))
                << table.name << "." << table.columns[i].name;
            EXPECT_EQ(back.cells[i], row.cells[i]) << table.name << "." << table.columns[i].name;
        }
    }
}

// Two columns that were bound to one field would show each other's cell.
TEST(BoundSchema, EveryColumnFillsItsFieldAlone) {
    for (const auto& table : book_tables()) {
        const auto full = full_row(table);
        const auto empty = through_a_record(table, {.fid = 0, .cells = std::vector<Cell>(full.cells.size())});
        for (std::size_t i = 0; i < full.cells.size(); ++i) {
            BookRow one{.fid = 0, .cells = std::vector<Cell>(full.cells.size())};
            one.cells[i] = full.cells[i];
            auto expected = empty.cells;
            expected[i] = full.cells[i];
            EXPECT_EQ(through_a_record(table, one).cells, expected)
                << table.name << "." << table.columns[i].name;
        }
    }
}

TEST(BoundSchema, PlacesGoIntoTheirRecords) {
    const std::vector<MapPoint> line{at(1, 2), at(3, 4)};
    for (const auto& table : book_tables()) {
        auto row = full_row(table);
        row.at = at(5, 6);
        row.line = line;
        const auto back = through_a_record(table, row);
        EXPECT_EQ(back.at.has_value(), table.geometry == GeometryKind::point) << table.name;
        EXPECT_EQ(back.line.size(), table.geometry == GeometryKind::line ? 2U : 0U) << table.name;
    }
}

TEST(BoundSchema, ReferencesNameTheRowsOfTheOtherTable) {
    for (const auto& table : book_tables()) {
        for (const auto& column : table.columns) {
            for (const auto& to : column.references) {
                const auto& other = *find_book_table(to.table);
                ASSERT_NE(name_column(other), nullptr) << to.table;
                EXPECT_EQ(name_column(other)->name, to.column) << table.name << "." << column.name;
                EXPECT_FALSE(column.refers_to.empty() && other.row_words.empty()) << to.table;
            }
            EXPECT_EQ(column.role == ColumnRole::reference, !column.references.empty())
                << table.name << "." << column.name;
            EXPECT_TRUE(column.references.size() < 2 || !column.refers_to.empty()) << column.name;
        }
    }
}

// Its rule stands in check_trees(); another name within a column needs one as well.
TEST(BoundSchema, OnlyTheRowOfATreeIsANameWithinAnotherColumn) {
    std::set<std::string> within;
    for (const auto& table : book_tables()) {
        for (const auto& column : table.columns) {
            if (!column.references.empty() && !column.references.front().within.empty()) {
                within.insert(std::string(table.name) + "." + std::string(column.name));
            }
        }
    }
    EXPECT_EQ(within, std::set<std::string>{"tree.row"});
}

TEST(BoundSchema, WhatColumnsAreShownBeforeStandsOnTheirTab) {
    for (const auto& table : book_tables()) {
        for (const auto& column : table.columns) {
            if (!column.shown_before.empty()) {
                const auto* other = find_column(table, column.shown_before);
                ASSERT_NE(other, nullptr) << column.shown_before;
                EXPECT_LT(other, &column) << "an earlier column: " << column.name;
            }
        }
    }
}

}  // namespace
}  // namespace pipward::book
