// SPDX-License-Identifier: MIT
#include "pipward/cross/plan.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "cross/made_orchard.h"

namespace pipward::cross {
namespace {

using testing::day;
using testing::MadeOrchard;
using testing::says;
using testing::way_of;
using testing::ways_of;

// Seed parent Red is full on 1 May; donors before, with and after it.
MadeOrchard springtime(const std::string& as_of) {
    MadeOrchard made(as_of);
    made.accession({"Red", 120, "S1 S2"})
        .accession({"Early", 105, "S3 S4"})
        .accession({"Mate", 121, "S3 S4"})
        .accession({"Half", 121, "S1 S4"})
        .accession({"Twin", 121, "S1 S2"})
        .accession({"Late", 142, "S3 S4"});
    return made;
}

const CrossWay& best_of(const std::vector<CrossWay>& ways) {
    return *std::ranges::find(ways, true, &CrossWay::best);
}

const FieldTask& pollination(const SeasonPlan& plan) {
    return *std::ranges::find(plan.field, FieldWork::pollinate, &FieldTask::work);
}

CrossWay best_way(const SeasonPlan& plan, const std::string& cross, const std::string& donor = {}) {
    return best_of(ways_of(plan, cross, donor));
}

TEST(Plan, ShowsEachOfTheFourWaysForEveryGoalTheFollowedFirst) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Mate").goal("C2", "Red", "Twin").goal("C3", "Nobody", "Nothing");
    const auto plan = made.plan();
    for (const auto* cross : {"C1", "C2", "C3"}) {
        const auto ways = ways_of(plan, cross);
        ASSERT_EQ(ways.size(), 4U);
        EXPECT_TRUE(ways.front().best);
        EXPECT_EQ(std::ranges::count(ways, true, &CrossWay::best), 1);
        for (const auto way : {PollenWay::same_day, PollenWay::kept_this_spring,
                               PollenWay::kept_from_last_year, PollenWay::forced_branch}) {
            const auto row = way_of(plan, cross, way);
            EXPECT_FALSE(row.why.empty());
            EXPECT_GE(row.chance.value, 0);
            EXPECT_LE(row.chance.value, 1);
        }
    }
}

TEST(Plan, UsesFreshPollenWhereTheDonorBloomsTogether) {
    const auto plan = springtime("2026-04-10").goal("C1", "Red", "Mate").plan();
    const auto best = best_way(plan, "C1");
    EXPECT_EQ(best.way, PollenWay::same_day);
    EXPECT_EQ(best.verdict, Verdict::good);
    EXPECT_EQ(best.s_match, lineage::SMatch::full);
    EXPECT_EQ(best.flowers, 126);
    EXPECT_EQ(best.donor_flowers, 34);  // 126 / (5 x 0.76), rounded up
    EXPECT_DOUBLE_EQ(best.pollen.value, 34);
    EXPECT_LE(*best.collect_from, *best.collect_to);
    EXPECT_LE(*best.collect_to, *best.use_to);
}

TEST(Plan, KeepsPollenOfAnEarlyDonor) {
    const auto plan = springtime("2026-03-20").goal("C1", "Red", "Early").plan();
    const auto best = best_way(plan, "C1");
    EXPECT_EQ(best.way, PollenWay::kept_this_spring);
    EXPECT_EQ(best.store, Store::refrigerator);
    EXPECT_GT(best.donor_flowers, 34);
    EXPECT_LT(*best.collect_to, *best.use_from);
    EXPECT_TRUE(says(way_of(plan, "C1", PollenWay::same_day).why, "before the first flower of Red"));
    ASSERT_EQ(plan.pollen.size(), 1U);
    const auto& task = plan.pollen.front();
    EXPECT_EQ(task.work, PollenWork::collect);
    EXPECT_EQ(task.tree, "Early 1");
    EXPECT_EQ(task.do_to, *best.collect_to);
    EXPECT_EQ(task.keep_until, best.use_to);
    EXPECT_TRUE(task.at);
}

TEST(Plan, UsesALotFromLastYearForALateDonor) {
    auto made = springtime("2026-04-20");
    made.goal("C1", "Red", "Late")
        .lot("P1", "Late", "2025-05-20", Store::freezer)
        .test("P1", "2026-04-01", 300, 150);
    const auto plan = made.plan();
    const auto best = best_way(plan, "C1");
    EXPECT_EQ(best.way, PollenWay::kept_from_last_year);
    EXPECT_EQ(best.lot, "P1");
    EXPECT_EQ(best.verdict, Verdict::good);
    EXPECT_EQ(best.donor_flowers, 0);
    EXPECT_GT(best.pollen.value, 0);
    EXPECT_TRUE(plan.pollen.empty());
    EXPECT_EQ(pollination(plan).pollen, "lot P1");
}

TEST(Plan, ForcesABranchOfALateDonorWithoutALot) {
    const auto plan = springtime("2026-03-20").goal("C1", "Red", "Late").plan();
    const auto best = best_way(plan, "C1");
    EXPECT_EQ(best.way, PollenWay::forced_branch);
    EXPECT_EQ(best.verdict, Verdict::fair);
    ASSERT_EQ(plan.pollen.size(), 1U);
    EXPECT_EQ(plan.pollen.front().work, PollenWork::cut_branch);
    EXPECT_TRUE(says(way_of(plan, "C1", PollenWay::same_day).why, "after the last receptive flower of Red"));
}

TEST(Plan, TellsByWhichDayABranchWouldHaveHadToBeCutAndCollectsForNextSpring) {
    const auto plan = springtime("2026-05-01").goal("C1", "Red", "Late").plan();
    const auto forced = way_of(plan, "C1", PollenWay::forced_branch);
    EXPECT_EQ(forced.verdict, Verdict::impossible);
    EXPECT_TRUE(says(forced.why, "would have had to be cut by 2026-04-"));
    EXPECT_TRUE(says(way_of(plan, "C1", PollenWay::kept_from_last_year).why, "this spring and freeze it"));
    ASSERT_EQ(plan.pollen.size(), 1U);
    const auto& task = plan.pollen.front();
    EXPECT_EQ(task.season_of_use, Season{2027});
    EXPECT_EQ(task.store, Store::freezer);
    EXPECT_EQ(task.for_crosses, std::vector<std::string>{"C1"});
    EXPECT_GT(task.do_to, day("2026-05-10"));
    EXPECT_TRUE(plan.field.empty());
}

TEST(Plan, UsesALotInHandBeforeFreshFlowers) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Mate")
        .lot("P1", "Mate", "2025-05-05", Store::freezer)
        .test("P1", "2026-03-20", 200, 140);
    EXPECT_EQ(best_way(made.plan(), "C1").lot, "P1");
}

