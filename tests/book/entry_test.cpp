// SPDX-License-Identifier: MIT
// Single entries: judged against a small sound book, written, remembered and taken back.
#include "pipward/book/entry.h"

#include <gtest/gtest.h>

#include "book/book_testing.h"

namespace pipward::book {
namespace {

using testing::day;
using testing::error_of;
using testing::has;
using testing::text;
using testing::whole;

const Day entry_day = day("2026-05-20");

Entry bloom(const char* tree, std::int64_t stage, const char* when = "2026-05-12") {
    return {"bloom_observation", {{"tree", text(tree)}, {"bbch", stage}, {"observed_on", day(when)}}};
}

Entry work(const char* tag, const char* tree = "A1", const char* when = "2026-05-14") {
    return {"pollination",
            {{"tag", text(tag)},
             {"cross", text("26-01")},
             {"tree", text(tree)},
             {"pollinated_on", day(when)},
             {"flowers", whole(40)},
             {"lot", text("P-1")}}};
}

Entry harvest(const char* tag, std::int64_t fruits, const char* when) {
    return {"fruit", {{"tag", text(tag)}, {"harvested_on", day(when)}, {"fruits", fruits}}};
}

class Entries : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        testing::add(book, "station", {"name", "elevation_m"},
                     {{{text("Ridge"), 300.0}, testing::at(500000, 5300000)}});
        testing::add(book, "accession", {"name", "kind", "seed_ripe_days"},
                     {{{text("Larkfold Red"), text("cultivar"), whole(140)}},
                      {{text("Oak Lane"), text("cultivar"), Cell{}}}});
        testing::add(book, "tree", {"label", "accession", "purpose", "planted_on", "removed_on"},
                     {{{text("A1"), text("Larkfold Red"), text("parent"), day("2012-03-01"), Cell{}},
                       testing::at(500010, 5300000)},
                      {{text("A2"), text("Oak Lane"), text("parent"), day("2012-03-01"), day("2026-02-01")},
                       testing::at(500020, 5300000)}});
        testing::add(book, "cross_goal",
                     {"code", "season", "seed_parent", "pollen_parent", "seedlings_wanted"},
                     {{{text("26-01"), whole(2026), text("Larkfold Red"), text("Oak Lane"), whole(50)}},
                      {{text("25-01"), whole(2025), text("Larkfold Red"), text("Oak Lane"), whole(50)}}});
        testing::add(
            book, "pollen_lot", {"code", "donor", "collected_on", "store", "used_up_on"},
            {{{text("P-1"), text("Oak Lane"), day("2026-05-10"), text("refrigerator"), Cell{}}},
             {{text("P-0"), text("Oak Lane"), day("2025-05-10"), text("freezer"), day("2026-03-01")}}});
    }

    Findings judged(const Entry& entry, Day as_of = entry_day) {
        return check_entry(read_book(book), entry, as_of);
    }
    EntryAdded added(const Entry& entry, Day as_of = entry_day) { return add_entry(book, entry, as_of); }
    Orchard orchard() { return read_book(book).orchard; }

    /// A spring of notes, so that the book knows when bloom is.
    void note_a_spring() {
        for (int i = 0; i < 12; ++i) {
            added(bloom("A1", 61, to_iso(day("2026-05-01") + i).c_str()));
        }
    }
};

TEST_F(Entries, ABloomObservationIsWrittenAndSaysWhatItWrote) {
    const auto entry = bloom("A1", 61);
    const auto done = added(entry);
    EXPECT_TRUE(done.findings.empty());
    EXPECT_EQ(name_of(done.row), "bloom_observation/1");
    EXPECT_EQ(done.row.content, "tree: A1\nobserved_on: 2026-05-12\nbbch: 61\n");
    ASSERT_EQ(orchard().bloom_observations.size(), 1U);
    EXPECT_EQ(orchard().bloom_observations[0].bbch, Bbch{61});
    EXPECT_EQ(
        in_words(entry),
        "Bloom observation: tree A1, observed on 2026-05-12, BBCH stage 61 (about 10 % of flowers open)");
    EXPECT_EQ(in_words(done.row), in_words(entry));
}

TEST_F(Entries, APollinationAndItsHarvestFollowEachOther) {
    EXPECT_TRUE(added(work("26-01-a")).findings.empty());
    EXPECT_TRUE(added(harvest("26-01-a", 12, "2026-10-08"), day("2026-10-08")).findings.empty());
    EXPECT_EQ(orchard().pollinations.at(0).lot, "P-1");
    EXPECT_EQ(orchard().fruits.at(0).fruits, 12);
}

