// SPDX-License-Identifier: MIT
// A task that is done and recorded is gone from the plan, and what it was done for stays in it.
#include <gtest/gtest.h>

#include <algorithm>

#include "cross/made_orchard.h"

namespace pipward::cross {
namespace {

using testing::day;
using testing::MadeOrchard;

TEST(CutBranch, IsNotCutAgainAndStaysInThePlan) {
    MadeOrchard made("2026-03-20");
    made.season_sd = 1;
    made.accession({"Red", 120, "S1 S2"}).accession({"Late", 142, "S3 S4"}).goal("C1", "Red", "Late");
    const auto before = made.plan();
    ASSERT_EQ(before.pollen.size(), 1U);
    ASSERT_EQ(before.pollen.front().work, PollenWork::cut_branch);
    made.forecast.as_of = before.pollen.front().do_to;
    BranchWork cut;
    cut.task = BranchTask::cut_branch;
    cut.done_on = made.forecast.as_of;
    cut.tree = "Late 1";
    made.orchard.branch_works = {cut};
    for (int days = 0; days < 8; ++days) {
        const auto plan = made.plan();
        EXPECT_TRUE(std::ranges::none_of(plan.pollen, [](const PollenTask& task) {
            return task.work == PollenWork::cut_branch;
        })) << days;
        EXPECT_TRUE(testing::way_of(plan, "C1", PollenWay::forced_branch).best) << days << " days in water";
        made.forecast.as_of = made.forecast.as_of + 1;
    }
}

}  // namespace
}  // namespace pipward::cross
