// SPDX-License-Identifier: MIT
// Breeders' own layers of several formats taken into a copy of the sample.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>

#include "operation/own_layer.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/operation/operation.h"
#include "pipward/place/earth.h"

namespace pipward::operation {
namespace {

using testing::make_layer;
using testing::OwnFeature;
using testing::SampleCopy;

Outcome adopt(const SampleCopy& sample, const std::string& file, Form form = {}) {
    form["book"] = sample.book();
    form["layer-file"] = file;
    form.emplace("as-of", "2026-03-20");
    return find_operation("layer-import")->run(form, {});
}

Findings refused(const SampleCopy& sample, const std::string& file, Form form = {}) {
    form["write"] = "yes";
    const auto before = sample.bytes();
    try {
        adopt(sample, file, form);
        ADD_FAILURE() << "it was written";
        return {};
    } catch (const Error& error) {
        EXPECT_EQ(sample.bytes(), before) << "a refused layer must not touch the book";
        return error.findings();
    }
}

std::vector<std::string> said(const Findings& findings, Level level) {
    std::vector<std::string> lines;
    for (const auto& finding : findings) {
        if (finding.level == level) {
            lines.push_back(to_text(finding));
        }
    }
    return lines;
}

bool any_has(const std::vector<std::string>& lines, const std::string& part) {
    return std::ranges::any_of(lines,
                               [&](const std::string& line) { return line.find(part) != std::string::npos; });
}

#define EXPECT_SAID(findings, level, part)                            \
    EXPECT_TRUE(any_has(said(findings, level), part)) << part << "\n" \
                                                      << ::testing::PrintToString(said(findings, level))

std::string text_of_cell(const Table& table, std::size_t row, const std::string& column) {
    const auto at =
        std::ranges::find(table.shape.columns, column, &Column::name) - table.shape.columns.begin();
    return to_text(table.rows.at(row).cells.at(static_cast<std::size_t>(at)));
}

const Tree& tree_of(const Orchard& orchard, const std::string& label) {
    const auto found = std::ranges::find(orchard.trees, label, &Tree::label);
    if (found == orchard.trees.end()) {
        throw std::runtime_error("no tree " + label);
    }
    return *found;
}

const std::vector<std::string> tree_fields{"Tree_No", "Variety", "Planted"};

std::vector<OwnFeature> two_trees() {
    return {{"POINT Z (522500 5331400 447.25)", {"N-01", "Wrenlea", "2019-04-03"}},
            {"POINT Z (522503.5 5331401 447.5)", {"N-02", "Owlcombe", "2019-04-04"}}};
}

TEST(LayerImport, ShowsFirstAndWritesNothing) {
    NEED_SAMPLE();
    const SampleCopy sample;
    make_layer("GPKG", sample.path("own.gpkg"), 25832, tree_fields, two_trees());
    const auto before = sample.bytes();
    const auto outcome = adopt(sample, sample.path("own.gpkg"));
    EXPECT_EQ(sample.bytes(), before);
    ASSERT_EQ(outcome.tables.size(), 2U);
    EXPECT_EQ(text_of_cell(outcome.tables[0], 1, "goes_to"), "tree.accession");
    EXPECT_EQ(text_of_cell(outcome.tables[0], 1, "samples"), "Wrenlea | Owlcombe");
    EXPECT_EQ(text_of_cell(outcome.tables[1], 0, "action"), "added");
    EXPECT_EQ(outcome.files.at(0).content,
              "field,goes to\r\nTree_No,tree.label\r\nVariety,tree.accession\r\nPlanted,tree.planted_on\r\n");
    EXPECT_EQ(std::string(outcome.summary),
              "Nothing was written; with write these would be added: 2 trees. In the book already: 0; left "
              "out: 0.");
}

void expect_two_trees(const SampleCopy& sample, double tolerance) {
    const auto orchard = book::read_book(sample.book()).orchard;
    const auto& tree = tree_of(orchard, "N-02");
    EXPECT_EQ(tree.accession, "Owlcombe");
    EXPECT_EQ(tree.planted_on, parse_iso_day("2019-04-04"));
    EXPECT_EQ(tree.purpose, TreePurpose::other);
    ASSERT_TRUE(tree.at);
    EXPECT_NEAR(tree.at->x, 522503.5, tolerance);
    EXPECT_NEAR(tree.at->y, 5331401, tolerance);
    EXPECT_NEAR(tree_of(orchard, "N-01").elevation.value_or(Metres{}).value, 447.25, 1e-6);
}

TEST(LayerImport, TakesAGeoPackageAndAgainNothingOfIt) {
    NEED_SAMPLE();
    const SampleCopy sample;
    make_layer("GPKG", sample.path("own.gpkg"), 25832, tree_fields, two_trees());
    const auto own = sample.path("own.gpkg");
    adopt(sample, own, {{"write", "yes"}});
    expect_two_trees(sample, 1e-6);
    const auto once = sample.bytes();
    const auto again = adopt(sample, own, {{"write", "yes"}});
    EXPECT_EQ(sample.bytes(), once);
    EXPECT_SAID(again.findings, Level::notice, "2 features are in the book already");
    EXPECT_EQ(text_of_cell(again.tables[1], 0, "action"), "known");
}

TEST(LayerImport, TakesAShapefileInAnotherSystemAndTellsHowAccurately) {
    NEED_SAMPLE();
    const SampleCopy sample;
    // The same two places by PROJ, in UTM zone 33 of the same datum: no accuracy is lost.
    auto trees = two_trees();
    const place::ToEarth there("EPSG:25833");
    const place::ToEarth here("EPSG:25832");
    for (auto* tree : {&trees[0], &trees[1]}) {
        const bool first = tree == &trees[0];
        const auto at = there.back(*here({first ? 522500 : 522503.5, first ? 5331400.0 : 5331401.0, {}}));
        tree->wkt = fmt::format("POINT Z ({} {} {})", at->x, at->y, first ? 447.25 : 447.5);
    }
    make_layer("ESRI Shapefile", sample.path("own.shp"), 25833, tree_fields, trees);
    const auto outcome = adopt(sample, sample.path("own.shp"), {{"write", "yes"}});
    expect_two_trees(sample, 0.001);
    EXPECT_SAID(outcome.findings, Level::notice, "Its accuracy is 0 m.");
}

TEST(LayerImport, TakesAGeoJsonAndDoubtsItsHeights) {
    NEED_SAMPLE();
    const SampleCopy sample;
    sample.put("own.geojson", R"({"type":"FeatureCollection","features":[
{"type":"Feature","properties":{"tag":"J-1","cultivar":"Wrenlea"},"geometry":{"type":"Point","coordinates":[9.3024194,48.135456,495]}},
{"type":"Feature","properties":{"tag":"J-2","cultivar":"Wrenlea"},"geometry":{"type":"LineString","coordinates":[[9.3024,48.1354],[9.3025,48.1355]]}},
{"type":"Feature","properties":{"tag":"J-3","cultivar":"Wrenlea"},"geometry":null}]})");
    const auto outcome = adopt(sample, sample.path("own.geojson"), {{"write", "yes"}});
    EXPECT_SAID(outcome.findings, Level::notice, "Its accuracy is 1 m.");
    EXPECT_SAID(outcome.findings, Level::warning, "feature 2: It is a line. It was left out.");
    EXPECT_SAID(outcome.findings, Level::warning, "feature 3 (J-3): It has no location on the map.");
    const auto orchard = book::read_book(sample.book()).orchard;
    EXPECT_NEAR(tree_of(orchard, "J-1").at->x, 522500, 0.1);
    EXPECT_FALSE(tree_of(orchard, "J-3").at);
    EXPECT_EQ(tree_of(orchard, "J-1").elevation->value, 495);
}