TEST(Plan, UsesALotCollectedThisSpring) {
    auto made = springtime("2026-04-25");
    made.goal("C1", "Red", "Early").lot("P26", "Early", "2026-04-12", Store::refrigerator);
    const auto best = best_way(made.plan(), "C1");
    EXPECT_EQ(best.way, PollenWay::kept_this_spring);
    EXPECT_EQ(best.lot, "P26");
}

TEST(Plan, LeavesALotThatIsTooOldAndSaysHowMuchOfItGerminates) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Mate").lot("P1", "Mate", "2025-05-05", Store::refrigerator);
    const auto plan = made.plan();
    EXPECT_EQ(best_way(plan, "C1").way, PollenWay::same_day);
    const auto lot = way_of(plan, "C1", PollenWay::kept_from_last_year);
    EXPECT_EQ(lot.lot, "P1");
    EXPECT_LT(lot.chance.value, 0.2);
    EXPECT_TRUE(says(lot.why, "less than the 30 % to plan on"));
}

TEST(Plan, LeavesALotThatIsUsedUp) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Mate").lot("P1", "Mate", "2025-05-05", Store::freezer);
    made.orchard.pollen_lots.front().used_up_on = day("2026-04-01");
    EXPECT_FALSE(way_of(made.plan(), "C1", PollenWay::kept_from_last_year).lot);
}

TEST(Plan, CoversWithAnotherWayWhatALotIsTooSmallFor) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Mate")
        .lot("P1", "Mate", "2025-05-05", Store::freezer, 20)
        .test("P1", "2026-03-20", 200, 160);
    const auto plan = made.plan();
    const auto ways = ways_of(plan, "C1");
    ASSERT_EQ(std::ranges::count(ways, true, &CrossWay::best), 2);
    EXPECT_EQ(ways[0].lot, "P1");
    EXPECT_EQ(ways[1].way, PollenWay::same_day);
    EXPECT_EQ(ways[0].flowers + ways[1].flowers, 126);
    EXPECT_NEAR(ways[0].flowers, 20 * 5 * 0.8, 5);  // a little is lost between test and use
    EXPECT_TRUE(says(ways[0].why, "of 126 flowers; the rest by the way \"same day\""));
    EXPECT_EQ(pollination(plan).pollen.text(), "lot P1 for " + std::to_string(ways[0].flowers) +
                                                   " flowers; fresh for " + std::to_string(ways[1].flowers) +
                                                   " flowers");
}

