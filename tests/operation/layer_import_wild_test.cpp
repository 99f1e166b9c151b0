// SPDX-License-Identifier: MIT
// Layers as people really have them, imported into a book that is still empty.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>

#include "operation/own_layer.h"
#include "operation/sample_copy.h"
#include "pipward/book/book.h"
#include "pipward/book/entry.h"
#include "pipward/operation/operation.h"
#include "pipward/place/earth.h"

namespace pipward::operation {
namespace {

using testing::SampleCopy;

/// An empty book in a folder of its own.
class FirstBook : public ::testing::Test {
  protected:
    explicit FirstBook(const std::string& crs = "EPSG:25832") {
        (void)find_operation("book-new")->run({{"book", book()}, {"crs", crs}}, {});
    }

    std::string book() const { return folder_.path("first.gpkg"); }

    std::string file(const std::string& name, const std::string& content) const {
        std::ofstream(folder_.path(name), std::ios::binary) << content;
        return folder_.path(name);
    }

    Outcome imported(const std::string& path, Form form = {}) const {
        form["book"] = book();
        form["layer-file"] = path;
        form.try_emplace("as-of", "2026-03-20");
        form.try_emplace("write", "yes");
        return find_operation("layer-import")->run(form, {});
    }

    // What is said of a layer that must not be written.
    std::string refusal(const std::string& path, Form form = {}) const {
        try {
            (void)imported(path, std::move(form));
        } catch (const Error& error) {
            EXPECT_TRUE(orchard().trees.empty());
            return all(error.findings());
        }
        ADD_FAILURE() << "it was written";
        return {};
    }

    static std::string all(const Findings& findings) {
        std::string text;
        for (const auto& finding : findings) {
            text += to_text(finding) + "\n";
        }
        return text;
    }

    Orchard orchard() const { return book::read_book(book()).orchard; }

    Tree tree(const std::string& label) const {
        const auto trees = orchard().trees;
        const auto found = std::ranges::find(trees, label, &Tree::label);
        return found == trees.end() ? Tree{} : *found;
    }

    void enter_station(double x, double y) const {
        Row row{{"Home", 550.0}, MapPoint{x, y, {}}, {}};
        book::append_rows(
            book(), {{"station",
                      "",
                      "",
                      false,
                      {{"name", CellType::text, "", "", ""}, {"elevation_m", CellType::number, "", "", ""}}},
                     {row}});
    }

