// SPDX-License-Identifier: MIT
// Where fresh pollen may well come too late and a branch cannot wait, both are planned.
#include <gtest/gtest.h>

#include <algorithm>

#include "cross/made_orchard.h"

namespace pipward::cross {
namespace {

using testing::day;
using testing::MadeOrchard;
using testing::says;
using testing::way_of;

// The donor opens when the seed parent's last flowers can take pollen.
MadeOrchard end_of_bloom(const std::string& as_of, double donor) {
    MadeOrchard made(as_of);
    made.season_sd = 1;
    made.accession({"Red", 120, "S1 S2"}).accession({"Tail", donor, "S3 S4"}).goal("C1", "Red", "Tail");
    return made;
}

bool asks_for_a_branch(const SeasonPlan& plan) {
    return std::ranges::any_of(plan.pollen, [](const PollenTask& task) {
        return task.work == PollenWork::cut_branch && task.insurance;
    });
}

/// A spring in which fresh pollen is the likelier way and still doubtful, on the last days for a branch.
std::optional<SeasonPlan> insured_plan() {
    for (double donor = 126; donor < 136; donor += 0.5) {
        for (int days = 0; days < 20; ++days) {
            const auto plan = end_of_bloom(to_iso(day("2026-04-10") + days), donor).plan();
            if (asks_for_a_branch(plan)) {
                return plan;
            }
        }
    }
    return std::nullopt;
}

TEST(Insurance, ABranchIsCutBesidesADoubtfulMeeting) {
    const auto plan = insured_plan();
    ASSERT_TRUE(plan) << "there are such springs";
    const auto branch = way_of(*plan, "C1", PollenWay::forced_branch);
    EXPECT_TRUE(branch.insurance);
    EXPECT_FALSE(branch.best);
    EXPECT_GT(branch.donor_flowers, 0);
    EXPECT_TRUE(says(branch.why, "raises the probability from"));
    EXPECT_TRUE(says(branch.why, "costs"));
    const auto first = plan->ways.front();
    EXPECT_TRUE(first.best);
    EXPECT_LT(first.chance.value, 0.8);
    const auto pollinate = std::ranges::find(plan->field, FieldWork::pollinate, &FieldTask::work);
    ASSERT_NE(pollinate, plan->field.end());
    EXPECT_TRUE(says(pollinate->pollen, "if that fails: from a forced branch")) << pollinate->pollen.text();
    const auto cut = std::ranges::find(plan->pollen, PollenWork::cut_branch, &PollenTask::work);
    EXPECT_EQ(cut->do_to, *branch.collect_to);
    EXPECT_LE(cut->do_to - plan->as_of, 14);
}

TEST(Insurance, IsNotAskedForWhereTheFirstWayIsGood) {
    for (int days = 0; days < 30; ++days) {
        EXPECT_FALSE(asks_for_a_branch(end_of_bloom(to_iso(day("2026-04-01") + days), 121).plan()));
    }
}

}  // namespace
}  // namespace pipward::cross
