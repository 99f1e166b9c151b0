// SPDX-License-Identifier: MIT
// Every table is filled twice, once with every column and once with the required ones alone, and read back.
#include <gtest/gtest.h>

#include <tuple>

#include "book/book_testing.h"

namespace pipward::book {
namespace {

using testing::add;
using testing::at;
using testing::day;
using testing::text;
using testing::whole;

using Text = std::optional<std::string>;
using MaybeDay = std::optional<Day>;
using MaybeInt = std::optional<int>;
using MaybeNumber = std::optional<double>;

class RoundTrip : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
    }
    Orchard read() {
        auto reading = read_book(book);
        for (const auto& finding : reading.findings) {
            ADD_FAILURE() << to_text(finding);
        }
        return std::move(reading.orchard);
    }
};

TEST_F(RoundTrip, Blocks) {
    add(book, "block", {"name", "remark", "geom_wkt"},
        {{{text("North"), text("wet"), text("POLYGON((0 0,9 0,9 9,0 0))")}},
         {{text("South"), testing::unknown, text("POLYGON((0 0,9 0,9 9,0 0))")}}});
    const auto blocks = read().blocks;
    ASSERT_EQ(blocks.size(), 2U);
    EXPECT_EQ(std::tie(blocks[0].fid, blocks[0].name, blocks[0].remark),
              std::tuple(1, std::string("North"), Text("wet")));
    EXPECT_EQ(std::tie(blocks[1].name, blocks[1].remark), std::tuple(std::string("South"), Text()));
}

TEST_F(RoundTrip, TreeRows) {
    add(book, "tree_row", {"block", "name", "spacing_m", "first_position", "remark", "geom_wkt"},
        {{{text("North"), text("4"), 1.25, whole(3), text("old"), text("LINESTRING(0 0,0 90)")}}});
    add(book, "tree_row", {"block", "name", "geom_wkt"},
        {{{text("North"), text("5"), text("LINESTRING(4 0,4 90)")}}});
    const auto rows = read().rows;
    ASSERT_EQ(rows.size(), 2U);
    const auto& row = rows[0];
    EXPECT_EQ(
        std::tie(row.block, row.name, row.spacing, row.first_position, row.remark),
        std::tuple(std::string("North"), std::string("4"), std::optional(Metres{1.25}), 3, Text("old")));
    EXPECT_EQ(std::tie(rows[1].spacing, rows[1].first_position), std::tuple(std::optional<Metres>(), 1));
}

TEST_F(RoundTrip, TreesWithAndWithoutHeight) {
    add(book, "tree",
        {"label", "accession", "block", "row", "position", "rootstock", "planted_on", "removed_on", "purpose",
         "placed_by", "accuracy_m", "elevation_m", "remark"},
        {{{text("A1"), text("Red"), text("North"), text("4"), whole(17), text("M 9"), day("2011-11-20"),
           day("2024-02-01"), text("seedling"), text("surveyed"), 0.02, 311.5, text("Blüte früh")},
          MapPoint{500001.25, 5300002.5, Metres{310.75}}}});
    add(book, "tree", {"label"}, {{{text("A2")}, at(500003, 5300000)}});
    const auto trees = read().trees;
    ASSERT_EQ(trees.size(), 2U);
    const auto& tree = trees[0];
    EXPECT_EQ(
        std::tie(tree.label, tree.accession, tree.block, tree.row, tree.position, tree.rootstock),
        std::tuple(std::string("A1"), Text("Red"), Text("North"), Text("4"), MaybeInt(17), Text("M 9")));
    EXPECT_EQ(std::tie(tree.planted_on, tree.removed_on, tree.purpose, tree.placed_by),
              std::tuple(MaybeDay(day("2011-11-20")), MaybeDay(day("2024-02-01")), TreePurpose::seedling,
                         std::optional(PlacedBy::surveyed)));
    EXPECT_EQ(std::tie(tree.accuracy, tree.elevation, tree.remark),
              std::tuple(std::optional(Metres{0.02}), std::optional(Metres{311.5}), Text("Blüte früh")));
    ASSERT_TRUE(tree.at);
    EXPECT_EQ(std::tie(tree.at->x, tree.at->y, tree.at->height),
              std::tuple(500001.25, 5300002.5, std::optional(Metres{310.75})));
    EXPECT_EQ(trees[1].purpose, TreePurpose::other);
    ASSERT_TRUE(trees[1].at);
    EXPECT_FALSE(trees[1].at->height);
    EXPECT_EQ(std::tie(trees[1].accession, trees[1].planted_on, trees[1].position, trees[1].elevation),
              std::tuple(Text(), MaybeDay(), MaybeInt(), std::optional<Metres>()));
}