TEST(Plan, GoesOnToASecondLotAndThenToFreshFlowers) {
    auto made = springtime("2026-04-25");
    made.goal("C1", "Red", "Mate");
    made.lot("P1", "Mate", "2025-05-05", Store::freezer, 10).test("P1", "2026-04-20", 200, 160);
    made.lot("P2", "Mate", "2026-04-24", Store::refrigerator, 10).test("P2", "2026-04-25", 200, 160);
    const auto ways = ways_of(made.plan(), "C1");
    ASSERT_EQ(std::ranges::count(ways, true, &CrossWay::best), 3);
    int flowers = 0;
    for (const auto& way : ways) {
        flowers += way.best ? way.flowers : 0;
    }
    EXPECT_EQ(flowers, 126);
}

TEST(Plan, CountsWhatWasUsedFromALotAndGivesItToTheMoreUrgentGoalFirst) {
    auto made = springtime("2026-04-10");
    made.accession({"Green", 120, "S1 S2"});
    made.goal("C1", "Red", "Mate", 2026, 2).goal("C2", "Green", "Mate", 2026, 1);
    made.lot("P1", "Mate", "2025-05-05", Store::freezer, 65).test("P1", "2026-03-20", 200, 160);
    made.pollinated("old", "2025-05-20", 100, "P1");  // 100 / (5 x 0.74) donor flowers' worth
    const auto plan = made.plan();
    EXPECT_EQ(plan.ways.front().cross, "C2");
    EXPECT_EQ(best_way(plan, "C2").flowers, 126);
    const auto second = ways_of(plan, "C1");
    EXPECT_EQ(second[0].lot, "P1");
    EXPECT_LT(second[0].flowers, 126);
    EXPECT_EQ(second[0].flowers + second[1].flowers, 126);
}

TEST(Plan, TestsALotBeforeUseUnlessItsLastTestIsRecent) {
    auto made = springtime("2026-03-01");
    made.goal("C1", "Red", "Late").lot("P1", "Late", "2025-05-20", Store::freezer);
    const auto plan = made.plan();
    ASSERT_EQ(plan.pollen.size(), 1U);
    const auto& task = plan.pollen.front();
    EXPECT_EQ(task.work, PollenWork::test_lot);
    EXPECT_LT(task.do_to, *best_way(plan, "C1").use_from);
    EXPECT_TRUE(says(task.why, "P1"));
    made.test("P1", "2026-03-01", 300, 160);
    EXPECT_TRUE(made.plan().pollen.empty());
}

TEST(Plan, AsksForMorePollenWhereHalfOfItIsRefused) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Mate").goal("C2", "Red", "Half");
    const auto plan = made.plan();
    const auto half = best_way(plan, "C2");
    EXPECT_EQ(half.s_match, lineage::SMatch::half);
    EXPECT_EQ(half.flowers, best_way(plan, "C1").flowers);
    EXPECT_EQ(half.donor_flowers, 67);  // 126 / (5 x 0.76 x 0.5), rounded up
    EXPECT_TRUE(says(half.why, "accepts 50 % of the pollen"));
    EXPECT_EQ(half.verdict, Verdict::good);
}

TEST(Plan, ExpectsNoSeedWhereTheStyleRefusesAllPollen) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Twin").goal("C2", "Red", "Red");
    const auto plan = made.plan();
    EXPECT_EQ(plan.ways.size(), 8U);
    for (const auto& way : plan.ways) {
        EXPECT_EQ(way.chance.value, 0);
        EXPECT_EQ(way.verdict, Verdict::impossible);
        EXPECT_EQ(way.s_match, lineage::SMatch::none);
        EXPECT_TRUE(says(way.why, "expect no seed"));
    }
    EXPECT_TRUE(plan.pollen.empty());
    EXPECT_TRUE(plan.field.empty());
}

TEST(Plan, SaysWhoseAllelesAreNotKnown) {
    auto made = springtime("2026-04-10");
    made.accession({"Wild", 121, "?"}).goal("C1", "Red", "Wild");
    const auto best = best_way(made.plan(), "C1");
    EXPECT_EQ(best.s_match, lineage::SMatch::unknown);
    EXPECT_TRUE(says(best.why, "S-alleles of Wild are not known"));
}

