// SPDX-License-Identifier: MIT
// One sound orchard; each test breaks one rule and expects that finding.
#include <gtest/gtest.h>

#include "book/book_testing.h"

namespace pipward::book {
namespace {

using testing::day;
using testing::has;

const Day today = day("2026-05-10");

Tree tree(const char* label, const char* accession, int position) {
    Tree it;
    it.fid = position;
    it.label = label;
    it.accession = accession;
    it.block = "North";
    it.row = "4";
    it.position = position;
    it.planted_on = day("2012-03-01");
    it.purpose = TreePurpose::parent;
    it.at = testing::at(500000 + position, 5300000);
    return it;
}

Accession accession(const char* name, const char* alleles) {
    Accession it;
    it.name = name;
    it.kind = AccessionKind::cultivar;
    it.s_alleles = alleles;
    it.ploidy = 2;
    return it;
}

Orchard sound_orchard() {
    Orchard o;
    o.crs = "EPSG:32632";
    o.blocks = {{1, "North", {}}};
    o.rows = {{1, "North", "4", Metres{1.2}, 1, {}}};
    o.stations = {{1, "Ridge", Metres{300}, testing::at(500000, 5300000), Latitude{47.85}}};
    o.accessions = {accession("Larkfold Red", "S2 S3"), accession("Oak Lane", "S5S9"),
                    accession("Elm Gold", "7,10")};
    o.accessions[2].seed_parent = "Oak Lane";
    o.accessions[2].pollen_parent = "Spring blend";
    o.trees = {tree("A1", "Larkfold Red", 1), tree("A2", "Oak Lane", 2), tree("A3", "Elm Gold", 3)};
    o.blend_members = {{1, "Spring blend", "Oak Lane", Share{0.5}},
                       {2, "Spring blend", "Larkfold Red", Share{0.5}}};
    o.bloom_observations = {{1, "A1", {}, day("2026-04-20"), Bbch{65}, {}, {}, {}},
                            {2, {}, "Oak Lane", day("2026-04-18"), Bbch{61}, {}, {}, {}}};
    for (Day when = day("2025-10-01"); when <= today; when = when + 1) {
        o.weather.push_back({1, "Ridge", when, Celsius{2}, Celsius{11}, WeatherSource::observed});
    }
    o.goals = {{1, "26-01", Season{2026}, "Larkfold Red", "Oak Lane", 100, {}, {}}};
    PollenLot lot;
    lot.code = "P1";
    lot.donor = "Oak Lane";
    lot.collected_on = day("2026-04-18");
    lot.store = Store::refrigerator;
    o.pollen_lots = {lot};
    o.pollen_tests = {{1, "P1", day("2026-04-19"), 200, 120}};
    o.pollinations = {{1, "T1", "26-01", "A1", day("2026-04-22"), 40, "P1", 1, {}}};
    o.fruits = {{1, "T1", day("2026-05-09"), 12, 80, 4, {}}};
    SeedLot seed;
    seed.code = "S1";
    seed.cross = "26-01";
    seed.seeds = 80;
    o.seed_lots = {seed};
    o.germination_counts = {{1, "S1", day("2026-05-10"), 50}};
    o.seed_withdrawals = {{1, "S1", day("2026-05-10"), 50, {}}};
    o.trait_scores = {{1, "A3", day("2025-09-20"), "taste", 7, {}}};
    return o;
}

class CheckOrchard : public ::testing::Test {
  protected:
    Findings check() { return check_orchard(o, today); }
    void expect(const testing::WantedFinding& wanted) { EXPECT_TRUE(has(check(), wanted)); }
    /// The only thing wrong.
    void expect_only(const testing::WantedFinding& wanted) {
        const auto found = check();
        EXPECT_EQ(found.size(), 1U);
        EXPECT_TRUE(has(found, wanted));
        for (const auto& finding : found) {
            EXPECT_FALSE(finding.remedy.empty()) << to_text(finding);
        }
    }
    Orchard o = sound_orchard();
};

TEST_F(CheckOrchard, FindsNothingInASoundOrchard) {
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, SaysPlainlyWhatAnEmptyBookLacks) {
    o = {};
    const auto found = check();
    EXPECT_TRUE(has(found, {Level::warning, "tree", "", "", "", "no trees", "Digitise"}));
    EXPECT_TRUE(has(found, {Level::warning, "bloom_observation", "", "", "", "no bloom observations", ""}));
    EXPECT_TRUE(has(found, {Level::error, "station", "", "", "", "no weather station", ""}));
    EXPECT_EQ(found.size(), 3U);
    o.stations = sound_orchard().stations;
    expect({Level::error, "weather_day", "", "", "", "no weather", "weather-import"});
}

TEST_F(CheckOrchard, AnEmptyTableIsToldOnceHoweverManyRowsReferToIt) {
    for (int i = 4; i < 54; ++i) {
        o.bloom_observations.push_back(
            {10 + i, "A" + std::to_string(i), {}, day("2026-04-20"), Bbch{65}, {}, {}, {}});
    }
    o.trees.clear();
    const auto found = check();
    EXPECT_EQ(found.size(), 2U);
    EXPECT_TRUE(has(found, {Level::warning, "tree", "", "", "", "no trees", "Digitise"}));
    EXPECT_TRUE(
        has(found, {Level::error, "tree", "", "", "",
                    "rows of bloom_observation, pollination, trait_score that refer to it", "Fill it in"}));
    o = sound_orchard();
    for (int i = 4; i < 50; ++i) {
        o.trees.push_back(tree(("A" + std::to_string(i)).c_str(), "Elm Gold", i));
    }
    o.accessions.clear();
    o.blend_members.clear();
    expect_only({Level::error, "accession", "", "", "",
                 "rows of bloom_observation, cross_goal, pollen_lot, tree that refer to it", "Fill it in"});
}

TEST_F(CheckOrchard, ANameThatIsMissingIsToldOnceATable) {
    for (int i = 4; i < 20; ++i) {
        o.trees.push_back(tree(("A" + std::to_string(i)).c_str(), "Elm Silver", i));
    }
    expect_only({Level::error, "tree", "A4", "accession", "Elm Silver",
                 "no accession of this name; 16 rows of the table give it", "Add the accession"});
}

TEST_F(CheckOrchard, TheDayOfAnEmptyCellInASpreadsheet) {
    o.trees[0].planted_on = day("1900-01-01");
    expect_only(
        {Level::warning, "tree", "A1", "planted_on", "1900-01-01", "for an empty cell", "clear the cell"});
    o = sound_orchard();
    o.seed_lots[0].washed_on = day("1899-12-30");
    expect_only(
        {Level::warning, "seed_lot", "S1", "washed_on", "1899-12-30", "for an empty cell", "clear the cell"});
    o = sound_orchard();
    o.weather.push_back({9, "Ridge", day("1900-01-01"), Celsius{2}, Celsius{11}, WeatherSource::observed});
    for (const auto& finding : check()) {
        EXPECT_EQ(finding.message.text().find("for an empty cell"), std::string::npos);
    }
}

TEST_F(CheckOrchard, ObservationsThatAreDoubledOrContradictOneAnother) {
    o.bloom_observations.push_back({8, "A1", {}, day("2026-04-20"), Bbch{65}, {}, {}, {}});
    expect_only(
        {Level::warning, "bloom_observation", "fid 8", "bbch", "65", "there twice, as fid 1", "Remove one"});
    o.bloom_observations.back().bbch = Bbch{61};
    expect_only(
        {Level::warning, "bloom_observation", "fid 8", "bbch", "61", "stage 65 as well (fid 1)", "Remove"});
    o.bloom_observations.back().bbch = Bbch{64};
    EXPECT_EQ(check(), Findings{});
    o.bloom_observations.back() = {8, "A1", {}, day("2026-04-24"), Bbch{61}, {}, {}, {}};
    expect_only({Level::warning, "bloom_observation", "fid 8", "bbch", "61",
                 "on 2026-04-20 it had stage 65 already", "Correct"});
    o.bloom_observations.back() = {8, "A2", {}, day("2026-04-24"), Bbch{61}, {}, {}, {}};
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, AScoreWrittenTwice) {
    o.trait_scores.push_back({2, "A3", day("2025-09-20"), "taste", 7, {}});
    expect_only({Level::notice, "trait_score", "fid 2", "score", "7", "there twice, as fid 1", "Remove one"});
    o.trait_scores.back().score = 5;
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, CountsOfGerminationThatFall) {
    o.germination_counts.push_back({2, "S1", day("2026-05-08"), 60});
    expect_only({Level::warning, "germination_count", "fid 1", "germinated", "50",
                 "60 had germinated already", "Add"});
}

TEST_F(CheckOrchard, AColdStoreColderThanAny) {
    o.seed_lots[0].cold = Celsius{-100};
    expect_only({Level::warning, "seed_lot", "S1", "stratification_c", "-100", "No seed is stratified",
                 "about 1 to 10"});
    o.seed_lots[0].cold = Celsius{3};
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, NamesThatCannotBeRead) {
    o.goals[0].code = "26\u202E-01";
    o.pollinations[0].cross = "26\u202E-01";
    o.seed_lots[0].cross = "26\u202E-01";
    expect_only({Level::warning, "cross_goal", "26\u202E-01", "code", "26\u202E-01", "invisible characters",
                 "Type it again"});
    o = sound_orchard();
    o.trees.push_back(tree(std::string(5000, 'x').c_str(), "Elm Gold", 9));
    const auto found = check();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].level, Level::error);
    EXPECT_LT(found[0].row.text().size(), 100U);
    EXPECT_NE(found[0].message.text().find("more than 250 characters"), std::string::npos);
}