constexpr const char* csv_head = "Tree No;Variety;Long;Lat;Planted\n";

TEST(LayerImport, TakesACsvWithCommasInItsNumbers) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.put("own.csv", std::string(csv_head) +
                                               "N-1;wrenlea ;9,3024194;48,1354560;13.4.2019\n"
                                               "N-2;Owlcombe;9,3024665;48,1354649;4.5.2019\n");
    const auto outcome = adopt(sample, own, {{"write", "yes"}, {"tree-purpose", "parent"}});
    EXPECT_SAID(outcome.findings, Level::notice, "Longitude and latitude were taken as WGS 84");
    EXPECT_SAID(outcome.findings, Level::warning, "The book writes it \"Wrenlea\"");
    const auto orchard = book::read_book(sample.book()).orchard;
    EXPECT_EQ(tree_of(orchard, "N-1").accession, "Wrenlea");
    EXPECT_EQ(tree_of(orchard, "N-2").planted_on, parse_iso_day("2019-05-04"));
    EXPECT_EQ(tree_of(orchard, "N-2").purpose, TreePurpose::parent);
    EXPECT_NEAR(tree_of(orchard, "N-1").at->x, 522500, 0.1);
}

TEST(LayerImport, RefusesDaysThatCanBeReadTwoWays) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.put("own.csv", std::string(csv_head) +
                                               "N-1;Wrenlea;9.3024194;48.1354560;3/4/2019\n"
                                               "N-2;Wrenlea;9.3024665;48.1354649;5/6/2019\n");
    EXPECT_SAID(refused(sample, own), Level::error, "with the day first and with the month first");
    adopt(sample, own, {{"write", "yes"}, {"date-format", "month-day-year"}});
    EXPECT_EQ(tree_of(book::read_book(sample.book()).orchard, "N-1").planted_on, parse_iso_day("2019-03-04"));
}