TEST(Plan, ScalesTheFlowersOfATriploidParentAndDoubtsIt) {
    auto made = springtime("2026-04-10");
    made.accession({"Big", 121, "S5 S6 S7", 3}).goal("C1", "Red", "Big").goal("C2", "Big", "Mate");
    const auto plan = made.plan();
    EXPECT_EQ(best_way(plan, "C1").verdict, Verdict::doubtful);
    EXPECT_GT(best_way(plan, "C1").flowers, 10 * 100);
    EXPECT_GT(best_way(plan, "C2").flowers, best_way(plan, "C1").flowers);
    EXPECT_TRUE(says(best_way(plan, "C2").why, "triploid"));
    EXPECT_FALSE(best_way(plan, "C1").kinship);
}

TEST(Plan, TellsTheKinshipOfRelatedParents) {
    auto made = springtime("2026-04-10");
    made.record("Red").seed_parent = "Old";
    made.record("Mate").seed_parent = "Old";
    made.goal("C1", "Red", "Mate");
    const auto best = best_way(made.plan(), "C1");
    EXPECT_EQ(best.kinship, 0.125);
    EXPECT_TRUE(says(best.why, "half sibs"));
}

TEST(Plan, CollectsABlendMemberByMemberByTheirShares) {
    auto made = springtime("2026-03-20");
    made.blend("Mix", "Early", 0.25).blend("Mix", "Mate", 0.75).goal("C1", "Red", "Mix");
    const auto plan = made.plan();
    EXPECT_EQ(ways_of(plan, "C1").size(), 8U);
    EXPECT_EQ(best_way(plan, "C1", "Early").way, PollenWay::kept_this_spring);
    const auto mate = best_way(plan, "C1", "Mate");
    EXPECT_EQ(mate.way, PollenWay::same_day);
    EXPECT_EQ(mate.flowers, 126);
    EXPECT_EQ(mate.donor_flowers, 25);  // three quarters of 126 / (5 x 0.76), rounded up
    EXPECT_EQ(plan.pollen.size(), 2U);
    EXPECT_TRUE(says(pollination(plan).pollen, "Mate: fresh"));
    EXPECT_TRUE(says(pollination(plan).pollen, "Early: collected this spring"));
}

TEST(Plan, LetsTheOtherMembersTakeTheShareOfOneThatCannotServe) {
    auto made = springtime("2026-04-10");
    made.blend("Mix", "Twin", 0.5).blend("Mix", "Mate", 0.5).goal("C1", "Red", "Mix");
    const auto plan = made.plan();
    EXPECT_EQ(best_way(plan, "C1", "Mate").donor_flowers, 34);
    EXPECT_EQ(best_way(plan, "C1", "Twin").donor_flowers, 0);
    EXPECT_TRUE(says(best_way(plan, "C1", "Twin").why, "take over its share"));
}

TEST(Plan, UsesALotOfTheWholeBlendForEachMember) {
    auto made = springtime("2026-04-10");
    made.blend("Mix", "Late", 0.5).blend("Mix", "Mate", 0.5).goal("C1", "Red", "Mix");
    made.lot("PM", "Mix", "2025-05-20", Store::freezer, 60).test("PM", "2026-03-20", 300, 210);
    const auto plan = made.plan();
    for (const auto* member : {"Late", "Mate"}) {
        EXPECT_EQ(best_way(plan, "C1", member).lot, "PM");
        EXPECT_EQ(best_way(plan, "C1", member).flowers, 126);
    }
    EXPECT_TRUE(plan.pollen.empty());
}

TEST(Plan, CollectsTheLateDonorOfNextSeasonsGoalThisSpring) {
    auto made = springtime("2026-04-10");
    made.goal("N1", "Red", "Late", 2027).goal("N2", "Red", "Mate", 2027);
    const auto plan = made.plan();
    const auto best = best_way(plan, "N1");
    EXPECT_EQ(best.way, PollenWay::kept_from_last_year);
    EXPECT_EQ(best.store, Store::freezer);
    EXPECT_EQ(parts_of(*best.collect_to).year, 2026);
    EXPECT_EQ(parts_of(*best.use_from).year, 2027);
    EXPECT_TRUE(says(best.why, "approximate, from the bloom order of 2026"));
    EXPECT_EQ(best_way(plan, "N2").way, PollenWay::same_day);
    ASSERT_EQ(plan.pollen.size(), 1U);
    const auto& task = plan.pollen.front();
    EXPECT_EQ(task.donor, "Late");
    EXPECT_EQ(task.season_of_use, Season{2027});
    EXPECT_EQ(task.do_to, *best.collect_to);
    EXPECT_EQ(task.flowers, best.donor_flowers);
    EXPECT_TRUE(plan.field.empty());
}