TEST_F(Entries, EveryKindIsWritten) {
    added(work("26-01-a"));
    const Day autumn = day("2026-12-20");
    added({"seed_lot",
           {{"code", text("S-1")},
            {"cross", text("26-01")},
            {"seeds", whole(30)},
            {"from_tags", text("26-01-a")},
            {"stratification_c", whole(3)}}},
          autumn);
    added({"germination_count", {{"lot", text("S-1")}, {"counted_on", autumn}, {"germinated", whole(3)}}},
          autumn);
    added({"seed_withdrawal", {{"lot", text("S-1")}, {"withdrawn_on", autumn}, {"seeds", whole(2)}}}, autumn);
    added({"pollen_test",
           {{"lot", text("P-1")}, {"tested_on", autumn}, {"grains", whole(200)}, {"germinated", whole(120)}}},
          autumn);
    added({"trait_score",
           {{"tree", text("A1")}, {"scored_on", autumn}, {"trait", text("taste")}, {"score", 7.5}}},
          autumn);
    const auto all = orchard();
    EXPECT_EQ(all.seed_lots.at(0).cold, Celsius{3});
    EXPECT_EQ(all.germination_counts.size() + all.seed_withdrawals.size() + all.pollen_tests.size(), 3U);
    EXPECT_EQ(all.trait_scores.at(0).score, 7.5);
    EXPECT_EQ(remembered_entries(book).size(), 6U);
}

TEST_F(Entries, UnknownNamesAreToldWithTheNearestThatExist) {
    auto entry = work("26-01-a", "a1");
    entry.values["cross"] = text("26-1");
    entry.values["lot"] = text("P-7");
    const auto findings = judged(entry);
    EXPECT_TRUE(has(findings, {Level::error, "pollination", "26-01-a", "tree", "a1", "no tree", "A1"}));
    EXPECT_TRUE(
        has(findings, {Level::error, "pollination", "26-01-a", "cross", "26-1", "no cross", "26-01"}));
    EXPECT_TRUE(
        has(findings, {Level::error, "pollination", "26-01-a", "lot", "P-7", "no pollen lot", "P-0, P-1"}));
}

TEST_F(Entries, AllFindingsComeAtOnceAndNothingIsWritten) {
    const auto before = testing::bytes_of(book);
    const auto error = error_of([&] { added(bloom("B9", 66, "2026-06-01")); });
    EXPECT_EQ(error.trouble(), Trouble::input);
    EXPECT_TRUE(
        has(error.findings(), {Level::error, "bloom_observation", "new entry", "tree", "B9", "no tree", ""}));
    EXPECT_TRUE(has(error.findings(),
                    {Level::error, "bloom_observation", "new entry", "bbch", "66", "no such stage", "65"}));
    EXPECT_TRUE(has(error.findings(), {Level::error, "bloom_observation", "new entry", "observed_on",
                                       "2026-06-01", "still to come", ""}));
    EXPECT_EQ(error.findings().size(), 3U);
    EXPECT_EQ(testing::bytes_of(book), before);
}

TEST_F(Entries, ATagIsUsedOnceADay) {
    added(work("26-01-a"));
    const auto error = error_of([&] { added(work("26-01-a")); });
    EXPECT_TRUE(
        has(error.findings(), {Level::error, "pollination", "26-01-a", "tag", "26-01-a", "already", ""}));
    EXPECT_EQ(orchard().pollinations.size(), 1U);
    EXPECT_TRUE(has(added(work("26-01-A")).findings,
                    {Level::warning, "pollination", "26-01-A", "tag", "26-01-A", "26-01-a", ""}));
}

TEST_F(Entries, TheRulesOfTheBookJudgeTheEntryToo) {
    added(work("26-01-a"));
    EXPECT_TRUE(has(judged(harvest("26-01-a", 3, "2026-05-13")),
                    {Level::error, "fruit", "new entry", "harvested_on", "2026-05-13", "pollinated", ""}));
    EXPECT_TRUE(has(judged(harvest("26-01-a", 41, "2026-10-08"), day("2026-10-08")),
                    {Level::warning, "fruit", "26-01-a", "fruits", "41", "40 flowers", ""}));
    EXPECT_TRUE(has(judged(work("26-01-b", "A2")),
                    {Level::error, "pollination", "26-01-b", "tree", "A2", "seed parent", ""}));
    EXPECT_TRUE(has(judged(work("26-01-b", "A2")), {Level::warning, "pollination", "26-01-b", "pollinated_on",
                                                    "2026-05-14", "removed on 2026-02-01", ""}));
    EXPECT_TRUE(
        has(judged(work("26-01-b", "A1", "2026-05-09")),
            {Level::error, "pollination", "26-01-b", "pollinated_on", "2026-05-09", "collected", ""}));
}

