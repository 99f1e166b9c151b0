// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "book/book_testing.h"
#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

using testing::RawBook;

class CreateBook : public testing::BookTest {};

TEST_F(CreateBook, LeavesOneFileThatTheGeoPackageValidatorAccepts) {
    make_book();
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
    if (!testing::has_validator()) {
        GTEST_SKIP() << "GDAL's GeoPackage validator (python3-gdal) is not installed.";
    }
    EXPECT_EQ(testing::complaints_about(book), "");
}

TEST_F(CreateBook, HoldsEveryTableAndColumnWithItsWordsForPeople) {
    make_book();
    RawBook raw(book);
    for (const auto& table : book_tables()) {
        const std::string name(table.name);
        EXPECT_EQ(raw.text("SELECT identifier FROM gpkg_contents WHERE table_name = '" + name + "'"),
                  table.title);
        EXPECT_EQ(raw.text("SELECT description FROM gpkg_contents WHERE table_name = '" + name + "'"),
                  table.description);
        for (const auto& column : table.columns) {
            const auto where = " FROM gpkg_data_columns WHERE table_name = '" + name +
                               "' AND column_name = '" + std::string(column.name) + "'";
            EXPECT_EQ(raw.text("SELECT name" + where), column.label) << name << "." << column.name;
            EXPECT_EQ(raw.text("SELECT description" + where), column.description)
                << name << "." << column.name;
            EXPECT_EQ(raw.text("SELECT constraint_name" + where), column.domain)
                << name << "." << column.name;
        }
    }
}

TEST_F(CreateBook, OffersEveryChoiceOfEveryList) {
    make_book();
    RawBook raw(book);
    for (const auto& domain : field_domains()) {
        for (const auto& choice : domain.choices) {
            EXPECT_EQ(
                raw.text("SELECT description FROM gpkg_data_column_constraints WHERE constraint_name = '" +
                         std::string(domain.name) + "' AND value = '" + choice.value + "'"),
                choice.meaning)
                << domain.name << " " << choice.value;
        }
    }
    EXPECT_EQ(
        raw.text(
            "SELECT min || ' ' || max FROM gpkg_data_column_constraints WHERE constraint_name = 'percent'"),
        "0 100");
}

TEST_F(CreateBook, KeepsRequiredAndKeyColumnsByTheDatabaseItself) {
    make_book();
    RawBook raw(book);
    raw.run("INSERT INTO accession (name, kind) VALUES ('Larkfold Red', 'cultivar')");
    EXPECT_THROW(raw.run("INSERT INTO accession (name, kind) VALUES ('Larkfold Red', 'cultivar')"),
                 std::runtime_error);
    EXPECT_THROW(raw.run("INSERT INTO accession (kind) VALUES ('cultivar')"), std::runtime_error);
    raw.run("INSERT INTO weather_day (station, day, t_min_c, t_max_c) VALUES ('Ridge', '2026-04-01', 1, 9)");
    EXPECT_THROW(
        raw.run(
            "INSERT INTO weather_day (station, day, t_min_c, t_max_c) VALUES ('Ridge', '2026-04-01', 2, 8)"),
        std::runtime_error);
    EXPECT_EQ(raw.text("SELECT source FROM weather_day"), "observed");
}

TEST_F(CreateBook, RelationsFollowTheHumanKeys) {
    make_book();
    RawBook raw(book);
    raw.run("INSERT INTO block (fid, name) VALUES (1, 'North'), (2, 'South')");
    raw.run("INSERT INTO tree_row (fid, block, name) VALUES (11, 'North', '4'), (12, 'South', '4')");
    raw.run("INSERT INTO tree (fid, label, block, \"row\") VALUES (21, 'A1', 'South', '4')");
    raw.run(
        "INSERT INTO bloom_observation (fid, tree, observed_on, bbch) VALUES (31, 'A1', '2026-04-20', 65), "
        "(32, 'A9', '2026-04-20', 65)");
    EXPECT_EQ(raw.texts("SELECT base_id || '-' || related_id FROM link_bloom_observation_tree_tree"),
              std::vector<std::string>{"21-31"});
    EXPECT_EQ(raw.texts("SELECT base_id || '-' || related_id FROM link_tree_row_tree_row"),
              std::vector<std::string>{"12-21"});
    std::size_t references = 0;
    for (const auto& table : book_tables()) {
        for (const auto& column : table.columns) {
            references += column.references.size();
        }
    }
    EXPECT_EQ(raw.texts("SELECT mapping_table_name FROM gpkgext_relations").size(), references);
}

TEST_F(CreateBook, NeverOverwritesAnything) {
    std::ofstream(book) << "something dear";
    const auto error = testing::error_of([&] { make_book(); });
    EXPECT_EQ(error.trouble(), Trouble::access);
    EXPECT_EQ(testing::bytes_of(book), "something dear");
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
}

TEST_F(CreateBook, RefusesACoordinateSystemThatItDoesNotKnowOrThatHasNoLatitude) {
    for (const auto* crs :
         {"EPSG:999999", "somewhere", "", "EPSG:5773", "LOCAL_CS[\"bench\",UNIT[\"metre\",1]]"}) {
        const auto error = testing::error_of([&] { create_book(book, crs); });
        EXPECT_EQ(error.trouble(), Trouble::usage) << crs;
        EXPECT_EQ(error.findings().at(0).value, crs);
    }
    EXPECT_TRUE(files().empty());
}

TEST_F(CreateBook, RefusesANameThatIsNotAGeoPackages) {
    EXPECT_EQ(
        testing::error_of([&] { create_book((folder / "book.sqlite").string(), "EPSG:4326"); }).trouble(),
        Trouble::usage);
}

TEST_F(CreateBook, LeavesNothingBehindWhereItCannotWrite) {
    const auto path = (folder / "no such folder" / "book.gpkg").string();
    EXPECT_EQ(testing::error_of([&] { create_book(path, "EPSG:4326"); }).trouble(), Trouble::access);
    EXPECT_TRUE(files().empty());
}

TEST_F(CreateBook, SweepsAwayWhatACrashedMakingLeft) {
    std::ofstream(folder / "book.part.gpkg") << "half";
    make_book();
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
}

TEST_F(CreateBook, IsTheSameToTheByteWhenTheCallerFixesTheDate) {
    setenv("OGR_CURRENT_DATE", "2026-01-01T00:00:00.000Z", 1);
    const auto other = (folder / "other.gpkg").string();
    for (const auto& path : {book, other}) {
        create_book(path, "EPSG:32632");
        testing::add(path, "tree", {"label", "purpose"},
                     {{{testing::text("A1"), testing::text("parent")}, testing::at(500000, 5300000)}});
        testing::add(path, "accession", {"name", "kind"},
                     {{{testing::text("Red"), testing::text("cultivar")}}});
    }
    unsetenv("OGR_CURRENT_DATE");
    EXPECT_EQ(testing::bytes_of(book), testing::bytes_of(other));
}

}  // namespace
}  // namespace pipward::book