TEST(Plan, LeavesTheRiskAtTheLastSafeDay) {
    auto made = springtime("2026-04-10");
    made.goal("N1", "Red", "Late", 2027);
    auto careful = testing::every_cross_alike();
    careful.risk = 0.02;
    auto bold = testing::every_cross_alike();
    bold.risk = 0.40;
    EXPECT_LT(made.plan(careful).pollen.front().do_to, made.plan().pollen.front().do_to);
    EXPECT_GT(made.plan(bold).pollen.front().do_to, made.plan().pollen.front().do_to);
}

TEST(Plan, SaysWhenTheDonorsFlowersAreOver) {
    auto made = springtime("2026-05-03");
    made.goal("C1", "Red", "Early").goal("N1", "Red", "Early", 2027);
    const auto plan = made.plan();
    EXPECT_EQ(best_way(plan, "C1").verdict, Verdict::impossible);
    EXPECT_TRUE(says(best_way(plan, "C1").why, "has been over since about"));
    EXPECT_TRUE(
        says(way_of(plan, "N1", PollenWay::kept_from_last_year).why, "no pollen can be stored for 2027"));
    EXPECT_EQ(best_way(plan, "N1").way, PollenWay::kept_this_spring);
}

TEST(Plan, SaysWhenTheSeedParentsFlowersAreOver) {
    const auto plan = springtime("2026-06-10").goal("C1", "Red", "Mate").plan();
    EXPECT_TRUE(says(best_way(plan, "C1").why, "Flowers of Red have not been receptive since"));
}

TEST(Plan, SaysWhenItIsTooColdToSetSeed) {
    MadeOrchard cold("2026-04-10", {5, 5.2});
    cold.accession({"Red", 120, "S1 S2"}).accession({"Mate", 120, "S3 S4"}).goal("C1", "Red", "Mate");
    const auto best = best_way(cold.plan(), "C1");
    EXPECT_EQ(best.chance.value, 0);
    EXPECT_TRUE(says(best.why, "Too cold"));
}

TEST(Plan, SaysWhenASideHasNoLivingTree) {
    auto made = springtime("2026-04-10");
    made.accession({"Lost", 121, "S3 S5", {}, 0}).goal("C1", "Lost", "Mate").goal("C2", "Red", "Lost");
    auto plan = made.plan();
    EXPECT_TRUE(says(best_way(plan, "C1").why, "Lost has no living tree"));
    EXPECT_TRUE(says(way_of(plan, "C2", PollenWay::same_day).why, "no living tree to collect pollen from"));
    made.lot("P1", "Lost", "2025-05-20", Store::freezer);
    EXPECT_EQ(best_way(made.plan(), "C2").lot, "P1");
}

TEST(Plan, CollectsAtTheEarliestTreeWhereTheOthersAreTooLate) {
    auto made = springtime("2026-04-10");
    made.accession({"Tardy", 134, "S3 S4"})
        .other_tree("Tardy", "Tardy south", -12)
        .goal("C1", "Red", "Tardy");
    const auto plan = made.plan();
    EXPECT_EQ(best_way(plan, "C1").way, PollenWay::same_day);
    ASSERT_EQ(plan.pollen.size(), 1U);
    EXPECT_EQ(plan.pollen.front().tree, "Tardy south");
    EXPECT_TRUE(says(plan.pollen.front().why, "Tardy south blooms before"));
}

TEST(Plan, AddsUpWhatSeveralCrossesAskOfOneDonor) {
    auto made = springtime("2026-04-10");
    made.accession({"Green", 121, "S1 S2"}).goal("C1", "Red", "Mate").goal("C2", "Green", "Mate");
    const auto plan = made.plan();
    ASSERT_EQ(plan.pollen.size(), 1U);
    const auto& task = plan.pollen.front();
    EXPECT_EQ(task.flowers, best_way(plan, "C1").donor_flowers + best_way(plan, "C2").donor_flowers);
    EXPECT_EQ(task.for_crosses, (std::vector<std::string>{"C1", "C2"}));
    EXPECT_EQ(task.do_to, std::min(*best_way(plan, "C1").collect_to, *best_way(plan, "C2").collect_to));
    EXPECT_EQ(task.keep_until, std::max(best_way(plan, "C1").use_to, best_way(plan, "C2").use_to));
}