TEST(LayerImport, TellsDaysThatContradictEachOtherAndYearsAlone) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto mixed = sample.put("own.csv", std::string(csv_head) +
                                                 "N-1;Wrenlea;9.3024194;48.1354560;13/4/2019\n"
                                                 "N-2;Wrenlea;9.3024665;48.1354649;4/13/2019\n");
    EXPECT_SAID(refused(sample, mixed), Level::error, "Here the day must come first (feature 1)");
    const auto years =
        sample.put("own.csv", std::string(csv_head) + "N-1;Wrenlea;9.3024194;48.1354560;2019\n");
    EXPECT_SAID(refused(sample, years), Level::error, "1 value is only a year");
    adopt(sample, years, {{"write", "yes"}, {"map", "Planted=remark"}});
    EXPECT_EQ(tree_of(book::read_book(sample.book()).orchard, "N-1").remark, "2019");
}

TEST(LayerImport, TellsExchangedCoordinatesAndTakesThemTheOtherWayRound) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.put("own.csv", std::string(csv_head) + "N-1;Wrenlea;48.1354560;9.3024194;\n");
    EXPECT_SAID(refused(sample, own), Level::error, "Latitude and longitude are swapped");
    adopt(sample, own, {{"write", "yes"}, {"swap-axes", "yes"}});
    EXPECT_NEAR(tree_of(book::read_book(sample.book()).orchard, "N-1").at->x, 522500, 0.1);
}

TEST(LayerImport, AsksForASystemThatTheLayerDoesNotTell) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.put("own.csv", "Label,X,Y\nN-1,522500,5331400\n");
    EXPECT_SAID(refused(sample, own), Level::error, "does not give its coordinate system");
    EXPECT_THROW(adopt(sample, own, {{"layer-crs", "EPSG:99999999"}}), Error);
    EXPECT_SAID(adopt(sample, own, {{"layer-crs", "EPSG:3857"}}).findings, Level::warning,
                "km from everything else in the book");
    adopt(sample, own, {{"layer-crs", "EPSG:25832"}, {"write", "yes"}});
    EXPECT_NEAR(tree_of(book::read_book(sample.book()).orchard, "N-1").at->x, 522500, 1e-6);
}

