// SPDX-License-Identifier: MIT
// Several entries at once: judged in their order, written together, taken back together.
#include <gtest/gtest.h>

#include "book/book_testing.h"
#include "pipward/book/entry.h"

namespace pipward::book {
namespace {

using testing::day;
using testing::error_of;
using testing::has;
using testing::text;
using testing::whole;

const Day batch_day = day("2026-05-20");

Entry work_on(const char* tag, const char* when = "2026-05-14", const char* tree = "A1") {
    return {"pollination",
            {{"tag", text(tag)},
             {"cross", text("26-01")},
             {"tree", text(tree)},
             {"pollinated_on", day(when)},
             {"flowers", whole(40)}}};
}

Entry germination(std::int64_t count, const char* when) {
    return {"germination_count", {{"lot", text("S-1")}, {"counted_on", day(when)}, {"germinated", count}}};
}

Entry out(std::int64_t seeds, const char* when) {
    return {"seed_withdrawal", {{"lot", text("S-1")}, {"withdrawn_on", day(when)}, {"seeds", seeds}}};
}

class EntryBatches : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        testing::add(book, "accession", {"name", "kind"},
                     {{{text("Larkfold Red"), text("cultivar")}}, {{text("Oak Lane"), text("cultivar")}}});
        testing::add(book, "tree", {"label", "accession", "purpose"},
                     {{{text("A1"), text("Larkfold Red"), text("parent")}, testing::at(500010, 5300000)}});
        testing::add(book, "cross_goal",
                     {"code", "season", "seed_parent", "pollen_parent", "seedlings_wanted"},
                     {{{text("26-01"), whole(2026), text("Larkfold Red"), text("Oak Lane"), whole(50)}}});
        testing::add(book, "seed_lot", {"code", "cross", "seeds"},
                     {{{text("S-1"), text("26-01"), whole(30)}}});
    }

    Orchard orchard() { return read_book(book).orchard; }
    std::vector<Findings> judged(const std::vector<Entry>& entries) {
        return check_entries(read_book(book), entries, batch_day);
    }
    EntriesAdded added(const std::vector<Entry>& entries) {
        return add_entries(book, read_book(book), entries, batch_day);
    }
};

TEST_F(EntryBatches, AreWrittenAtOnceAndRememberedAsOne) {
    const auto first = added({work_on("26-01-a")}).rows;
    const auto done = added({work_on("26-01-b"), work_on("26-01-c")});
    ASSERT_EQ(done.rows.size(), 2U);
    EXPECT_EQ(orchard().pollinations.size(), 3U);
    EXPECT_EQ(remembered_batches(book), (std::vector{done.rows, first}));
    EXPECT_EQ(remembered_entries(book), (std::vector{done.rows[1], done.rows[0], first[0]}));
}

TEST_F(EntryBatches, AWrongOneKeepsThemAllOut) {
    const auto before = testing::bytes_of(book);
    const auto done = added({work_on("26-01-a"), work_on("26-01-b", "2062-05-14"), work_on("26-01-c")});
    EXPECT_TRUE(done.rows.empty());
    EXPECT_TRUE(done.findings[0].empty() && done.findings[2].empty());
    EXPECT_TRUE(has(done.findings[1], {Level::error, "pollination", "26-01-b", "pollinated_on", "2062-05-14",
                                       "still to come", ""}));
    EXPECT_EQ(testing::bytes_of(book), before);
}

TEST_F(EntryBatches, ATagThatTwoOfThemHaveIsFound) {
    const auto findings = judged({work_on("26-01-a"), work_on("26-01-A"), work_on("26-01-a")});
    EXPECT_TRUE(findings[0].empty());
    EXPECT_TRUE(
        has(findings[1], {Level::warning, "pollination", "26-01-A", "tag", "26-01-A", "26-01-a", ""}));
    EXPECT_TRUE(has(findings[2],
                    {Level::error, "pollination", "26-01-a", "tag", "26-01-a", "of this day already", ""}));
}

TEST_F(EntryBatches, ALaterOneIsSeenAgainstTheEarlier) {
    const auto findings = judged({germination(5, "2026-05-01"), germination(3, "2026-05-08")});
    EXPECT_TRUE(findings[0].empty());
    EXPECT_TRUE(
        has(findings[1], {Level::warning, "germination_count", "new entry", "germinated", "3", "5 had", ""}));
}

TEST_F(EntryBatches, ASumIsToldOfTheLastThatAddsToIt) {
    const auto findings = judged({out(20, "2026-05-01"), out(9, "2026-05-02"), out(2, "2026-05-03")});
    EXPECT_TRUE(findings[0].empty() && findings[1].empty());
    EXPECT_TRUE(has(findings[2], {Level::error, "seed_withdrawal", "S-1", "seeds", "31", "than the 30", ""}));
}