TEST(Plan, CollectsAgainWhereFreshPollenWouldNotLastForEveryCross) {
    MadeOrchard made("2026-04-01");
    made.season_sd = 0.5;
    made.own_sd = 0.5;
    made.accession({"First", 116, "S1 S2"})
        .accession({"Second", 124, "S1 S2"})
        .accession({"Donor", 121, "S3 S4"});
    made.goal("C1", "First", "Donor").goal("C2", "Second", "Donor");
    const auto plan = made.plan();
    ASSERT_EQ(best_way(plan, "C1").way, PollenWay::same_day);
    ASSERT_EQ(best_way(plan, "C2").way, PollenWay::same_day);
    ASSERT_EQ(plan.pollen.size(), 2U);
    for (const auto& task : plan.pollen) {
        EXPECT_EQ(task.for_crosses.size(), 1U);
        EXPECT_EQ(task.do_to, best_way(plan, task.for_crosses.front()).collect_to);
    }
}

TEST(Plan, StoresPollenOnceWhereItIsStoredForAnotherCross) {
    auto made = springtime("2026-04-01");
    made.accession({"After", 140, "S1 S2"}).goal("C1", "Red", "Mate").goal("C2", "After", "Mate");
    const auto plan = made.plan();
    ASSERT_EQ(best_way(plan, "C2").way, PollenWay::kept_this_spring);
    const auto first = best_way(plan, "C1");
    EXPECT_EQ(first.way, PollenWay::kept_this_spring);
    EXPECT_TRUE(says(first.why, "is stored for another cross anyway"));
    EXPECT_LT(first.chance.value, 1);
    ASSERT_EQ(plan.pollen.size(), 1U);
    EXPECT_EQ(plan.pollen.front().store, Store::refrigerator);
    EXPECT_EQ(plan.pollen.front().flowers, first.donor_flowers + best_way(plan, "C2").donor_flowers);
    EXPECT_GT(first.donor_flowers, 34) << "it germinates less than fresh pollen";
    for (const auto& task : plan.field) {
        EXPECT_FALSE(says(task.pollen, "fresh")) << task.pollen.text();
    }
}

TEST(Plan, WorksABlendOnDaysOnWhichEveryDonorHasPollen) {
    auto made = springtime("2026-03-20");
    made.blend("Mix", "Early", 0.5).blend("Mix", "Late", 0.5).goal("C1", "Red", "Mix");
    const auto plan = made.plan();
    const auto early = best_way(plan, "C1", "Early");
    const auto late = best_way(plan, "C1", "Late");
    ASSERT_EQ(late.way, PollenWay::forced_branch);
    const auto alone = springtime("2026-03-20").goal("C1", "Red", "Early").goal("C2", "Red", "Late").plan();
    const auto early_alone = best_way(alone, "C1");
    const auto late_alone = best_way(alone, "C2");
    ASSERT_LT(*early_alone.use_from, *late_alone.use_from);
    EXPECT_EQ(early.use_from, std::max(early_alone.use_from, late_alone.use_from));
    EXPECT_EQ(early.use_to, std::min(early_alone.use_to, late_alone.use_to));
    EXPECT_EQ(late.use_from, early.use_from);
    EXPECT_EQ(late.use_to, early.use_to);
    EXPECT_EQ(pollination(plan).do_from, *early.use_from);
    EXPECT_EQ(pollination(plan).do_to, *early.use_to);
}

TEST(Plan, SaysWhoseBloomIsAGuessAndNeverCallsItGood) {
    auto made = springtime("2026-04-10");
    for (auto& window : made.forecast.windows) {
        if (window.accession == "Red") {
            window.source = bloom::NeedSource::mid_parent;
        }
    }
    made.goal("C1", "Red", "Early").goal("C2", "Mate", "Late");
    const auto best = best_way(made.plan(), "C1");
    EXPECT_GE(best.chance.value, 0.8);
    EXPECT_EQ(best.verdict, Verdict::fair);
    EXPECT_TRUE(says(best.why, "no bloom observations of Red (from its parents)"));
    EXPECT_FALSE(says(best_way(made.plan(), "C2").why, "A guess"));
}

TEST(Plan, DoubtsMoreFlowersThanTheTreesCanBePollinatedFor) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Early");
    EXPECT_EQ(best_way(made.plan(), "C1").verdict, Verdict::good);
    made.orchard.goals.front().seedlings_wanted = 1'000'000;
    const auto best = best_way(made.plan(), "C1");
    EXPECT_EQ(best.verdict, Verdict::doubtful);
    EXPECT_TRUE(says(best.why, "flowers on one tree are more than can be pollinated"));
}