TEST_F(RoundTrip, Accessions) {
    add(book, "accession",
        {"name", "kind", "seed_parent", "pollen_parent", "s_alleles", "ploidy", "seed_ripe_days",
         "chill_portions", "protected_until", "remark"},
        {{{text("Larkfold Red"), text("cultivar"), text("Oak Lane"), text("Blend 3"), text("S2 S3"), whole(2),
           whole(120), 61.5, day("2031-12-31"), text("firm")}}});
    add(book, "accession", {"name", "kind"}, {{{text("Oak Lane"), text("unknown")}}});
    const auto accessions = read().accessions;
    ASSERT_EQ(accessions.size(), 2U);
    const auto& it = accessions[0];
    EXPECT_EQ(std::tie(it.name, it.kind, it.seed_parent, it.pollen_parent, it.s_alleles),
              std::tuple(std::string("Larkfold Red"), AccessionKind::cultivar, Text("Oak Lane"),
                         Text("Blend 3"), Text("S2 S3")));
    EXPECT_EQ(std::tie(it.ploidy, it.seed_ripe_days, it.chill, it.protected_until, it.remark),
              std::tuple(MaybeInt(2), MaybeInt(120), std::optional(ChillPortions{61.5}),
                         MaybeDay(day("2031-12-31")), Text("firm")));
    EXPECT_EQ(std::tie(accessions[1].ploidy, accessions[1].chill, accessions[1].protected_until),
              std::tuple(MaybeInt(), std::optional<ChillPortions>(), MaybeDay()));
}

TEST_F(RoundTrip, Blends) {
    add(book, "blend", {"name", "member", "share"},
        {{{text("Blend 3"), text("Red"), 0.25}}, {{text("Blend 3"), text("Oak"), testing::unknown}}});
    const auto members = read().blend_members;
    ASSERT_EQ(members.size(), 2U);
    EXPECT_EQ(std::tie(members[0].name, members[0].member, members[0].share),
              std::tuple(std::string("Blend 3"), std::string("Red"), std::optional(Share{0.25})));
    EXPECT_FALSE(members[1].share);
}

TEST_F(RoundTrip, BloomObservations) {
    add(book, "bloom_observation",
        {"tree", "accession", "observed_on", "bbch", "open_percent", "observer", "remark"},
        {{{text("A1"), text("Red"), day("2026-04-20"), whole(65), 55.5, text("me"), text("after rain")}}});
    add(book, "bloom_observation", {"observed_on", "bbch"}, {{{day("2026-04-21"), whole(0)}}});
    const auto remarks = read().bloom_observations;
    ASSERT_EQ(remarks.size(), 2U);
    const auto& it = remarks[0];
    EXPECT_EQ(
        std::tie(it.tree, it.accession, it.observed_on, it.bbch, it.open_percent, it.observer, it.remark),
        std::tuple(Text("A1"), Text("Red"), day("2026-04-20"), Bbch{65}, MaybeNumber(55.5), Text("me"),
                   Text("after rain")));
    EXPECT_EQ(std::tie(remarks[1].tree, remarks[1].bbch, remarks[1].open_percent),
              std::tuple(Text(), Bbch{0}, MaybeNumber()));
}

TEST_F(RoundTrip, StationsWithTheirLatitude) {
    add(book, "station", {"name", "elevation_m"}, {{{text("Ridge"), 315.0}, at(500000, 5300000)}});
    const auto stations = read().stations;
    ASSERT_EQ(stations.size(), 1U);
    EXPECT_EQ(std::tie(stations[0].name, stations[0].elevation),
              std::tuple(std::string("Ridge"), Metres{315}));
    ASSERT_TRUE(stations[0].latitude);
    // On the central meridian the northing is 0.9996 x the meridian arc; 47.8533 N has an arc of 5,302,121 m.
    // Recomputed, a regression check.
    EXPECT_NEAR(stations[0].latitude->degrees, 47.85334, 0.00001);
}

