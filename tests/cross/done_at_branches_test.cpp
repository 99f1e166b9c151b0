// SPDX-License-Identifier: MIT
// A task that was answered by a record is done and out of the plan.
#include <gtest/gtest.h>

#include <algorithm>

#include "cross/made_orchard.h"
#include "pipward/cross/detail/pollen_life.h"

namespace pipward::cross {
namespace {

using testing::day;
using testing::MadeOrchard;

MadeOrchard spring_at_branches() {
    MadeOrchard made("2026-04-20");
    made.accession({"Red", 120, "S1 S2"}).accession({"Mate", 121, "S3 S4"});
    made.goal("C1", "Red", "Mate");
    return made;
}

std::ptrdiff_t tasks(const SeasonPlan& plan, FieldWork work) {
    return std::ranges::count(plan.field, work, &FieldTask::work);
}

BranchWork done(BranchTask task, const char* on, const char* cross, const char* tree) {
    BranchWork work;
    work.task = task;
    work.done_on = day(on);
    if (*cross != 0) {
        work.cross = cross;
    }
    work.tree = tree;
    return work;
}

TEST(AnsweredTasks, BagsThatHangAreNotToBeHung) {
    auto made = spring_at_branches();
    ASSERT_EQ(tasks(made.plan(), FieldWork::bag), 1);
    made.orchard.branch_works = {done(BranchTask::bag, "2026-04-19", "C1", "Red 1")};
    EXPECT_EQ(tasks(made.plan(), FieldWork::bag), 0);
    EXPECT_EQ(tasks(made.plan(), FieldWork::pollinate), 1);
    made.orchard.branch_works = {done(BranchTask::bag, "2026-04-19", "C2", "Red 1")};
    EXPECT_EQ(tasks(made.plan(), FieldWork::bag), 1) << "of another cross";
    made.orchard.branch_works = {done(BranchTask::bag, "2025-04-19", "C1", "Red 1")};
    EXPECT_EQ(tasks(made.plan(), FieldWork::bag), 1) << "of another spring";
}

TEST(AnsweredTasks, PollinatedTreesWaitForTheirBagsToBeTakenOff) {
    auto made = spring_at_branches();
    Pollination work;
    work.tag = "C1-a";
    work.cross = "C1";
    work.tree = "Red 1";
    work.pollinated_on = day("2026-04-20");
    work.flowers = 100000;
    made.orchard.pollinations = {work};
    const auto plan = made.plan();
    EXPECT_EQ(tasks(plan, FieldWork::pollinate), 0);
    EXPECT_EQ(tasks(plan, FieldWork::unbag), 1);
    auto unbagged = done(BranchTask::unbag, "2026-04-20", "", "Red 1");
    unbagged.tag = "C1-a";
    made.orchard.branch_works = {unbagged};
    EXPECT_EQ(tasks(made.plan(), FieldWork::unbag), 0);
}

TEST(AnsweredTasks, PollenThatWasCollectedIsNotToBeCollected) {
    auto made = spring_at_branches();
    ASSERT_FALSE(made.plan().pollen.empty());
    PollenLot lot;
    lot.code = "P-1";
    lot.donor = "Mate";
    lot.collected_on = day("2026-04-19");
    lot.flowers = 5000;
    lot.store = Store::refrigerator;
    made.orchard.pollen_lots = {lot};
    const auto plan = made.plan();
    EXPECT_TRUE(std::ranges::none_of(plan.pollen, [](const PollenTask& task) {
        return task.work == PollenWork::collect && task.season_of_use.year == 2026;
    }));
}

TEST(StaysInStores, TakeThePollenAlongEachStoresCurve) {
    const Day start = day("2026-05-01");
    using detail::Stay;
    const std::vector<Stay> one{{Store::freezer, start}};
    EXPECT_DOUBLE_EQ(detail::germination_kept(one, start + 60),
                     detail::germination_kept(Store::freezer, 60 / detail::days_a_month));
    const std::vector<Stay> same_twice{{Store::freezer, start}, {Store::freezer, start + 30}};
    EXPECT_NEAR(detail::germination_kept(same_twice, start + 60), detail::germination_kept(one, start + 60),
                1e-12);
    const std::vector<Stay> warm_first{{Store::room, start}, {Store::freezer, start + 10}};
    const double moved = detail::germination_kept(warm_first, start + 60);
    EXPECT_LT(moved, detail::germination_kept(Store::freezer, 60 / detail::days_a_month));
    EXPECT_GT(moved, detail::germination_kept(Store::room, 60 / detail::days_a_month));
    EXPECT_LE(moved, detail::germination_kept(Store::room, 10 / detail::days_a_month));
}

}  // namespace
}  // namespace pipward::cross