// Names

TEST_F(CheckOrchard, EveryNameThatNothingAnswersToIsFoundWhereItStands) {
    o.rows[0].block = "East";
    o.trees[0].accession = "Ghost";
    o.trees[1].block = "East";
    o.accessions[0].seed_parent = "Ghost";
    o.accessions[0].pollen_parent = "Ghost";
    o.blend_members[0].member = "Ghost";
    o.bloom_observations[0].tree = "Z9";
    o.bloom_observations[1].accession = "Ghost";
    o.goals[0].seed_parent = "Ghost";
    o.goals[0].pollen_parent = "Ghost";
    o.pollen_lots[0].donor = "Ghost";
    o.pollen_tests[0].lot = "P9";
    o.pollinations[0].cross = "26-99";
    o.pollinations[0].tree = "Z9";
    o.pollinations[0].lot = "P9";
    o.fruits[0].tag = "T99";
    o.seed_lots[0].cross = "26-99";
    o.germination_counts[0].lot = "S99";
    o.seed_withdrawals[0].lot = "S99";
    o.trait_scores[0].tree = "Z9";
    const auto found = check();
    struct Expected {
        const char* table;
        const char* row;
        const char* field;
        const char* value;
    };
    for (const auto& [table, row, field, value] :
         std::vector<Expected>{{"tree_row", "fid 1", "block", "East"},
                               {"tree", "A1", "accession", "Ghost"},
                               {"tree", "A2", "block", "East"},
                               {"accession", "Larkfold Red", "seed_parent", "Ghost"},
                               {"accession", "Larkfold Red", "pollen_parent", "Ghost"},
                               {"blend", "fid 1", "member", "Ghost"},
                               {"bloom_observation", "fid 1", "tree", "Z9"},
                               {"bloom_observation", "fid 2", "accession", "Ghost"},
                               {"cross_goal", "26-01", "seed_parent", "Ghost"},
                               {"cross_goal", "26-01", "pollen_parent", "Ghost"},
                               {"pollen_lot", "P1", "donor", "Ghost"},
                               {"pollen_test", "fid 1", "lot", "P9"},
                               {"pollination", "T1", "cross", "26-99"},
                               {"pollination", "T1", "tree", "Z9"},
                               {"pollination", "T1", "lot", "P9"},
                               {"fruit", "fid 1", "tag", "T99"},
                               {"seed_lot", "S1", "cross", "26-99"},
                               {"germination_count", "fid 1", "lot", "S99"},
                               {"seed_withdrawal", "fid 1", "lot", "S99"},
                               {"trait_score", "fid 1", "tree", "Z9"}}) {
        EXPECT_TRUE(has(found, {Level::error, table, row, field, value, "The book has no", ""}));
    }
}

