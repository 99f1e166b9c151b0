// SPDX-License-Identifier: MIT
// Rows of the book completed later, passes under one tag, work at branches: judged, written, taken back.
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

const Day completion_day = day("2026-12-01");

class Completion : public testing::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        make_book();
        testing::add(book, "accession", {"name", "kind"},
                     {{{text("Larkfold Red"), text("cultivar")}}, {{text("Oak Lane"), text("cultivar")}}});
        testing::add(book, "tree", {"label", "accession", "purpose"},
                     {{{text("A1"), text("Larkfold Red"), text("parent")}, testing::at(500010, 5300000)},
                      {{text("A2"), text("Larkfold Red"), text("parent")}, testing::at(500020, 5300000)}});
        testing::add(book, "cross_goal",
                     {"code", "season", "seed_parent", "pollen_parent", "seedlings_wanted"},
                     {{{text("26-01"), whole(2026), text("Larkfold Red"), text("Oak Lane"), whole(50)}}});
        testing::add(book, "seed_lot", {"code", "cross", "seeds", "washed_on"},
                     {{{text("S-1"), text("26-01"), whole(40), day("2026-10-10")}}});
    }

    Entry stratified(const char* code, const char* from) const {
        Entry entry{"seed_lot",
                    {{"code", text(code)}, {"stratified_from", day(from)}, {"medium", text("moist sand")}}};
        entry.completes = true;
        return entry;
    }
    Entry pollinated(const char* tag, const char* tree, const char* on) const {
        return {"pollination",
                {{"tag", text(tag)},
                 {"cross", text("26-01")},
                 {"tree", text(tree)},
                 {"pollinated_on", day(on)},
                 {"flowers", whole(40)}}};
    }
    Orchard orchard() const { return read_book(book).orchard; }
};

TEST_F(Completion, ALotThatWasWashedIsPutIntoStratificationInItsOwnRow) {
    const auto done = add_entry(book, stratified("S-1", "2026-11-20"), completion_day);
    EXPECT_TRUE(done.findings.empty());
    EXPECT_EQ(done.row.filled, (std::vector<std::string>{"medium", "stratified_from"}));
    const auto lots = orchard().seed_lots;
    ASSERT_EQ(lots.size(), 1U);
    EXPECT_EQ(lots[0].stratified_from, day("2026-11-20"));
    EXPECT_EQ(lots[0].medium, "moist sand");
    EXPECT_EQ(lots[0].washed_on, day("2026-10-10"));
    EXPECT_EQ(in_words(done.row).text().find("Seed lot, completed: "), 0U) << in_words(done.row).text();
}

TEST_F(Completion, IsUndoneByEmptyingWhatWasFilledAndKeepsTheRow) {
    add_entry(book, stratified("S-1", "2026-11-20"), completion_day);
    const auto rows = remembered_entries(book);
    ASSERT_EQ(rows.size(), 1U);
    take_back(book, rows.front());
    const auto lots = orchard().seed_lots;
    ASSERT_EQ(lots.size(), 1U);
    EXPECT_FALSE(lots[0].stratified_from);
    EXPECT_FALSE(lots[0].medium);
    EXPECT_EQ(lots[0].seeds, 40);
    EXPECT_TRUE(remembered_entries(book).empty());
}

TEST_F(Completion, NeverChangesACellThatHoldsSomething) {
    add_entry(book, stratified("S-1", "2026-11-20"), completion_day);
    const auto error = error_of([&] { add_entry(book, stratified("S-1", "2026-11-25"), completion_day); });
    EXPECT_TRUE(has(error.findings(), {Level::error, "seed_lot", "S-1", "stratified_from", "2026-11-20",
                                       "there already", "GIS"}));
    EXPECT_EQ(orchard().seed_lots[0].stratified_from, day("2026-11-20"));
}

TEST_F(Completion, OfARowThatIsNotThereIsAnError) {
    const auto error = error_of([&] { add_entry(book, stratified("S-9", "2026-11-20"), completion_day); });
    EXPECT_TRUE(has(error.findings(), {Level::error, "seed_lot", "S-9", "code", "S-9", "no seed lot", ""}));
}

TEST_F(Completion, IsJudgedByTheRulesOfTheWholeRow) {
    const auto error = error_of([&] { add_entry(book, stratified("S-1", "2026-10-01"), completion_day); });
    EXPECT_TRUE(has(error.findings(), {Level::error, "seed_lot", "S-1", "stratified_from", "2026-10-01",
                                       "before the seed was washed", ""}));
}

TEST_F(Completion, ASecondPassOverTheSameBranchGoesUnderTheSameTag) {
    EXPECT_TRUE(add_entry(book, pollinated("26-01-a", "A1", "2026-05-10"), completion_day).findings.empty());
    EXPECT_TRUE(add_entry(book, pollinated("26-01-a", "A1", "2026-05-12"), completion_day).findings.empty());
    EXPECT_EQ(orchard().pollinations.size(), 2U);
    const auto other_tree =
        error_of([&] { add_entry(book, pollinated("26-01-a", "A2", "2026-05-13"), completion_day); });
    EXPECT_NE(other_tree.findings().front().message.text().find("hangs at A1"), std::string::npos);
    const auto same_day =
        error_of([&] { add_entry(book, pollinated("26-01-a", "A1", "2026-05-12"), completion_day); });
    EXPECT_NE(same_day.findings().front().message.text().find("of this day already"), std::string::npos);
}

TEST_F(Completion, WorkAtABranchNeedsATagOrATree) {
    const Entry bare{"branch_work", {{"task", text("bag")}, {"done_on", day("2026-05-01")}}};
    const auto error = error_of([&] { add_entry(book, bare, completion_day); });
    EXPECT_NE(error.findings().front().message.text().find("Nothing tells the branch"), std::string::npos);
    auto told = bare;
    told.values["tree"] = text("A1");
    told.values["cross"] = text("26-01");
    EXPECT_TRUE(add_entry(book, told, completion_day).findings.empty());
    EXPECT_EQ(orchard().branch_works.at(0).task, BranchTask::bag);
}

TEST_F(Completion, MoreFruitThanFlowersIsAWarning) {
    add_entry(book, pollinated("26-01-a", "A1", "2026-05-10"), completion_day);
    const Entry count{
        "fruit_set",
        {{"tag", text("26-01-a")}, {"counted_on", day("2026-06-25")}, {"fruits_set", whole(41)}}};
    const auto findings = add_entry(book, count, completion_day).findings;
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].level, Level::warning);
    EXPECT_EQ(orchard().fruit_set_counts.at(0).fruits, 41);
}

TEST_F(Completion, APlaceGoesIntoTheRowOfATree) {
    Entry tree{"tree", {{"label", text("A3")}, {"accession", text("Oak Lane")}}};
    tree.at = testing::at(500030, 5300000);
    add_entry(book, tree, completion_day);
    const auto trees = orchard().trees;
    ASSERT_EQ(trees.size(), 3U);
    ASSERT_TRUE(trees[2].at);
    EXPECT_DOUBLE_EQ(trees[2].at->x, 500030);
}

}  // namespace
}  // namespace pipward::book
