// SPDX-License-Identifier: MIT
// All that is in stock of a donor serves its crosses, the oldest that still germinates first.
#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

#include "cross/made_orchard.h"

namespace pipward::cross {
namespace {

using testing::day;
using testing::MadeOrchard;
using testing::says;
using testing::ways_of;

MadeOrchard spring_of_lots(const std::string& as_of) {
    MadeOrchard made(as_of);
    made.accession({"Red", 120, "S1 S2"}).accession({"Late", 142, "S3 S4"}).accession({"Mate", 121, "S3 S4"});
    return made;
}

std::vector<CrossWay> followed(const SeasonPlan& plan, const std::string& cross) {
    auto ways = ways_of(plan, cross);
    std::erase_if(ways, [](const CrossWay& way) { return !way.best; });
    return ways;
}

int flowers(const std::vector<CrossWay>& ways) {
    return std::accumulate(ways.begin(), ways.end(), 0,
                           [](int sum, const CrossWay& way) { return sum + way.flowers; });
}

const FieldTask& pollination_in(const SeasonPlan& plan) {
    return *std::ranges::find(plan.field, FieldWork::pollinate, &FieldTask::work);
}

TEST(PooledLots, TwoVialsOfOneYearAreBothUsed) {
    auto made = spring_of_lots("2026-04-10");
    made.goal("C1", "Red", "Late");
    made.lot("P1", "Late", "2025-05-20", Store::freezer, 20).test("P1", "2026-03-20", 200, 160);
    made.lot("P2", "Late", "2025-05-21", Store::freezer, 200).test("P2", "2026-03-20", 200, 160);
    const auto plan = made.plan();
    const auto ways = followed(plan, "C1");
    ASSERT_EQ(ways.size(), 2U);
    EXPECT_EQ(ways[0].lot, "P1");
    EXPECT_EQ(ways[1].lot, "P2");
    EXPECT_EQ(flowers(ways), 126);
    EXPECT_TRUE(says(ways[0].why, "of 126 flowers; the rest from lot P2"));
    EXPECT_TRUE(std::ranges::none_of(plan.pollen, [](const PollenTask& task) {
        return task.work != PollenWork::test_lot;
    })) << "nothing is left to collect";
}

TEST(PooledLots, TheLineOfTheWorkNamesEachLotAndItsShare) {
    auto made = spring_of_lots("2026-04-10");
    made.goal("C1", "Red", "Late");
    made.lot("P1", "Late", "2025-05-20", Store::freezer, 20).test("P1", "2026-03-20", 200, 160);
    made.lot("P2", "Late", "2025-05-21", Store::freezer, 200).test("P2", "2026-03-20", 200, 160);
    const auto plan = made.plan();
    const auto ways = followed(plan, "C1");
    EXPECT_EQ(pollination_in(plan).pollen.text(), "lot P1 for " + std::to_string(ways[0].flowers) +
                                                      " flowers; lot P2 for " +
                                                      std::to_string(ways[1].flowers) + " flowers");
}

// What was collected for the same day is used on these days, not on the last ones of the seed parent's bloom.
TEST(PooledLots, PollenOfTheRoomIsJudgedOnTheDaysOnWhichItIsUsed) {
    auto made = spring_of_lots("2026-04-28");
    made.goal("C1", "Red", "Mate");
    const auto before = made.plan();
    const auto asked = std::ranges::find(before.pollen, PollenWork::collect, &PollenTask::work);
    ASSERT_NE(asked, before.pollen.end());
    made.lot("P1", "Mate", "2026-04-28", Store::room, asked->flowers);
    const auto plan = made.plan();
    const auto ways = followed(plan, "C1");
    ASSERT_FALSE(ways.empty());
    EXPECT_EQ(ways.front().lot, "P1");
    EXPECT_LE(*ways.front().use_to, day("2026-05-01"));
    for (const auto& task : plan.pollen) {
        EXPECT_NE(task.work, PollenWork::collect)
            << asked->flowers << " were collected as asked; " << task.flowers << " more: " << task.why.text();
    }
}

TEST(PooledLots, TheOldestThatStillGerminatesGoesFirst) {
    auto made = spring_of_lots("2026-04-10");
    made.goal("C1", "Red", "Late");
    made.lot("Dead", "Late", "2023-05-20", Store::room);
    made.lot("New", "Late", "2025-05-20", Store::freezer).test("New", "2026-03-20", 300, 270);
    made.lot("Old", "Late", "2024-05-20", Store::freezer).test("Old", "2026-03-20", 300, 180);
    const auto ways = followed(made.plan(), "C1");
    ASSERT_EQ(ways.size(), 1U);
    EXPECT_EQ(ways.front().lot, "Old");
}

TEST(PooledLots, OnlyWhatTheyCannotGiveIsCollected) {
    auto made = spring_of_lots("2026-04-25");
    made.goal("C1", "Red", "Mate");
    made.lot("P1", "Mate", "2025-05-05", Store::freezer, 10).test("P1", "2026-04-20", 200, 160);
    made.lot("P2", "Mate", "2025-05-06", Store::freezer, 10).test("P2", "2026-04-20", 200, 160);
    made.lot("P3", "Mate", "2026-04-24", Store::refrigerator, 5).test("P3", "2026-04-25", 200, 160);
    const auto plan = made.plan();
    const auto ways = followed(plan, "C1");
    ASSERT_EQ(ways.size(), 4U);
    EXPECT_EQ(ways[0].lot, "P1");
    EXPECT_EQ(ways[1].lot, "P2");
    EXPECT_EQ(ways[2].lot, "P3");
    EXPECT_FALSE(ways[3].lot);
    EXPECT_EQ(flowers(ways), 126);
    const auto collecting = std::ranges::find(plan.pollen, PollenWork::collect, &PollenTask::work);
    ASSERT_NE(collecting, plan.pollen.end());
    EXPECT_EQ(collecting->flowers, ways[3].donor_flowers);
}

// What was collected as asked is a little older on the day of use than it was calculated: the few flowers
// that this costs are not asked for again.
TEST(PooledLots, ALotThatFallsShortByATenthIsSpreadThinner) {
    int topped_up = 0;
    int enough = 0;
    for (int flowers = 1; flowers < 80; ++flowers) {
        auto made = spring_of_lots("2026-04-25");
        made.goal("C1", "Red", "Mate");
        made.lot("P1", "Mate", "2025-05-05", Store::freezer, flowers).test("P1", "2026-04-20", 200, 160);
        const auto ways = followed(made.plan(), "C1");
        if (ways.size() == 1) {
            ++enough;
        } else {
            ++topped_up;
            EXPECT_LT(ways.front().flowers * 1.1, 126) << flowers;
            EXPECT_EQ(enough, 0) << "more pollen must not need more flowers";
        }
    }
    EXPECT_GT(topped_up, 10);
    EXPECT_GT(enough, 10);
}

TEST(PooledLots, ALotThatOthersEmptiedLeavesTheNextVial) {
    auto made = spring_of_lots("2026-04-10");
    made.accession({"Green", 120, "S1 S2"});
    made.goal("C1", "Green", "Late", 2026, 1).goal("C2", "Red", "Late", 2026, 2);
    made.lot("P1", "Late", "2025-05-20", Store::freezer, 20).test("P1", "2026-03-20", 200, 160);
    made.lot("P2", "Late", "2025-05-21", Store::freezer, 200).test("P2", "2026-03-20", 200, 160);
    const auto second = followed(made.plan(), "C2");
    ASSERT_EQ(second.size(), 1U);
    EXPECT_EQ(second.front().lot, "P2");
    EXPECT_EQ(second.front().verdict, Verdict::good);
}

TEST(PooledLots, EachLotHasATestOfItsOwn) {
    auto made = spring_of_lots("2026-03-01");
    made.goal("C1", "Red", "Late");
    made.lot("P1", "Late", "2025-05-20", Store::freezer, 20).lot("P2", "Late", "2025-05-21", Store::freezer);
    const auto plan = made.plan();
    ASSERT_EQ(plan.pollen.size(), 2U);
    std::vector<std::string> lots;
    for (const auto& task : plan.pollen) {
        EXPECT_EQ(task.work, PollenWork::test_lot);
        lots.push_back(task.lot.value_or("none"));
    }
    std::ranges::sort(lots);
    EXPECT_EQ(lots, (std::vector<std::string>{"P1", "P2"}));
}

TEST(PooledLots, PollenOfTheDayIsNotTestedAndStoredPollenBeforeItsUse) {
    const auto tests = [](const std::string& collected_on, const std::string& as_of) {
        auto made = spring_of_lots(as_of);
        made.goal("C1", "Red", "Mate").lot("P1", "Mate", collected_on, Store::refrigerator);
        auto plan = made.plan();
        std::erase_if(plan.pollen, [](const PollenTask& t) { return t.work != PollenWork::test_lot; });
        return plan.pollen;
    };
    EXPECT_TRUE(tests("2026-04-28", "2026-04-28").empty()) << "used within days";
    const auto stored = tests("2026-04-06", "2026-04-06");
    ASSERT_EQ(stored.size(), 1U);
    EXPECT_GT(stored.front().do_from, day("2026-04-06") + 6);
    EXPECT_GE(stored.front().do_to, stored.front().do_from);
    EXPECT_LT(stored.front().do_to, day("2026-04-28"));
}

TEST(PooledLots, PollenOfTheDayIsUsedWhenItIsDry) {
    auto made = spring_of_lots("2026-04-30");
    made.goal("C1", "Red", "Mate").lot("P1", "Mate", "2026-04-30", Store::refrigerator);
    const auto ways = followed(made.plan(), "C1");
    ASSERT_EQ(ways.size(), 1U);
    EXPECT_EQ(ways.front().lot, "P1");
    EXPECT_GE(*ways.front().use_from, day("2026-05-01"));
}

}  // namespace
}  // namespace pipward::cross