TEST_F(CheckOrchard, ADayOfAStationThatIsNotThereIsFoundOnce) {
    o.weather[3].station = "Rigde";
    o.weather[4].station = "Rigde";
    expect({Level::error, "weather_day", "Rigde", "station", "Rigde", "2 days", "Did you mean \"Ridge\"?"});
}

TEST_F(CheckOrchard, SuggestsTheNameThatWasMeant) {
    for (const auto* wrong :
         {"larkfold red", "Larkfold  Red ", "Larkfold Rd", "Larkfold Redd", "Larkfodl Red", "Larkfold Rad"}) {
        o.goals[0].seed_parent = wrong;
        expect({Level::error, "cross_goal", "26-01", "seed_parent", wrong, "",
                "Did you mean \"Larkfold Red\"?"});
    }
    o.goals[0].seed_parent = "Larch Red";
    expect({Level::error, "cross_goal", "26-01", "seed_parent", "Larch Red", "", "Add the accession"});
}

TEST_F(CheckOrchard, ATableOfWhichNothingCouldBeReadIsNotMissedByEveryRowThatNamesIt) {
    o.trees.clear();
    for (const auto& finding : check_orchard(o, today, {{"tree", {}}})) {
        EXPECT_NE(finding.field, "tree") << to_text(finding);
        EXPECT_NE(finding.message, "The book has no trees.");
        EXPECT_EQ(finding.message.text().find("No living tree"), std::string::npos) << to_text(finding);
    }
}

TEST_F(CheckOrchard, ARowThatCouldNotBeReadIsNotTakenForAnotherName) {
    o.pollen_lots[0].code = "P-24-02";
    o.pollen_tests[0].lot = "P-25-02";
    o.pollinations[0].lot.reset();
    const testing::WantedFinding wanted{
        Level::error,       "pollen_test", "fid 1", "lot", "P-25-02", "no pollen lot of this name",
        "could not be read"};
    EXPECT_TRUE(has(check_orchard(o, today, {{"pollen_lot", {}}}), wanted));
    expect({Level::error, "pollen_test", "fid 1", "lot", "P-25-02", "", "Did you mean \"P-24-02\"?"});
}

TEST_F(CheckOrchard, ABlendMayBeADonorButNotASeedParent) {
    o.pollen_lots[0].donor = "Spring blend";
    o.pollinations.clear();
    o.fruits.clear();
    EXPECT_EQ(check(), Findings{});
    o.goals[0].seed_parent = "Spring blend";
    expect({Level::error, "cross_goal", "26-01", "seed_parent", "Spring blend", "no accession", ""});
}

TEST_F(CheckOrchard, TwoTreesOnOneLabel) {
    o.trees[1].label = "A1";
    expect({Level::error, "tree", "A1", "label", "A1", "2 rows have this name", ""});
}