TEST_F(RoundTrip, WeatherDays) {
    add(book, "weather_day", {"station", "day", "t_min_c", "t_max_c", "source"},
        {{{text("Ridge"), day("2026-02-28"), -4.25, 3.5, text("forecast")}}});
    add(book, "weather_day", {"station", "day", "t_min_c", "t_max_c"},
        {{{text("Ridge"), day("2024-02-29"), 0.0, whole(7)}}});
    const auto days = read().weather;
    ASSERT_EQ(days.size(), 2U);
    EXPECT_EQ(std::tie(days[0].station, days[0].day, days[0].t_min, days[0].t_max, days[0].source),
              std::tuple(std::string("Ridge"), day("2026-02-28"), Celsius{-4.25}, Celsius{3.5},
                         WeatherSource::forecast));
    EXPECT_EQ(std::tie(days[1].day, days[1].t_min, days[1].t_max, days[1].source),
              std::tuple(day("2024-02-29"), Celsius{0}, Celsius{7}, WeatherSource::observed));
}

TEST_F(RoundTrip, CrossGoals) {
    add(book, "cross_goal",
        {"code", "season", "seed_parent", "pollen_parent", "seedlings_wanted", "priority", "remark"},
        {{{text("26-01"), whole(2026), text("Red"), text("Oak"), whole(120), whole(1), text("scab")}}});
    add(book, "cross_goal", {"code", "season", "seed_parent", "pollen_parent", "seedlings_wanted"},
        {{{text("26-02"), whole(2026), text("Red"), text("Elm"), whole(1)}}});
    const auto goals = read().goals;
    ASSERT_EQ(goals.size(), 2U);
    const auto& it = goals[0];
    EXPECT_EQ(std::tie(it.code, it.season, it.seed_parent, it.pollen_parent, it.seedlings_wanted, it.priority,
                       it.remark),
              std::tuple(std::string("26-01"), Season{2026}, std::string("Red"), std::string("Oak"), 120,
                         MaybeInt(1), Text("scab")));
    EXPECT_FALSE(goals[1].priority);
}

TEST_F(RoundTrip, PollenLotsAndTheirTests) {
    add(book, "pollen_lot",
        {"code", "donor", "collected_on", "flowers", "mass_mg", "store", "humidity_percent", "used_up_on",
         "remark"},
        {{{text("P1"), text("Oak"), day("2025-04-28"), whole(300), 450.5, text("freezer"), 33.0,
           day("2026-05-02"), text("vial 7")}}});
    add(book, "pollen_lot", {"code", "donor", "collected_on", "store"},
        {{{text("P2"), text("Oak"), day("2025-04-29"), text("room")}}});
    add(book, "pollen_test", {"lot", "tested_on", "grains", "germinated"},
        {{{text("P1"), day("2026-04-10"), whole(200), whole(121)}}});
    const auto orchard = read();
    ASSERT_EQ(orchard.pollen_lots.size(), 2U);
    const auto& lot = orchard.pollen_lots[0];
    EXPECT_EQ(std::tie(lot.code, lot.donor, lot.collected_on, lot.flowers, lot.mass, lot.store),
              std::tuple(std::string("P1"), std::string("Oak"), day("2025-04-28"), MaybeInt(300),
                         std::optional(Milligrams{450.5}), Store::freezer));
    EXPECT_EQ(std::tie(lot.humidity_percent, lot.used_up_on, lot.remark),
              std::tuple(MaybeNumber(33.0), MaybeDay(day("2026-05-02")), Text("vial 7")));
    EXPECT_EQ(std::tie(orchard.pollen_lots[1].store, orchard.pollen_lots[1].mass),
              std::tuple(Store::room, std::optional<Milligrams>()));
    ASSERT_EQ(orchard.pollen_tests.size(), 1U);
    const auto& test = orchard.pollen_tests[0];
    EXPECT_EQ(std::tie(test.lot, test.tested_on, test.grains, test.germinated),
              std::tuple(std::string("P1"), day("2026-04-10"), 200, 121));
}