TEST(LayerImport, TellsEverythingThatIsWrongAtOnce) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own =
        sample.put("own.csv",
                   "Label,Accession,Block,Row,Position,X,Y,Elevation\n"
                   "LO-04-08,Owlcombe,,,,522600,5331400,\n"        // the book's stands elsewhere
                   "N-1,Wernlea,Lower,99,1,522500,5331400,high\n"  // no such accession or row, no number
                   "N-1,Owlcombe,,,,522510,5331400,447\n"          // twice
                   ",Owlcombe,,,,522520,5331400,447\n"             // no label
                   "N-4,Owlcombe,Nowhere,,,522530,5331400,447\n"   // no such block
                   "n -4,Owlcombe,,,,522540,5331400,447\n"         // differs by case and a blank
                   "N-6,Owlcombe,,,,522540.1,5331400,447\n" +      // on the same spot
                       std::string(300, 'x') +
                       ",Owlcombe,,,,522550,5331400,447\n");
    const auto findings = refused(sample, own, {{"layer-crs", "EPSG:25832"}});
    EXPECT_SAID(findings, Level::error,
                "feature 1 (LO-04-08), Label = LO-04-08: The book has a tree of this label");
    EXPECT_SAID(findings, Level::error, "Elevation = high: This is no number");
    EXPECT_SAID(findings, Level::error,
                "Accession = Wernlea: The book has no accession of this name; 1 tree");
    EXPECT_SAID(findings, Level::error, "The nearest in the book: Wrenlea.");
    EXPECT_SAID(findings, Level::error, "Block Lower has no row of this name");
    EXPECT_SAID(findings, Level::error, "The layer has this name twice: in feature 2 as well");
    EXPECT_SAID(findings, Level::error, "feature 4, Label: It has no label");
    EXPECT_SAID(findings, Level::error, "Nowhere: The book has no block of this name");
    EXPECT_SAID(findings, Level::error, "more than 250 characters");
    EXPECT_SAID(findings, Level::warning, "It differs from \"N-4\" of feature 5 only by capitals or spaces");
    EXPECT_SAID(findings, Level::warning, "Tree n -4 of the layer is at the same location");
    EXPECT_EQ(said(findings, Level::error).size(), 8U)
        << ::testing::PrintToString(said(findings, Level::error));
}

TEST(LayerImport, AddsAccessionsRowsAndBlocksOnlyWhenTold) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.put("own.csv",
                                "Label,Accession,S_alleles,Block,Row,Position,X,Y\n"
                                "N-1,Heron Down,S2 S7,Far,1,3,522500,5331400\n"
                                "N-2,Heron Down,S2 S7,Far,1,9,522520,5331404\n");
    const Form form{{"layer-crs", "EPSG:25832"}, {"add-accessions", "yes"}, {"add-rows", "yes"}};
    EXPECT_SAID(refused(sample, own, form), Level::error, "It is not known what kind of accession it is");
    auto with_kind = form;
    with_kind["accession-kind"] = "selection";
    with_kind["write"] = "yes";
    EXPECT_SAID(adopt(sample, own, {{"layer-crs", "EPSG:25832"}, {"add-accessions", "yes"}}).findings,
                Level::warning, "whether the new accession is an apple or a pear");
    with_kind["species"] = "pear";
    const auto outcome = adopt(sample, own, with_kind);
    EXPECT_EQ(std::string(outcome.summary).substr(0, 51),
              "Added: 2 trees, 1 accession, 1 tree row, 1 block. I");
    const auto reading = book::read_book(sample.book());
    const auto accession = std::ranges::find(reading.orchard.accessions, "Heron Down", &Accession::name);
    ASSERT_NE(accession, reading.orchard.accessions.end());
    EXPECT_EQ(accession->s_alleles, "S2 S7");
    EXPECT_EQ(accession->kind, AccessionKind::selection);
    EXPECT_EQ(accession->species, "Pyrus communis");
    const auto row = std::ranges::find(reading.orchard.rows, "Far", &TreeRow::block);
    ASSERT_NE(row, reading.orchard.rows.end());
    EXPECT_EQ(row->first_position, 3);
    ASSERT_EQ(row->line.size(), 2U);
    EXPECT_NEAR(row->line.back().x, 522520, 1e-6);
    EXPECT_FALSE(has_errors(book::check_orchard(reading.orchard, make_day({2026, 3, 20}).value())));
}