TEST_F(CheckOrchard, KeysThatDifferOnlyByCapitalsOrSpaces) {
    o.trees[1].label = "a1 ";
    expect_only({Level::warning, "tree", "A1", "label", "a1 ", "capitals or spaces", ""});
}

TEST_F(CheckOrchard, EveryKeyMustBeOnesOwn) {
    o.blocks.push_back(o.blocks[0]);
    o.rows.push_back(o.rows[0]);
    o.stations.push_back(o.stations[0]);
    o.accessions.push_back(o.accessions[0]);
    o.goals.push_back(o.goals[0]);
    o.pollen_lots.push_back(o.pollen_lots[0]);
    o.pollinations.push_back(o.pollinations[0]);
    o.seed_lots.push_back(o.seed_lots[0]);
    const auto found = check();
    EXPECT_TRUE(has(found, {Level::error, "block", "North", "name", "North", "2 rows", ""}));
    EXPECT_TRUE(has(found, {Level::error, "tree_row", "North / 4", "name", "North / 4", "2 rows", ""}));
    EXPECT_TRUE(has(found, {Level::error, "station", "Ridge", "name", "Ridge", "2 rows", ""}));
    EXPECT_TRUE(
        has(found, {Level::error, "accession", "Larkfold Red", "name", "Larkfold Red", "2 rows", ""}));
    EXPECT_TRUE(has(found, {Level::error, "cross_goal", "26-01", "code", "26-01", "2 rows", ""}));
    EXPECT_TRUE(has(found, {Level::error, "pollen_lot", "P1", "code", "P1", "2 rows", ""}));
    EXPECT_TRUE(has(found, {Level::error, "pollination", "T1", "tag", "T1", "of this day already", ""}));
    EXPECT_TRUE(has(found, {Level::error, "seed_lot", "S1", "code", "S1", "2 rows", ""}));
}

// Trees

TEST_F(CheckOrchard, TwoLivingTreesAtOnePositionButNotADeadOne) {
    o.trees[1].position = 1;
    expect_only(
        {Level::error, "tree", "A2", "position", "1", "Tree A1 stands at the same position", "removal"});
    o.trees[0].removed_on = day("2020-02-01");
    o.bloom_observations[0].tree = "A2";
    o.pollinations.clear();
    o.fruits.clear();
    o.goals.clear();
    o.seed_lots.clear();
    o.germination_counts.clear();
    o.seed_withdrawals.clear();
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, ATreeMayFollowAnotherThatIsToGo) {
    o.trees.push_back(tree("A9", "Elm Gold", 1));
    o.trees.back().planted_on = day("2026-11-20");
    o.trees[0].removed_on = day("2026-11-20");
    expect_only({Level::warning, "tree", "A9", "planted_on", "2026-11-20", "future", ""});
    o.trees[0].removed_on = day("2026-11-21");
    expect({Level::error, "tree", "A9", "position", "1", "Tree A1 stands at the same position", "removal"});
    o.trees[0].removed_on.reset();
    expect({Level::error, "tree", "A9", "position", "1", "Tree A1 stands at the same position", "removal"});
}

TEST_F(CheckOrchard, AccessionsWithoutAnyTreeAreLegal) {
    o.trees.clear();
    o.bloom_observations[0] = {1, {}, "Oak Lane", day("2026-04-20"), Bbch{65}, {}, {}, {}};
    o.pollinations.clear();
    o.fruits.clear();
    o.seed_lots.clear();
    o.germination_counts.clear();
    o.seed_withdrawals.clear();
    o.trait_scores.clear();
    expect_only({Level::warning, "tree", "", "", "", "no trees", "Digitise"});
}

TEST_F(CheckOrchard, ARowThatTheBlockDoesNotHave) {
    o.trees[0].row = "5";
    expect_only({Level::error, "tree", "A1", "row", "5", "Block North has no row", ""});
    o.trees[0].block.reset();
    expect_only({Level::warning, "tree", "A1", "row", "5", "no block", ""});
}

TEST_F(CheckOrchard, TreesRemovedBeforeTheyWerePlantedOrPlantedInTheFuture) {
    o.trees[1].removed_on = day("2011-01-01");
    expect({Level::error, "tree", "A2", "removed_on", "2011-01-01", "before it was planted", ""});
    o.trees[1].removed_on.reset();
    o.trees[1].planted_on = day("2026-11-01");
    expect_only({Level::warning, "tree", "A2", "planted_on", "2026-11-01", "future", ""});
}

TEST_F(CheckOrchard, AParentOfUnknownKindButNotASeedling) {
    o.trees[2].accession.reset();
    expect_only({Level::warning, "tree", "A3", "accession", "", "accession of this tree is not known", ""});
    o.trees[2].purpose = TreePurpose::seedling;
    EXPECT_EQ(check(), Findings{});
}

// Notes

TEST_F(CheckOrchard, ANoteOfNothing) {
    o.bloom_observations[0].tree.reset();
    expect_only(
        {Level::error, "bloom_observation", "fid 1", "tree", "", "neither a tree nor an accession", ""});
}