TEST_F(Entries, TroubleThatTheBookHadBeforeIsNotTheEntrys) {
    testing::add(book, "fruit", {"tag", "harvested_on", "fruits"},
                 {{{text("nowhere"), day("2025-09-01"), whole(3)}}});
    EXPECT_TRUE(judged(work("26-01-a")).empty());
}

TEST_F(Entries, ABloomObservationFarFromBloomOrGoingBackIsAWarning) {
    note_a_spring();
    EXPECT_TRUE(
        has(judged(bloom("A1", 61, "2026-09-01"), day("2026-09-01")),
            {Level::warning, "bloom_observation", "new entry", "observed_on", "2026-09-01", "after", ""}));
    EXPECT_TRUE(has(judged(bloom("A1", 59, "2026-05-13")), {Level::warning, "bloom_observation", "new entry",
                                                            "bbch", "59", "does not go back", ""}));
    EXPECT_TRUE(has(judged(bloom("A1", 61, "2026-05-12")), {Level::warning, "bloom_observation", "new entry",
                                                            "bbch", "61", "already (fid 12)", ""}));
    EXPECT_TRUE(has(judged(bloom("A1", 75, "2026-05-19")), {Level::notice, "bloom_observation", "new entry",
                                                            "bbch", "75", "not used to forecast", ""}));
    EXPECT_TRUE(judged(bloom("A1", 65, "2026-05-15")).empty());
}

TEST_F(Entries, WorkFarFromBloomIsAWarning) {
    note_a_spring();
    EXPECT_TRUE(has(judged(work("26-01-a", "A1", "2026-08-20"), day("2026-09-01")),
                    {Level::warning, "pollination", "26-01-a", "pollinated_on", "2026-08-20", "after", ""}));
}

TEST_F(Entries, WorkForAnotherSeasonOrFromAnEmptyVialIsAWarning) {
    auto entry = work("26-01-a");
    entry.values["cross"] = text("25-01");
    entry.values["lot"] = text("P-0");
    const auto findings = judged(entry);
    EXPECT_TRUE(
        has(findings, {Level::warning, "pollination", "26-01-a", "cross", "25-01", "season 2025", ""}));
    EXPECT_TRUE(has(findings, {Level::warning, "pollination", "26-01-a", "lot", "P-0", "used up", ""}));
    EXPECT_FALSE(has_errors(findings));
}

TEST_F(Entries, FruitHarvestedUnripeOrTooFullIsAWarning) {
    added(work("26-01-a"));
    auto entry = harvest("26-01-a", 2, "2026-08-01");
    entry.values["seeds_sound"] = whole(70);
    const auto findings = judged(entry, day("2026-08-01"));
    EXPECT_TRUE(
        has(findings, {Level::warning, "fruit", "new entry", "harvested_on", "2026-08-01", "140", ""}));
    EXPECT_TRUE(has(findings, {Level::warning, "fruit", "new entry", "seeds_sound", "70", "ten each", ""}));
}

TEST_F(Entries, ASeedLotIsOfTheCrossOfItsTags) {
    added(work("26-01-a"));
    const Entry lot{"seed_lot",
                    {{"code", text("S-1")},
                     {"cross", text("25-01")},
                     {"seeds", whole(30)},
                     {"from_tags", text("26-01-a 26-01-x")}}};
    const auto findings = judged(lot);
    EXPECT_TRUE(has(findings, {Level::error, "seed_lot", "S-1", "from_tags", "26-01-a", "cross 26-01", ""}));
    EXPECT_TRUE(
        has(findings, {Level::error, "seed_lot", "S-1", "from_tags", "26-01-x", "no pollination tag", ""}));
}

TEST_F(Entries, WordsOfLongLabelsOutliveTheCall) {
    const auto words =
        in_words(Entry{"cross_goal", {{"code", text("26-15")}, {"seedlings_wanted", whole(40)}}});
    EXPECT_EQ(words.text(), "Cross goal: code 26-15, seedlings wanted 40");
}

TEST_F(Entries, OnlyKnownTablesAndColumnsTakeEntries) {
    EXPECT_EQ(error_of([&] { judged({"block", {{"name", text("A9")}}}); }).trouble(), Trouble::usage);
    EXPECT_EQ(error_of([&] { judged({"fruit", {{"weight", 3.0}}}); }).trouble(), Trouble::usage);
}