TEST_F(RoundTrip, PollinationsAndTheirFruit) {
    add(book, "pollination", {"tag", "cross", "tree", "pollinated_on", "flowers", "lot", "pass", "remark"},
        {{{text("T1"), text("26-01"), text("A1"), day("2026-04-22"), whole(40), text("P1"), whole(2),
           text("windy")}}});
    add(book, "pollination", {"tag", "cross", "tree", "pollinated_on", "flowers"},
        {{{text("T2"), text("26-01"), text("A1"), day("2026-04-23"), whole(0)}}});
    add(book, "fruit", {"tag", "harvested_on", "fruits", "seeds_sound", "seeds_empty", "remark"},
        {{{text("T1"), day("2026-09-10"), whole(12), whole(80), whole(9), text("small")}}});
    add(book, "fruit", {"tag", "harvested_on", "fruits"}, {{{text("T2"), day("2026-09-11"), whole(0)}}});
    const auto orchard = read();
    ASSERT_EQ(orchard.pollinations.size(), 2U);
    const auto& work = orchard.pollinations[0];
    EXPECT_EQ(std::tie(work.tag, work.cross, work.tree, work.pollinated_on, work.flowers, work.lot, work.pass,
                       work.remark),
              std::tuple(std::string("T1"), std::string("26-01"), std::string("A1"), day("2026-04-22"), 40,
                         Text("P1"), MaybeInt(2), Text("windy")));
    EXPECT_EQ(std::tie(orchard.pollinations[1].lot, orchard.pollinations[1].pass),
              std::tuple(Text(), MaybeInt()));
    ASSERT_EQ(orchard.fruits.size(), 2U);
    const auto& fruit = orchard.fruits[0];
    EXPECT_EQ(std::tie(fruit.tag, fruit.harvested_on, fruit.fruits, fruit.seeds_sound, fruit.seeds_empty,
                       fruit.remark),
              std::tuple(std::string("T1"), day("2026-09-10"), 12, MaybeInt(80), MaybeInt(9), Text("small")));
    EXPECT_FALSE(orchard.fruits[1].seeds_sound);
}

TEST_F(RoundTrip, SeedLotsAndWhatBecameOfThem) {
    add(book, "seed_lot",
        {"code", "cross", "seeds", "from_tags", "washed_on", "stratified_from", "stratification_c",
         "stratified_to", "treatment", "medium", "remark"},
        {{{text("S1"), text("26-01"), whole(80), text("T1 T2"), day("2026-09-12"), day("2026-11-01"), 3.5,
           day("2027-02-01"), text("soak"), text("sand"), text("mould")}}});
    add(book, "seed_lot", {"code", "cross", "seeds"}, {{{text("S2"), text("26-01"), whole(5)}}});
    add(book, "germination_count", {"lot", "counted_on", "germinated"},
        {{{text("S1"), day("2027-02-10"), whole(44)}}});
    add(book, "seed_withdrawal", {"lot", "withdrawn_on", "seeds", "remark"},
        {{{text("S1"), day("2027-02-11"), whole(44), text("potted")}}});
    const auto orchard = read();
    ASSERT_EQ(orchard.seed_lots.size(), 2U);
    const auto& lot = orchard.seed_lots[0];
    EXPECT_EQ(std::tie(lot.code, lot.cross, lot.seeds, lot.from_tags, lot.washed_on, lot.stratified_from),
              std::tuple(std::string("S1"), std::string("26-01"), 80, Text("T1 T2"),
                         MaybeDay(day("2026-09-12")), MaybeDay(day("2026-11-01"))));
    EXPECT_EQ(std::tie(lot.cold, lot.stratified_to, lot.treatment, lot.medium, lot.remark),
              std::tuple(std::optional(Celsius{3.5}), MaybeDay(day("2027-02-01")), Text("soak"), Text("sand"),
                         Text("mould")));
    EXPECT_EQ(std::tie(orchard.seed_lots[1].cold, orchard.seed_lots[1].washed_on),
              std::tuple(std::optional<Celsius>(), MaybeDay()));
    ASSERT_EQ(orchard.germination_counts.size(), 1U);
    EXPECT_EQ(std::tie(orchard.germination_counts[0].lot, orchard.germination_counts[0].counted_on,
                       orchard.germination_counts[0].germinated),
              std::tuple(std::string("S1"), day("2027-02-10"), 44));
    ASSERT_EQ(orchard.seed_withdrawals.size(), 1U);
    const auto& out = orchard.seed_withdrawals[0];
    EXPECT_EQ(std::tie(out.lot, out.withdrawn_on, out.seeds, out.remark),
              std::tuple(std::string("S1"), day("2027-02-11"), 44, Text("potted")));
}

TEST_F(RoundTrip, TraitScores) {
    add(book, "trait_score", {"tree", "scored_on", "trait", "score", "remark"},
        {{{text("A1"), day("2030-09-20"), text("taste"), -1.5, text("sour")}}});
    const auto scores = read().trait_scores;
    ASSERT_EQ(scores.size(), 1U);
    EXPECT_EQ(
        std::tie(scores[0].tree, scores[0].scored_on, scores[0].trait, scores[0].score, scores[0].remark),
        std::tuple(std::string("A1"), day("2030-09-20"), std::string("taste"), -1.5, Text("sour")));
}