TEST_F(CheckOrchard, ANoteWhoseTreeAndAccessionDisagree) {
    o.bloom_observations[0].accession = "Oak Lane";
    expect_only(
        {Level::error, "bloom_observation", "fid 1", "accession", "Oak Lane", "tree A1 is Larkfold Red", ""});
}

TEST_F(CheckOrchard, ObservationsFromTheFutureOrBeforePlantingOrAfterRemoval) {
    o.bloom_observations[0].observed_on = day("2026-05-11");
    expect_only({Level::warning, "bloom_observation", "fid 1", "observed_on", "2026-05-11", "future", ""});
    o.bloom_observations[0].observed_on = day("2026-04-20");
    o.trees[0].planted_on = day("2026-04-21");
    expect_only({Level::warning, "bloom_observation", "fid 1", "observed_on", "2026-04-20",
                 "planted only on 2026-04-21", ""});
    o.trees[0].planted_on.reset();
    o.trees.push_back(o.trees[0]);
    o.trees.back().label = "A9";
    o.trees[0].removed_on = day("2026-04-19");
    o.pollinations[0].tree = "A9";
    expect_only({Level::warning, "bloom_observation", "fid 1", "observed_on", "2026-04-20",
                 "removed on 2026-04-19", ""});
}

TEST_F(CheckOrchard, ANoteOfTheFutureIsFoundOnceAndNoWeatherIsAskedForIt) {
    o.bloom_observations[0].observed_on = day("2099-04-20");
    expect_only({Level::warning, "bloom_observation", "fid 1", "observed_on", "2099-04-20", "future", ""});
}

TEST_F(CheckOrchard, AStageOfBloomFarFromTheBooksUsualTimeOfTheYear) {
    for (int remark = 0; remark < 9; ++remark) {
        o.bloom_observations.push_back(
            {10 + remark, {}, "Oak Lane", day("2026-04-10") + remark, Bbch{60}, {}, {}, {}});
    }
    EXPECT_EQ(check(), Findings{});
    o.bloom_observations[0].observed_on = day("2026-01-10");
    expect_only({Level::warning, "bloom_observation", "fid 1", "observed_on", "2026-01-10",
                 "about 94 days before the book's other bloom observations; it is not used",
                 "Check the date"});
    EXPECT_EQ(misdated_observations(o, today), std::set<std::int64_t>{1});
    o.bloom_observations[0].bbch = Bbch{10};
    EXPECT_EQ(check(), Findings{});
}

// Weather

TEST_F(CheckOrchard, LowestAboveHighest) {
    o.weather[5].t_min = Celsius{12};
    expect_only({Level::error, "weather_day", "Ridge 2025-10-06", "t_min_c", "12", "above the highest, 11",
                 "swapped"});
}

TEST_F(CheckOrchard, TemperaturesThatNeverWere) {
    o.weather[5].t_max = Celsius{70};
    o.weather[6].t_min = Celsius{-99};
    const auto found = check();
    EXPECT_TRUE(
        has(found, {Level::error, "weather_day", "Ridge 2025-10-06", "t_max_c", "70", "ever measured", ""}));
    EXPECT_TRUE(
        has(found, {Level::error, "weather_day", "Ridge 2025-10-07", "t_min_c", "-99", "ever measured", ""}));
    EXPECT_EQ(found.size(), 2U);
}

TEST_F(CheckOrchard, DegreesFahrenheitAreOneFindingForTheStation) {
    for (auto& it : o.weather) {
        it.t_min = Celsius{41};
        it.t_max = Celsius{62};
    }
    expect_only({Level::error, "weather_day", "Ridge", "t_max_c", "62.0", "Fahrenheit", "Fahrenheit"});
}

Celsius fahrenheit_taken_for_celsius(Celsius true_one) {
    return {true_one.degrees * 1.8 + 32};
}

TEST_F(CheckOrchard, AWinterInFahrenheitAmongYearsInCelsius) {
    for (Day when = day("2021-10-01"); when < day("2025-10-01"); when = when + 1) {
        o.weather.push_back({1, "Ridge", when, Celsius{2}, Celsius{11}, WeatherSource::observed});
    }
    EXPECT_EQ(check(), Findings{});
    for (auto& it : o.weather) {
        if (it.day >= day("2026-01-01") && it.day < day("2026-03-01")) {
            it.t_min = fahrenheit_taken_for_celsius(Celsius{-8});
            it.t_max = fahrenheit_taken_for_celsius(Celsius{4});
        }
    }
    const auto found = check();
    EXPECT_TRUE(has(found, {Level::warning, "weather_day", "Ridge 2026-01", "t_max_c", "39.2",
                            "21.9 °C warmer than the same month of other years", "Fahrenheit"}));
    EXPECT_TRUE(
        has(found, {Level::warning, "weather_day", "Ridge 2026-02", "t_max_c", "39.2", "warmer", ""}));
    EXPECT_EQ(found.size(), 2U);
}