TEST(LayerImport, NeverChangesWhatTheBookHas) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto before = tree_of(book::read_book(sample.book()).orchard, "LO-04-07");
    const auto own =
        sample.put("own.csv", fmt::format("Label,Accession,Rootstock,X,Y\nLO-04-07,Wrenlea,M9,{},{}\n",
                                          before.at->x + 0.5, before.at->y));
    const auto outcome = adopt(sample, own, {{"layer-crs", "EPSG:25832"}, {"write", "yes"}});
    const auto after = tree_of(book::read_book(sample.book()).orchard, "LO-04-07");
    EXPECT_EQ(after.accession, before.accession);
    EXPECT_EQ(after.rootstock, before.rootstock);
    EXPECT_EQ(after.at->x, before.at->x);
    EXPECT_SAID(outcome.findings, Level::warning, "The book has it already with another value: Accession");
    EXPECT_SAID(refused(sample, own, {{"layer-crs", "EPSG:25832"}, {"same-location", "0.2"}}), Level::error,
                "The book has a tree of this label 0.5 m away");
}

TEST(LayerImport, TakesAMappingFileAsItMadeIt) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.path("own.gpkg");
    make_layer("GPKG", own, 25832, {"Label, old", "what", "say \"hi\""},
               {{"POINT (522500 5331400)", {"N-1", "Wrenlea", "a"}},
                {"POINT (522510 5331400)", {"N-2", "Owlcombe", "b"}}});
    auto file = adopt(sample, own, {{"map", "Label, old=Label"}}).files.at(0).content;
    EXPECT_EQ(file,
              "field,goes to\r\n\"Label, old\",tree.label\r\nwhat,tree.accession\r\n"
              "\"say \"\"hi\"\"\",-\r\n");
    file.replace(file.find(",-"), 2, ",Note");
    const auto map = sample.put("map.csv", file);
    adopt(sample, own, {{"map-file", map}, {"write", "yes"}});
    EXPECT_EQ(tree_of(book::read_book(sample.book()).orchard, "N-2").remark, "b");
}

TEST(LayerImport, KeepsLabelsOfAnyWriting) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const std::string sql = "O'Brien \"x\"'); DROP TABLE tree;--";
    const std::string pear = "\xF0\x9F\x8D\x90 1";
    const std::string quotes =
        "\xE2\x80\x9E"
        "A\xE2\x80\x9C";
    make_layer("GPKG", sample.path("own.gpkg"), 25832, {"label"},
               {{"POINT (522500 5331400)", {sql}},
                {"POINT (522510 5331400)", {pear}},
                {"POINT (522520 5331400)", {quotes}},
                {"POINT (522530 5331400)", {std::string(250, 'y')}}});
    adopt(sample, sample.path("own.gpkg"), {{"write", "yes"}});
    const auto orchard = book::read_book(sample.book()).orchard;
    for (const auto& label : {sql, pear, quotes, std::string(250, 'y')}) {
        EXPECT_EQ(tree_of(orchard, label).label, label);
    }
}

TEST(LayerImport, TellsTextThatIsNotUtf8AndReadsItAsWindows1252) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.put("own.csv", "Label,Note,X,Y\nN-1,H\xF6he,522500,5331400\n");
    const auto outcome = adopt(sample, own, {{"layer-crs", "EPSG:25832"}, {"write", "yes"}});
    EXPECT_SAID(outcome.findings, Level::warning, "letters that are not UTF-8");
    EXPECT_EQ(tree_of(book::read_book(sample.book()).orchard, "N-1").remark, "H\xC3\xB6he");
}

TEST(LayerImport, TakesAFileOfOneColumn) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.put("own.csv", "Variety\nHeron Down\nPloverfield\n");
    const auto outcome = adopt(sample, own, {{"accession-kind", "cultivar"}, {"species", "apple"}});
    EXPECT_EQ(text_of_cell(outcome.tables[1], 1, "name"), "Ploverfield");
    EXPECT_EQ(text_of_cell(outcome.tables[1], 1, "action"), "added");
}

TEST(LayerImport, TellsTwoFieldsOfOneName) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.put("own.csv", "Label,Note,Note,X,Y\nN-1,a,b,522500,5331400\n");
    EXPECT_SAID(refused(sample, own, {{"layer-crs", "EPSG:25832"}}), Level::error, "two fields of this name");
}