TEST_F(RoundTrip, TheBookNamesItsCoordinateSystem) {
    EXPECT_EQ(read().crs, "EPSG:32632");
}

TEST_F(RoundTrip, AFilledBookStaysAValidGeoPackage) {
    add(book, "tree", {"label"}, {{{text("A1")}, MapPoint{500001, 5300002, Metres{310}}}});
    add(book, "block", {"name", "geom_wkt"}, {{{text("North"), text("POLYGON((0 0,9 0,9 9,0 0))")}}});
    add(book, "bloom_observation", {"tree", "observed_on", "bbch"},
        {{{text("A1"), day("2026-04-21"), whole(61)}}});
    EXPECT_EQ(files(), std::vector<std::string>{"book.gpkg"});
    if (!testing::has_validator()) {
        GTEST_SKIP() << "GDAL's GeoPackage validator (python3-gdal) is not installed.";
    }
    EXPECT_EQ(testing::complaints_about(book), "");
}

TEST_F(RoundTrip, SouthOfTheEquatorTheLatitudeIsNegativeWhateverTheAxisOrder) {
    const auto south = (folder / "south.gpkg").string();
    create_book(south, "EPSG:4326");
    add(south, "station", {"name", "elevation_m"}, {{{text("Hill"), 20.0}, at(172.6, -43.5)}});
    const auto reading = read_book(south);
    ASSERT_EQ(reading.orchard.stations.size(), 1U);
    ASSERT_TRUE(reading.orchard.stations[0].latitude);
    EXPECT_NEAR(reading.orchard.stations[0].latitude->degrees, -43.5, 1e-9);
    EXPECT_EQ(reading.orchard.crs, "EPSG:4326");
}

class AppendRows : public RoundTrip {};

TEST_F(AppendRows, CollectsEveryFaultAndWritesNothing) {
    const auto error = testing::error_of([&] {
        add(book, "tree", {"label", "purpose", "position"},
            {{{text("A1"), text("parent"), whole(1)}},
             {{text("A2"), text("parnt"), whole(-1)}},
             {{testing::unknown, text("parent"), 1.5}}});
    });
    EXPECT_EQ(error.trouble(), Trouble::input);
    ASSERT_EQ(error.findings().size(), 4U);
    EXPECT_EQ(std::tie(error.findings()[0].table, error.findings()[0].row, error.findings()[0].field),
              std::tuple("tree", "row 2", "purpose"));
    EXPECT_EQ(error.findings()[3].field, "position");
    EXPECT_TRUE(read().trees.empty());
}

TEST_F(AppendRows, RefusesANameThatIsTakenAndKeepsTheRest) {
    add(book, "tree", {"label"}, {{{text("A1")}, at(1, 1)}});
    const auto error = testing::error_of([&] {
        add(book, "tree", {"label"}, {{{text("A2")}, at(2, 2)}, {{text("A1")}, at(3, 3)}});
    });
    EXPECT_EQ(error.trouble(), Trouble::input);
    EXPECT_EQ(error.findings().at(0).row, "row 2");
    EXPECT_EQ(read().trees.size(), 1U);
}

TEST_F(AppendRows, RefusesUnknownTablesColumnsAndGeometries) {
    EXPECT_EQ(testing::error_of([&] { add(book, "treee", {"label"}, {}); }).trouble(), Trouble::usage);
    EXPECT_EQ(testing::error_of([&] { add(book, "bloom_window", {"label"}, {}); }).trouble(), Trouble::usage);
    EXPECT_EQ(testing::error_of([&] {
                  add(book, "tree", {"label", "colour"}, {});
              })
                  .findings()
                  .at(0)
                  .field,
              "colour");
    EXPECT_EQ(testing::error_of([&] { add(book, "tree", {"accession"}, {}); }).findings().at(0).field,
              "label");
    for (const auto* wkt : {"POINT(1 1)", "POLYGON((0 0", "nonsense", ""}) {
        const auto error = testing::error_of([&] {
            add(book, "block", {"name", "geom_wkt"}, {{{text("North"), text(wkt)}}});
        });
        EXPECT_EQ(error.findings().at(0).field, "geom_wkt") << wkt;
    }
}

}  // namespace
}  // namespace pipward::book