TEST_F(CheckOrchard, ADayObservedInTheFuture) {
    o.weather.push_back({77, "Ridge", day("2099-04-01"), Celsius{2}, Celsius{11}, WeatherSource::observed});
    expect({Level::warning, "weather_day", "Ridge 2099-04-01", "day", "2099-04-01", "future",
            "Correct the day"});
    o.weather.back().source = WeatherSource::forecast;
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, OneTroubleOfManyDaysIsToldOnce) {
    for (int i = 10; i < 30; ++i) {
        o.weather[static_cast<std::size_t>(i)].t_max = Celsius{999};
    }
    expect_only({Level::error, "weather_day", "Ridge 2025-10-11 to 2025-10-30", "t_max_c", "999",
                 "On 20 of these days stands a temperature that was never measured", "missing value"});
    o.weather[12].t_max = Celsius{998};
    expect_only(
        {Level::error, "weather_day", "Ridge 2025-10-11 to 2025-10-30", "t_max_c", "", "never measured", ""});
    o = sound_orchard();
    for (int i = 10; i < 30; ++i) {
        std::swap(o.weather[static_cast<std::size_t>(i)].t_min, o.weather[static_cast<std::size_t>(i)].t_max);
    }
    expect_only({Level::error, "weather_day", "Ridge 2025-10-11 to 2025-10-30", "t_min_c", "",
                 "On 20 of these days the lowest temperature is above the highest", "swapped"});
    o = sound_orchard();
    o.weather.insert(o.weather.end(), o.weather.begin() + 10, o.weather.begin() + 30);
    expect_only({Level::error, "weather_day", "Ridge 2025-10-11 to 2025-10-30", "day", "",
                 "20 of these days more than once", ""});
    o = sound_orchard();
    for (int i = 0; i < 20; ++i) {
        o.weather.push_back(
            {900 + i, "Ridge", day("2026-07-01") + i, Celsius{2}, Celsius{11}, WeatherSource::observed});
    }
    expect_only({Level::warning, "weather_day", "Ridge 2026-07-01 to 2026-07-20", "day", "",
                 "20 days in the future", "forecast"});
}

TEST_F(CheckOrchard, TemperaturesInTenthsAreNotTakenForFahrenheit) {
    for (auto& it : o.weather) {
        it.t_max = Celsius{180};
    }
    expect_only({Level::error, "weather_day", "Ridge", "t_max_c", "180.0", "tenths of a degree", "Import"});
}

TEST_F(CheckOrchard, ARowThatCouldNotBeReadStillAnswersToItsName) {
    o.accessions.erase(o.accessions.begin());
    EXPECT_FALSE(check().empty());
    EXPECT_EQ(check_orchard(o, today, {{"accession", {"Larkfold Red"}}}), Findings{});
}

TEST_F(CheckOrchard, ATableThatCouldNotBeReadAtAllIsNotMissedRowByRow) {
    o.accessions.clear();
    EXPECT_EQ(check_orchard(o, today, {{"accession", {}}}), Findings{});
}

TEST_F(CheckOrchard, ADayTwiceForAStation) {
    o.weather.push_back(o.weather[0]);
    expect_only({Level::error, "weather_day", "Ridge 2025-10-01", "day", "2025-10-01", "more than once", ""});
}

TEST_F(CheckOrchard, ASeasonWithTooFewDays) {
    o.weather.erase(o.weather.begin(), o.weather.begin() + 40);
    expect_only(
        {Level::warning, "weather_day", "Ridge", "day", "2026", "only 182 of 222 days", "missing days"});
}

TEST_F(CheckOrchard, ObservationsOfASeasonWithoutWeather) {
    o.bloom_observations[1].observed_on = day("2020-04-18");
    expect_only(
        {Level::warning, "weather_day", "", "day", "2020", "1 bloom observation of season 2020", "Import"});
}

TEST_F(CheckOrchard, ObservationsOfManySeasonsWithoutWeatherAreToldTogether) {
    for (int i = 0; i < 6; ++i) {
        o.bloom_observations.push_back(
            {20 + i, {}, "Oak Lane", day("2015-04-18") + 365 * i, Bbch{61}, {}, {}, {}});
    }
    expect_only({Level::warning, "weather_day", "", "day", "2015 to 2020",
                 "6 bloom observations of 6 seasons without any weather", "Import"});
}

// Accessions, pedigree and blends

TEST_F(CheckOrchard, AllelesThatCannotBeReadOrAreTooMany) {
    o.accessions[0].s_alleles = "S2 + ?";
    expect_only(
        {Level::error, "accession", "Larkfold Red", "s_alleles", "S2 + ?", "cannot be read", "S2 S3"});
    o.accessions[0].s_alleles = "S2 S3 S5";
    expect_only({Level::error, "accession", "Larkfold Red", "s_alleles", "S2 S3 S5",
                 "3 S-alleles but at most 2", ""});
    o.accessions[0].ploidy = 3;
    o.goals[0].seed_parent = "Elm Gold";
    o.pollinations[0].tree = "A3";
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, OrdinaryWaysToWriteAllelesAreAccepted) {
    for (const auto* written : {"S2 S3", "S2S3", "s2/s3", "2,3", "2 3", "S24 S10", "Sj Sk", "S2"}) {
        o.accessions[0].s_alleles = written;
        EXPECT_EQ(check(), Findings{}) << written;
    }
}