TEST(Plan, WeighsPollenByTheBooksOwnLots) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Mate").lot("P0", "Mate", "2024-05-05", Store::room, 100);
    made.orchard.pollen_lots.front().mass = Milligrams{50};
    EXPECT_DOUBLE_EQ(best_way(made.plan(), "C1").pollen.value, 34 * 0.5);
}

TEST(Plan, LeavesOutFlowersThatArePollinatedAlready) {
    auto made = springtime("2026-04-28");
    made.goal("C1", "Red", "Mate")
        .pollinated("C1", "2026-04-27", 100)
        .pollinated("C1", "2026-04-28", 100, {}, 2);
    auto best = best_way(made.plan(), "C1");
    EXPECT_EQ(best.flowers, 26);
    EXPECT_TRUE(says(best.why, "100 flowers are pollinated already, 26 are left"));
    made.pollinated("C1", "2026-04-28", 30, {}, 1);
    const auto plan = made.plan();
    EXPECT_EQ(best_way(plan, "C1").flowers, 0);
    EXPECT_TRUE(plan.pollen.empty());
    EXPECT_TRUE(plan.field.empty());
}

TEST(Plan, BagsBeforeTheFirstFlowerWorksThenTakesTheBagsOff) {
    const auto plan = springtime("2026-04-01").goal("C1", "Red", "Mate").plan();
    ASSERT_EQ(plan.field.size(), 3U);
    EXPECT_EQ(plan.field[0].work, FieldWork::bag);
    EXPECT_EQ(plan.field[1].work, FieldWork::pollinate);
    EXPECT_EQ(plan.field[2].work, FieldWork::unbag);
    EXPECT_LT(plan.field[0].do_to, plan.field[1].do_from);
    EXPECT_LT(plan.field[1].do_to, plan.field[2].do_from);
    EXPECT_EQ(plan.field[1].do_from, best_way(plan, "C1").use_from);
    EXPECT_EQ(plan.field[1].do_to, best_way(plan, "C1").use_to);
    EXPECT_EQ(plan.field[1].tree, "Red 1");
    EXPECT_EQ(plan.field[1].flowers, 126);
    EXPECT_EQ(plan.field[1].pollen, "fresh");
}

TEST(Plan, SpreadsTheFlowersOverAsManyTreesAsTheyNeed) {
    auto made = springtime("2026-04-01");
    made.accession({"Many", 120, "S1 S2", {}, 5}).goal("C1", "Many", "Mate");
    const auto plan = made.plan();
    ASSERT_EQ(plan.field.size(), 6U);
    int flowers = 0;
    for (const auto& task : plan.field) {
        flowers += task.work == FieldWork::pollinate ? task.flowers : 0;
    }
    EXPECT_EQ(flowers, 126);
}

TEST(Plan, MarksHowSoonWorkMustBeDone) {
    const auto urgency_on = [](const std::string& as_of) {
        return springtime(as_of).goal("C1", "Red", "Mate").plan().field.front();
    };
    EXPECT_EQ(urgency_on("2026-03-20").urgency, Urgency::later);
    EXPECT_EQ(urgency_on("2026-04-16").urgency, Urgency::this_week);
    EXPECT_EQ(urgency_on("2026-04-21").urgency, Urgency::today);
    const auto missed = urgency_on("2026-04-24");
    EXPECT_EQ(missed.work, FieldWork::bag);
    EXPECT_EQ(missed.urgency, Urgency::too_late);
    EXPECT_TRUE(says(missed.why, "still closed"));
}

TEST(Plan, ObservationsGoalsOfOtherSeasonsAndUnknownParents) {
    auto made = springtime("2026-04-10");
    made.goal("C1", "Red", "Mate").goal("C2", "Red", "Ghost").goal("Old", "Red", "Mate", 2024);
    const auto plan = made.plan();
    ASSERT_EQ(plan.findings.size(), 2U);
    EXPECT_TRUE(says(plan.findings[0].message, "1 goal of seasons other than 2026 and 2027"));
    EXPECT_EQ(plan.findings[1].value, "Ghost");
    EXPECT_EQ(plan.findings[1].level, Level::warning);
    EXPECT_TRUE(ways_of(plan, "Old").empty());
}

TEST(Plan, IsMadeWithoutKinshipWhereThePedigreeRunsInACircle) {
    auto made = springtime("2026-04-10");
    made.record("Red").seed_parent = "Mate";
    made.record("Mate").seed_parent = "Red";
    const auto plan = made.goal("C1", "Red", "Mate").plan();
    EXPECT_FALSE(best_way(plan, "C1").kinship);
    EXPECT_TRUE(says(plan.findings.front().message, "without kinship"));
    EXPECT_EQ(plan.findings.front().level, Level::warning);
}