TEST_F(EntryBatches, AreJudgedAsOneAfterTheOtherWouldBe) {
    const std::vector<Entry> entries{germination(4, "2026-05-01"), germination(31, "2026-05-08"),
                                     germination(3, "2026-05-09"), germination(-1, "2026-05-10")};
    const auto together = judged(entries);
    auto book_so_far = read_book(book);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        EXPECT_EQ(together[i], check_entry(book_so_far, entries[i], batch_day)) << i;
        const auto& values = entries[i].values;
        book_so_far.orchard.germination_counts.push_back(
            {.fid = 100,
             .lot = "S-1",
             .counted_on = std::get<Day>(values.at("counted_on")),
             .germinated = static_cast<int>(std::get<std::int64_t>(values.at("germinated")))});
    }
}

TEST_F(EntryBatches, GoTogether) {
    const auto rows = added({germination(5, "2026-05-01"), germination(7, "2026-05-08")}).rows;
    take_back(book, rows);
    EXPECT_TRUE(orchard().germination_counts.empty());
    EXPECT_TRUE(remembered_batches(book).empty());
}

TEST_F(EntryBatches, StayWhereOneWasChangedSince) {
    const auto rows = added({germination(5, "2026-05-01"), germination(7, "2026-05-08")}).rows;
    testing::RawBook(book).run("UPDATE germination_count SET germinated = 8 WHERE fid = 2");
    const auto error = error_of([&] { take_back(book, rows); });
    EXPECT_EQ(error.findings().size(), 1U);
    EXPECT_TRUE(
        has(error.findings(), {Level::error, "germination_count", "fid 2", "", "", "changed after", ""}));
    EXPECT_EQ(orchard().germination_counts.size(), 2U);
    take_back(book, rows[0]);  // each by itself, though
    EXPECT_EQ(remembered_batches(book), (std::vector<std::vector<AddedRow>>{{rows[1]}}));
}

TEST_F(EntryBatches, StayWhereSomethingRefersToOneOfThem) {
    const auto rows = added({work_on("26-01-a"), work_on("26-01-b")}).rows;
    testing::add(book, "fruit", {"tag", "harvested_on", "fruits"},
                 {{{text("26-01-b"), day("2026-09-01"), whole(3)}}});
    EXPECT_TRUE(has(error_of([&] { take_back(book, rows); }).findings(),
                    {Level::error, "pollination", "fid 2", "", "", "Rows of fruit refer", ""}));
    EXPECT_EQ(orchard().pollinations.size(), 2U);
}

TEST_F(EntryBatches, ARowThatIsGoneDoesNotKeepTheOthers) {
    added({germination(5, "2026-05-01"), germination(7, "2026-05-08")});
    testing::RawBook(book).run("DELETE FROM germination_count WHERE fid = 1");
    const auto batches = remembered_batches(book);
    ASSERT_EQ(batches.size(), 1U);
    ASSERT_EQ(batches[0].size(), 1U);
    take_back(book, batches[0]);
    EXPECT_TRUE(orchard().germination_counts.empty());
}

TEST_F(EntryBatches, AJournalOfAnOlderBookGoesOn) {
    testing::RawBook(book).run(
        "CREATE TABLE entry_journal (number INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, table_name TEXT NOT "
        "NULL, row_number INTEGER NOT NULL, content TEXT NOT NULL);INSERT INTO germination_count (lot, "
        "counted_on, germinated) VALUES ('S-1', '2026-04-01', 1);INSERT INTO entry_journal (table_name, "
        "row_number, content) VALUES ('germination_count', 1, 'lot: S-1')");
    EXPECT_EQ(remembered_batches(book).size(), 1U);
    const auto rows = added({germination(5, "2026-05-01"), germination(7, "2026-05-08")}).rows;
    const auto batches = remembered_batches(book);
    ASSERT_EQ(batches.size(), 2U);
    EXPECT_EQ(batches[0], rows);
    EXPECT_EQ(batches[1].at(0).fid, 1);
}

TEST_F(EntryBatches, OnlyTheLatestAreRememberedAndLargeOnesWhole) {
    std::vector<Entry> many;
    for (int i = 0; i < 600; ++i) {
        many.push_back(out(0, to_iso(day("2024-01-01") + i).c_str()));
    }
    const auto rows = added(many).rows;
    EXPECT_EQ(remembered_batches(book).at(0).size(), 600U);
    testing::RawBook(book).run(
        "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 500) INSERT INTO "
        "entry_journal (table_name, row_number, content) SELECT 'seed_withdrawal', 1, 'x' FROM n");
    added({germination(5, "2026-05-01")});
    const auto batches = remembered_batches(book);
    EXPECT_EQ(batches.size(), 500U);
    EXPECT_EQ(batches.back().size(), 1U);
}

}  // namespace
}  // namespace pipward::book