TEST_F(CheckOrchard, AnAccessionAmongItsOwnAncestorsEvenThroughABlend) {
    o.accessions[1].seed_parent = "Elm Gold";
    expect_only({Level::error, "accession", "Elm Gold", "seed_parent, pollen_parent", "",
                 "own ancestors: Elm Gold -> Oak Lane -> Elm Gold, each recorded as an offspring of the next",
                 ""});
    o.accessions[1].seed_parent.reset();
    o.accessions[0].pollen_parent = "Elm Gold";
    expect_only({Level::error, "accession", "Elm Gold", "seed_parent, pollen_parent", "",
                 "Elm Gold -> Larkfold Red -> Elm Gold", ""});
    o = sound_orchard();
    o.accessions[1].pollen_parent = "Oak Lane";
    expect_only({Level::error, "accession", "Oak Lane", "seed_parent, pollen_parent", "",
                 "Oak Lane -> Oak Lane", "Correct or clear"});
}

TEST_F(CheckOrchard, ADeepPedigreeIsWalkedWithoutTrouble) {
    constexpr int deep = 200000;
    o = {};
    for (int i = 0; i < deep; ++i) {
        Accession it;
        it.name = "N" + std::to_string(i);
        it.seed_parent = "N" + std::to_string((i + 1) % deep);
        o.accessions.push_back(it);
    }
    int circles = 0;
    for (const auto& finding : check()) {
        EXPECT_LT(finding.message.text().size(), 400U);
        circles += finding.message.text().find("own ancestors") != std::string::npos ? 1 : 0;
    }
    EXPECT_EQ(circles, 1);
}

TEST_F(CheckOrchard, BlendsWhoseSharesDoNotAddUp) {
    o.blend_members[0].share = Share{0.7};
    expect_only({Level::warning, "blend", "Spring blend", "share", "1.2", "do not add up", ""});
    o.blend_members[0].share.reset();
    expect_only({Level::warning, "blend", "Spring blend", "share", "0.5", "some have none", ""});
    o.blend_members[1].share.reset();
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, ABlendOfNothing) {
    o.blend_members[0].share = Share{0};
    o.blend_members[1].share = Share{0};
    expect_only({Level::error, "blend", "Spring blend", "share", "0",
                 "All members of the blend have a share of zero", "equal parts"});
}

TEST_F(CheckOrchard, ABlendNamedLikeAnAccessionAndAMemberTwice) {
    o.blend_members.push_back({3, "Elm Gold", "Oak Lane", {}});
    o.blend_members.push_back({4, "Elm Gold", "Oak Lane", {}});
    o.accessions[2].seed_parent.reset();
    o.accessions[2].pollen_parent.reset();
    const auto found = check();
    EXPECT_TRUE(has(found, {Level::error, "blend", "Elm Gold", "name", "Elm Gold", "same name", "Rename"}));
    EXPECT_TRUE(has(found, {Level::error, "blend", "Elm Gold", "member", "Oak Lane", "more than once", ""}));
    EXPECT_EQ(found.size(), 2U);
}

// Goals

TEST_F(CheckOrchard, SelfingIsAWarningAlsoThroughABlend) {
    for (const auto* pollen : {"Larkfold Red", "Spring blend"}) {
        o.goals[0].pollen_parent = pollen;
        o.pollinations[0].lot.reset();
        expect_only({Level::warning, "cross_goal", "26-01", "pollen_parent", pollen, "its own pollen", ""});
    }
}

TEST_F(CheckOrchard, AGoalOfNoSeedlings) {
    o.goals[0].seedlings_wanted = 0;
    expect_only({Level::error, "cross_goal", "26-01", "seedlings_wanted", "0", "lies below 1", ""});
}

TEST_F(CheckOrchard, AGoalOfMoreSeedlingsThanAnOrchardHasRoomFor) {
    o.goals[0].seedlings_wanted = 10000;
    EXPECT_EQ(check(), Findings{});
    o.goals[0].seedlings_wanted = 100000;
    expect_only({Level::warning, "cross_goal", "26-01", "seedlings_wanted", "100000", "from one cross",
                 "digit too many"});
    o.goals[0].season = Season{2020};
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, AProtectedParentOfAWantedCrossButNotOfAPastOne) {
    o.accessions[1].protected_until = day("2040-12-31");
    expect_only({Level::notice, "cross_goal", "26-01", "pollen_parent", "Oak Lane",
                 "protected until 2040-12-31", "licence"});
    o.goals[0].season = Season{2024};
    EXPECT_EQ(check(), Findings{});
    o.goals[0].season = Season{2026};
    o.accessions[1].protected_until = day("2020-12-31");
    EXPECT_EQ(check(), Findings{});
}

TEST_F(CheckOrchard, ATriploidDonorIsANote) {
    o.accessions[1].ploidy = 3;
    expect_only({Level::notice, "cross_goal", "26-01", "pollen_parent", "Oak Lane", "triploid", ""});
}