TEST(Plan, OfABookWithoutGoalsIsEmptyAndSaysSo) {
    const auto plan = springtime("2026-04-10").plan();
    EXPECT_TRUE(plan.ways.empty());
    ASSERT_EQ(plan.findings.size(), 1U);
    EXPECT_TRUE(says(plan.findings.front().message, "no cross goal"));
}

TEST(Plan, OrdersGoalsByPriorityThenByTheNumberInTheirCode) {
    auto made = springtime("2026-04-10");
    made.goal("C10", "Red", "Mate").goal("C2", "Red", "Early").goal("C30", "Red", "Late", 2026, 5);
    const auto plan = made.plan();
    std::vector<std::string> order;
    for (const auto& way : plan.ways) {
        if (order.empty() || order.back() != way.cross) {
            order.push_back(way.cross);
        }
    }
    EXPECT_EQ(order, (std::vector<std::string>{"C30", "C2", "C10"}));
}

// Everything that a plan tells, as text.
std::string told(const SeasonPlan& plan) {
    std::string text;
    const auto add = [&](const auto&... parts) { ((text += parts, text += '|'), ...); };
    for (const auto& way : plan.ways) {
        add(way.cross, way.donor, std::string(to_text(way.way)), std::to_string(way.chance.value),
            std::to_string(way.flowers), std::to_string(way.donor_flowers), way.why, way.best ? "best" : "");
    }
    for (const auto& task : plan.pollen) {
        add(task.donor, to_iso(task.do_from), to_iso(task.do_to), std::to_string(task.flowers), task.why);
    }
    for (const auto& task : plan.field) {
        add(task.cross, task.tree, to_iso(task.do_from), to_iso(task.do_to), task.pollen, task.why);
    }
    for (const auto& finding : plan.findings) {
        add(to_text(finding));
    }
    return text;
}

MadeOrchard busy_spring() {
    auto made = springtime("2026-04-10");
    made.blend("Mix", "Early", 0.5).blend("Mix", "Late", 0.5);
    made.goal("C1", "Red", "Mate")
        .goal("C2", "Red", "Late")
        .goal("C3", "Mate", "Red")
        .goal("C4", "Red", "Mix");
    made.goal("C5", "Late", "Red").goal("N1", "Red", "Late", 2027).goal("C6", "Half", "Late");
    made.lot("P1", "Late", "2025-05-20", Store::freezer, 30).lot("P2", "Red", "2025-05-01", Store::room);
    made.test("P1", "2026-03-01", 300, 170);
    return made;
}

TEST(Plan, IsTheSameEveryTime) {
    EXPECT_EQ(told(busy_spring().plan()), told(busy_spring().plan()));
}

TEST(Plan, DoesNotDependOnTheOrderOfTheRecords) {
    auto made = busy_spring();
    const auto before = told(made.plan());
    std::ranges::reverse(made.orchard.goals);
    std::ranges::reverse(made.orchard.pollen_lots);
    std::ranges::reverse(made.orchard.blend_members);
    EXPECT_EQ(told(made.plan()), before);
}

TEST(Plan, KeepsItsPromisesOnEveryDayOfTheSeason) {
    for (int offset = 0; offset < 200; offset += 10) {
        auto made = busy_spring();
        made.forecast.as_of = day("2025-12-01") + offset;
        const auto plan = made.plan();
        EXPECT_GE(plan.ways.size(), 32U);  // seven goals, one of them with two donors, four ways each
        for (const auto& way : plan.ways) {
            EXPECT_GE(way.chance.value, 0);
            EXPECT_LE(way.chance.value, 1);
            EXPECT_FALSE(way.why.empty());
            EXPECT_EQ(way.collect_from.has_value(), way.collect_to.has_value());
            if (way.collect_from && way.season == plan.season && !way.lot) {
                EXPECT_GT(*way.use_from, *way.collect_from) << way.why.text();
                EXPECT_GT(*way.use_to, *way.collect_to) << way.why.text();
            }
            if (way.collect_from) {
                EXPECT_LE(*way.collect_from, *way.collect_to);
                EXPECT_GE(*way.collect_from, plan.as_of);
            }
        }
        for (const auto& task : plan.pollen) {
            EXPECT_LE(task.do_from, task.do_to);
            EXPECT_GE(task.do_to, plan.as_of);
        }
        for (const auto& task : plan.field) {
            EXPECT_LE(task.do_from, task.do_to);
        }
    }
}

}  // namespace
}  // namespace pipward::cross