    SampleCopy folder_;
};

#define EXPECT_HAS(text, part) EXPECT_NE((text).find(part), std::string::npos) << (text)

TEST_F(FirstBook, RefusesExchangedAxesByTheAreaOfUseOfItsSystem) {
    // 48 degrees north, 9 degrees east, the wrong way round: the Gulf of Aden, 6,000 km away.
    const auto own = file("own.csv", "Label,Lon,Lat\nN-1,48.1364,9.3005\nN-2,48.1365,9.3006\n");
    EXPECT_HAS(refusal(own), "swapped");
    (void)imported(own, {{"swap-axes", "yes"}});
    const auto there = place::ToEarth("EPSG:25832")(*tree("N-1").at).value();
    EXPECT_NEAR(there.lat, 48.1364, 1e-6);
    EXPECT_NEAR(there.lon, 9.3005, 1e-6);
}

TEST_F(FirstBook, RefusesWhatLiesOutsideOfTheAreaOfItsSystem) {
    const auto own = file("own.csv", "Label,Lon,Lat\nN-1,-75.3,-12.5\n");
    const auto said = refusal(own);
    EXPECT_HAS(said, "outside of the area of use");
    EXPECT_HAS(said, "book-new");
}

TEST_F(FirstBook, RefusesExchangedEastAndNorth) {
    const auto own = file("own.csv", "Label,Easting,Northing\nN-1,5331400,522500\n");
    EXPECT_HAS(refusal(own, {{"layer-crs", "EPSG:25832"}}), "swapped");
}

TEST_F(FirstBook, RefusesExchangedAxesByItsStation) {
    // Both ways round within the area of use: only the station tells.
    const SampleCopy other;
    (void)find_operation("book-new")->run({{"book", other.path("w.gpkg")}, {"crs", "EPSG:4326"}}, {});
    Row row{{"Home", 550.0}, MapPoint{9.3, 48.1, {}}, {}};
    book::append_rows(
        other.path("w.gpkg"),
        {{"station",
          "",
          "",
          false,
          {{"name", CellType::text, "", "", ""}, {"elevation_m", CellType::number, "", "", ""}}},
         {row}});
    const auto own = file("own.csv", "Label,Lon,Lat\nN-1,48.1364,9.3005\n");
    try {
        (void)find_operation("layer-import")
            ->run({{"book", other.path("w.gpkg")},
                   {"layer-file", own},
                   {"write", "yes"},
                   {"as-of", "2026-03-20"}},
                  {});
        ADD_FAILURE() << "it was written";
    } catch (const Error& error) {
        EXPECT_HAS(all(error.findings()), "swapped");
    }
}

TEST_F(FirstBook, ReadsDegreesMinutesAndSeconds) {
    const auto own =
        file("own.csv", "Label;Lon;Lat\nN-1;9°18'1.8\"E;48°8'11.04\"N\nN-2;9° 18.03' E;48° 8.184' N\n");
    (void)imported(own);
    for (const auto* label : {"N-1", "N-2"}) {
        const auto there = place::ToEarth("EPSG:25832")(*tree(label).at).value();
        EXPECT_NEAR(there.lat, 48.1364, 1e-6);
        EXPECT_NEAR(there.lon, 9.3005, 1e-6);
    }
}

TEST_F(FirstBook, ReadsLatitudeAndLongitudeInOneColumn) {
    const auto own =
        file("own.csv",
             "Label;Coordinates\nN-1;48.1364, 9.3005\nN-2;48.1365 N 9.3006 E\nN-3;geo:48.1366,9.3007\n");
    (void)imported(own);
    const auto there = place::ToEarth("EPSG:25832")(*tree("N-3").at).value();
    EXPECT_NEAR(there.lat, 48.1366, 1e-6);
    EXPECT_NEAR(there.lon, 9.3007, 1e-6);
    EXPECT_TRUE(tree("N-2").at);
}

TEST_F(FirstBook, TakesGermanHeadingsForLongitudeAndLatitude) {
    (void)imported(file("own.csv", "Baumnummer;Laenge;Breite\nN-1;9,3005;48,1364\n"));
    const auto there = place::ToEarth("EPSG:25832")(*tree("N-1").at).value();
    EXPECT_NEAR(there.lat, 48.1364, 1e-6);
    (void)imported(file("more.csv", "Baumnummer;L\u00e4nge;Breite\nN-2;9,3006;48,1364\n"));
    EXPECT_TRUE(tree("N-2").at);
}

TEST_F(FirstBook, AsksInWordsForASystemThatALayerDoesNotTell) {
    const auto degrees = refusal(file("own.csv", "Label,x,y\nN-1,9.3005,48.1364\n"));
    EXPECT_HAS(degrees, "Are 9.3005 and 48.1364 longitude and latitude");
    EXPECT_HAS(degrees, "layer-crs EPSG:4326");
    const auto metres = refusal(file("own.csv", "Label,x,y\nN-1,522500,5331400\n"));
    EXPECT_HAS(metres,
               "Are 522500 and 5331400 in the book's own system, ETRS89 / UTM zone 32N (EPSG:25832)?");
    EXPECT_HAS(metres, "layer-crs book");
    (void)imported(folder_.path("own.csv"), {{"layer-crs", "book"}});
    EXPECT_EQ(tree("N-1").at->x, 522500);
}

constexpr auto gpx = R"(<?xml version="1.0"?>
<gpx version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1">
<wpt lat="48.1364" lon="9.3005"><ele>551.5</ele><name>N-1</name></wpt>
<wpt lat="48.1365" lon="9.3006"><ele>552</ele><name>N-2</name></wpt>
</gpx>
)";

TEST_F(FirstBook, TakesTheOnlyLayerOfAGpxThatHasSomethingInIt) {
    (void)imported(file("walk.gpx", gpx));
    ASSERT_TRUE(tree("N-1").at);
    EXPECT_EQ(tree("N-1").elevation, Metres{551.5});
    EXPECT_EQ(orchard().trees.size(), 2U);
}

TEST_F(FirstBook, TellsAValueThatIsTooLongOnce) {
    const auto said = refusal(file("own.csv", "Label,Rootstock,Lon,Lat\nN-1," + std::string(100'001, 'M') +
                                                  ",9.3005,48.1364\nN-2,M9,9.3006,48.1364\n"));
    const auto first = said.find("100000 characters");
    ASSERT_NE(first, std::string::npos) << said.substr(0, 1000);
    EXPECT_EQ(said.find("100000 characters", first + 1), std::string::npos);
    EXPECT_LT(said.size(), 2000U);
}

TEST_F(FirstBook, DoesNotTakeWeatherStationsForTrees) {
    const auto own =
        file("stations.csv", "Station,Elevation,Lon,Lat\nHome,551,9.3005,48.1364\nHill,620,9.31,48.14\n");
    EXPECT_HAS(refusal(own), "weather station");
    testing::make_layer("GPKG", folder_.path("s.gpkg"), 25832, {"station_name", "wmo_id", "height"},
                        {{"POINT (522500 5331400)", {"Home", "10001", "551"}}});
    EXPECT_HAS(refusal(folder_.path("s.gpkg")), "weather station");
    // Said to be trees, they are.
    (void)imported(own, {{"holds", "trees"}, {"map", "Station=label"}});
    EXPECT_EQ(orchard().trees.size(), 2U);
}

TEST_F(FirstBook, AWholeImportIsUndoneAtOnce) {
    const auto own = file("own.csv",
                          "Label,Variety,Block,Row,Position,Lon,Lat\nN-1,Wrenlea,Upper,1,1,9.3005,48.1364\nN-"
                          "2,Wrenlea,Upper,1,2,9.3006,48.1365\n");
    (void)imported(own, {{"add-accessions", "yes"}, {"accession-kind", "cultivar"}, {"add-rows", "yes"}});
    ASSERT_EQ(orchard().trees.size(), 2U);
    const auto undone = find_operation("record-undo")->run({{"book", book()}}, {});
    EXPECT_HAS(std::string(undone.summary), "5 records of one import");
    const auto after = orchard();
    EXPECT_TRUE(after.trees.empty());
    EXPECT_TRUE(after.accessions.empty());
    EXPECT_TRUE(after.rows.empty());
    EXPECT_TRUE(after.blocks.empty());
}

TEST_F(FirstBook, AnImportThatWasWorkedOnIsNotUndone) {
    const auto own = file("own.csv", "Label,Lon,Lat\nN-1,9.3005,48.1364\nN-2,9.3006,48.1365\n");
    (void)imported(own);
    (void)find_operation("record-bloom")
        ->run({{"book", book()},
               {"tree", "N-1"},
               {"bbch", "65"},
               {"observed-on", "2026-03-19"},
               {"as-of", "2026-03-20"}},
              {});
    EXPECT_THROW((void)find_operation("record-undo")->run({{"book", book()}, {"entry", "import"}}, {}),
                 Error);
    EXPECT_EQ(orchard().trees.size(), 2U);
    (void)find_operation("record-undo")->run({{"book", book()}}, {});
    (void)find_operation("record-undo")->run({{"book", book()}}, {});
    EXPECT_TRUE(orchard().trees.empty());
}

}  // namespace
}  // namespace pipward::operation