TEST_F(Entries, TakingBackRemovesExactlyThatRow) {
    const auto first = added(bloom("A1", 59, "2026-05-10")).row;
    const auto second = added(bloom("A1", 61)).row;
    EXPECT_EQ(remembered_entries(book), (std::vector{second, first}));
    take_back(book, first);
    ASSERT_EQ(orchard().bloom_observations.size(), 1U);
    EXPECT_EQ(orchard().bloom_observations[0].fid, second.fid);
    EXPECT_EQ(remembered_entries(book), std::vector{second});
    EXPECT_TRUE(has(error_of([&] { take_back(book, first); }).findings(),
                    {Level::error, "bloom_observation", "fid 1", "", "", "not in the book any more", ""}));
}

TEST_F(Entries, ANumberOnceUsedIsNotGivenToAnotherRow) {
    const auto first = added(bloom("A1", 61)).row;
    take_back(book, first);
    EXPECT_GT(added(bloom("A1", 61)).row.fid, first.fid);
}

TEST_F(Entries, ARowThatWasChangedSinceIsLeftAlone) {
    const auto row = added(bloom("A1", 61)).row;
    testing::RawBook(book).run("UPDATE bloom_observation SET bbch = 62");
    EXPECT_TRUE(has(error_of([&] { take_back(book, row); }).findings(),
                    {Level::error, "bloom_observation", "fid 1", "", "", "changed after", ""}));
    EXPECT_EQ(orchard().bloom_observations.size(), 1U);
}

TEST_F(Entries, APollinationWhoseFruitIsNotedIsLeftAlone) {
    const auto row = added(work("26-01-a")).row;
    const auto fruit = added(harvest("26-01-a", 2, "2026-10-08"), day("2026-10-08")).row;
    EXPECT_TRUE(has(error_of([&] { take_back(book, row); }).findings(),
                    {Level::error, "pollination", "fid 1", "", "", "Rows of fruit refer", ""}));
    take_back(book, fruit);
    take_back(book, row);
    EXPECT_TRUE(orchard().pollinations.empty());
}

TEST_F(Entries, ABookThatRemembersEntriesIsStillAGoodGeoPackage) {
    added(bloom("A1", 61));
    if (!testing::has_validator()) {
        GTEST_SKIP() << "The validator of GeoPackages is not here.";
    }
    EXPECT_EQ(testing::complaints_about(book), "");
    EXPECT_TRUE(read_book(book).findings.empty());
}

TEST_F(Entries, ALockedBookIsToldSoAndHasNothingNew) {
    testing::RawBook other(book);
    other.run("BEGIN IMMEDIATE");
    const auto error = error_of([&] { add_entry(book, bloom("A1", 61), entry_day, Patience{300}); });
    EXPECT_EQ(error.trouble(), Trouble::access);
    EXPECT_NE(error.findings().at(0).message.text().find("Another program is writing"), std::string::npos);
    other.run("ROLLBACK");
    EXPECT_TRUE(orchard().bloom_observations.empty());
    EXPECT_TRUE(remembered_entries(book).empty());
}

TEST_F(Entries, RefusesForeignTriggersOnTheTable) {
    testing::RawBook(book).run(
        "CREATE TRIGGER evil AFTER INSERT ON bloom_observation BEGIN DELETE FROM tree; END");
    EXPECT_EQ(error_of([&] { added(bloom("A1", 61)); }).trouble(), Trouble::access);
    EXPECT_EQ(orchard().trees.size(), 2U);
}

// An entry is judged by the rows that its rules look at; the whole book must have nothing else to say.
TEST_F(Entries, AreToldTheSameAsByTheWholeBook) {
    note_a_spring();
    added(work("T-1"));
    const std::vector<Entry> entries{
        bloom("A1", 55, "2026-05-18"),
        bloom("A2", 61),
        bloom("A1", 65, "2026-02-03"),
        bloom("Nobody", 61),
        work("T-2", "A2"),
        work("T-1"),
        work("T-3", "A1", "2025-05-14"),
        harvest("T-1", 3, "2026-05-19"),
        harvest("T-9", 3, "2026-05-19"),
        {"trait_score",
         {{"tree", text("A2")}, {"trait", text("taste")}, {"score", 6.0}, {"scored_on", day("2026-05-01")}}},
        {"seed_lot",
         {{"code", text("S-1")},
          {"cross", text("26-01")},
          {"seeds", whole(500)},
          {"from_tags", text("T-1")}}}};
    int told = 0;
    for (const auto& entry : entries) {
        const auto whole_book = judged(entry);
        Findings by_part;
        try {
            by_part = added(entry).findings;
        } catch (const Error& error) {
            by_part = error.findings();
        }
        EXPECT_EQ(by_part, whole_book) << in_words(entry).text();
        told += static_cast<int>(whole_book.size());
    }
    EXPECT_GT(told, 8);
}

}  // namespace
}  // namespace pipward::book