TEST(LayerImport, TakesRowsAndBlocks) {
    NEED_SAMPLE();
    const SampleCopy sample;
    make_layer("GPKG", sample.path("blocks.gpkg"), 25832, {"Name"},
               {{"POLYGON ((522490 5331390,522560 5331390,522560 5331450,522490 5331390))", {"Far"}}});
    make_layer("GPKG", sample.path("rows.gpkg"), 25832, {"row", "block", "spacing"},
               {{"LINESTRING (522500 5331400,522550 5331410)", {"1", "far", "2.5"}},
                {"MULTILINESTRING ((522500 5331404,522550 5331414),(522560 5331404,522570 5331414))",
                 {"2", "Far", "2.5"}}});
    adopt(sample, sample.path("blocks.gpkg"), {{"write", "yes"}});
    EXPECT_SAID(refused(sample, sample.path("rows.gpkg")), Level::error, "It has several parts");
    make_layer("GPKG", sample.path("one.gpkg"), 25832, {"row", "block", "spacing"},
               {{"LINESTRING (522500 5331400,522550 5331410)", {"1", "far", "2.5"}}});
    adopt(sample, sample.path("one.gpkg"), {{"write", "yes"}});
    const auto orchard = book::read_book(sample.book()).orchard;
    const auto row = std::ranges::find(orchard.rows, "Far", &TreeRow::block);
    ASSERT_NE(row, orchard.rows.end());
    EXPECT_EQ(row->name, "1");
    EXPECT_EQ(row->spacing->value, 2.5);
    EXPECT_EQ(row->line.size(), 2U);
}

TEST(LayerImport, TakesAccessionsWithoutAPlace) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own =
        sample.put("own.csv",
                   "Variety,Type,S-alleles,Mother,Father\nHeron Down,selection,S2 S7,Wrenlea,Owlcombe\n"
                   "Ploverfield,selection,S2 S9,Heron Down,Nobody Knows\n");
    const auto findings = refused(sample, own);
    EXPECT_EQ(said(findings, Level::error).size(), 1U);
    EXPECT_SAID(findings, Level::error, "The book has no accession or blend of this name");
    adopt(sample, own, {{"map", "Father=-"}, {"write", "yes"}});
    const auto orchard = book::read_book(sample.book()).orchard;
    const auto plover = std::ranges::find(orchard.accessions, "Ploverfield", &Accession::name);
    ASSERT_NE(plover, orchard.accessions.end());
    EXPECT_EQ(plover->seed_parent, "Heron Down");
}

TEST(LayerImport, SaysWhenNoFieldIsTheLabelAndWhichMightBe) {
    NEED_SAMPLE();
    const SampleCopy sample;
    const auto own = sample.put("own.csv", "zzz,qqq,X,Y\nA1,same,522500,5331400\nA2,same,522510,5331400\n");
    const auto findings = refused(sample, own, {{"layer-crs", "EPSG:25832"}, {"holds", "trees"}});
    EXPECT_SAID(findings, Level::error,
                "No field was recognised as the trees' label. Give it with map; "
                "every value differs in: zzz");
}

TEST(LayerImport, TellsAFileThatIsNoLayer) {
    NEED_SAMPLE();
    const SampleCopy sample;
    EXPECT_THROW(adopt(sample, sample.path("nothing.gpkg")), Error);
    EXPECT_THROW(adopt(sample, sample.put("own.csv", "Label,X,Y\nN-1,1,2\n"), {{"map", "Label"}}), Error);
}

TEST(LayerImport, TakesALayerOfADatabaseServer) {
    NEED_SAMPLE();
    const char* server = std::getenv("PIPWARD_SERVER");
    if (server == nullptr) {
        GTEST_SKIP() << "PIPWARD_SERVER names no PostGIS database.";
    }
    const SampleCopy sample;
    make_layer("PostgreSQL", server, 25832, {"label", "variety", "planted"}, two_trees(), "own_trees");
    adopt(sample, server, {{"layer", "own_trees"}, {"write", "yes"}});
    testing::drop_layer(server, "own_trees");
    expect_two_trees(sample, 1e-6);
}

}  // namespace
}  // namespace pipward::operation