TEST_F(CheckOrchard, ASeedParentWithoutALivingTree) {
    o.trees[0].accession = "Oak Lane";
    o.pollinations.clear();
    o.fruits.clear();
    expect_only({Level::warning, "cross_goal", "26-01", "seed_parent", "Larkfold Red", "No living tree", ""});
}

// Pollen, work, fruit and seed

TEST_F(CheckOrchard, MoreGrainsGerminatedThanCounted) {
    o.pollen_tests[0].germinated = 201;
    expect_only({Level::error, "pollen_test", "fid 1", "germinated", "201", "than the 200 counted", ""});
}

TEST_F(CheckOrchard, ATestOfNoGrains) {
    o.pollen_tests[0].grains = 0;
    o.pollen_tests[0].germinated = 0;
    expect_only({Level::warning, "pollen_test", "fid 1", "grains", "0", "shows nothing", "100 or more"});
}

TEST_F(CheckOrchard, DaysOutOfTheirOrder) {
    o.pollen_tests[0].tested_on = day("2026-04-17");
    o.pollen_lots[0].used_up_on = day("2026-04-16");
    o.pollinations[0].pollinated_on = day("2026-04-15");
    o.fruits[0].harvested_on = day("2026-04-14");
    o.seed_lots[0].washed_on = day("2026-04-13");
    o.seed_lots[0].stratified_from = day("2026-04-12");
    o.seed_lots[0].stratified_to = day("2026-04-11");
    const auto found = check();
    EXPECT_TRUE(has(found, {Level::error, "pollen_test", "fid 1", "tested_on", "2026-04-17",
                            "collected, 2026-04-18", ""}));
    EXPECT_TRUE(has(found, {Level::error, "pollen_lot", "P1", "used_up_on", "2026-04-16", "collected", ""}));
    EXPECT_TRUE(
        has(found, {Level::error, "pollination", "T1", "pollinated_on", "2026-04-15", "collected", ""}));
    EXPECT_TRUE(has(
        found, {Level::error, "fruit", "fid 1", "harvested_on", "2026-04-14", "pollinated, 2026-04-15", ""}));
    EXPECT_TRUE(has(found, {Level::error, "seed_lot", "S1", "stratified_from", "2026-04-12", "washed", ""}));
    EXPECT_TRUE(has(
        found, {Level::error, "seed_lot", "S1", "stratified_to", "2026-04-11", "stratification began", ""}));
    EXPECT_EQ(found.size(), 6U);
}

TEST_F(CheckOrchard, WorkOnATreeThatIsNotTheSeedParent) {
    o.pollinations[0].tree = "A2";
    expect_only({Level::error, "pollination", "T1", "tree", "A2",
                 "is Oak Lane, but the seed parent of 26-01 is Larkfold Red", ""});
}

TEST_F(CheckOrchard, PollenThatTheCrossDoesNotWant) {
    o.pollen_lots[0].donor = "Elm Gold";
    expect_only({Level::warning, "pollination", "T1", "lot", "P1", "pollen of Elm Gold", ""});
}

TEST_F(CheckOrchard, MoreFruitsThanFlowersAndMoreGerminationOrSeedsThanSeeds) {
    o.fruits[0].fruits = 41;
    o.germination_counts[0].germinated = 81;
    o.seed_withdrawals[0].seeds = 81;
    const auto found = check();
    EXPECT_TRUE(has(found, {Level::warning, "fruit", "T1", "fruits", "41", "than the 40 flowers", ""}));
    EXPECT_TRUE(has(found, {Level::error, "germination_count", "fid 1", "germinated", "81",
                            "than the 80 of lot S1", ""}));
    EXPECT_TRUE(has(found, {Level::error, "seed_withdrawal", "S1", "seeds", "81", "than the 80", ""}));
    EXPECT_EQ(found.size(), 3U);
}

TEST_F(CheckOrchard, NumbersBelowZero) {
    o.pollen_lots[0].flowers = -1;
    o.pollen_lots[0].mass = Milligrams{-2};
    o.pollen_tests[0].germinated = -3;
    o.pollinations[0].flowers = -4;
    o.fruits[0].fruits = -5;
    o.fruits[0].seeds_sound = -6;
    o.fruits[0].seeds_empty = -7;
    o.seed_lots[0].seeds = -8;
    o.germination_counts[0].germinated = -9;
    o.seed_withdrawals[0].seeds = -10;
    int negative = 0;
    for (const auto& finding : check()) {
        negative +=
            finding.message.text().starts_with("The number lies below 0") && finding.value.front() == '-' ? 1
                                                                                                          : 0;
    }
    EXPECT_EQ(negative, 10);
}

TEST_F(CheckOrchard, WorkInTheFuture) {
    o.pollinations[0].pollinated_on = day("2026-05-11");
    o.fruits.clear();
    expect_only({Level::warning, "pollination", "T1", "pollinated_on", "2026-05-11", "future", ""});
}

TEST_F(CheckOrchard, SaysTheSameTwice) {
    o.goals[0].seed_parent = "Ghost";
    o.trees[1].label = "A1";
    EXPECT_EQ(check(), check());
}

}  // namespace
}  // namespace pipward::book
