// SPDX-License-Identifier: MIT
// The outside yardstick: seventy-six springs of cherry bloom at Washington.
#include "washington.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>
#include <string>

#include "pipward/bloom/skill.h"
#include "testing.h"

namespace pipward::bloom {
namespace {

using testing::read_washington;
using testing::washington_latitude;

class WashingtonCherries : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto read = read_washington();
        if (!read) {
            GTEST_SKIP() << "The shared file bloom/washington-76-seasons.txt is not here.";
        }
        washington = *read;
        curves = testing::curves_of(washington.seasons, washington_latitude);
    }

    std::vector<SkillScore> scores(const std::vector<Observation>& observations,
                                   const SkillRequest& request) const {
        return score_methods(observations, curves, washington.seasons, washington_latitude, {}, request);
    }

    testing::Washington washington;
    CurvesOf curves;
};

SkillScore washington_score(const std::vector<SkillScore>& scores, BloomMethod method,
                    std::optional<int> training = {}) {
    return *std::ranges::find_if(scores, [&](const SkillScore& s) {
        return s.method == method && !s.lead_days && s.training_seasons == training;
    });
}

double yardstick(const std::string& method, const std::string& training) {
    for (const auto& row : testing::regression_rows("bloom-washington.txt")) {
        if (row[0] == method && row[1] == training) {
            return std::stod(row[2]);
        }
    }
    throw std::runtime_error("no yardstick for " + method);
}

TEST_F(WashingtonCherries, AreForecastAsWellAsByTheYardstick) {
    const auto found = scores(testing::peak_bloom_days(washington), {{}, 5, false});
    const auto averaged = washington_score(found, BloomMethod::averaged);
    EXPECT_EQ(averaged.seasons, 76);
    EXPECT_LE(averaged.rmse, yardstick("averaged", "75") + 0.1);
    EXPECT_LE(washington_score(found, BloomMethod::averaged, 5).rmse, yardstick("averaged", "5") + 0.2);
    const auto mean_day = washington_score(found, BloomMethod::mean_day);
    EXPECT_NEAR(mean_day.rmse, yardstick("mean_day", "75"), 0.1);
    EXPECT_LE(averaged.rmse, mean_day.rmse / 2);
    EXPECT_TRUE(averaged.chosen);
    EXPECT_GE(averaged.coverage_80, 0.70);
    EXPECT_LE(averaged.coverage_80, 0.90);
}

TEST_F(WashingtonCherries, AreForecastThroughTheStageLadderToo) {
    const auto observed =
        observe(testing::peak_bloom_notes(washington), {}, Hemisphere::north, {1000000}, curves);
    ASSERT_EQ(observed.observations.size(), 76U);
    const auto averaged = washington_score(scores(observed.observations, {}), BloomMethod::averaged);
    EXPECT_LE(averaged.rmse, 3.4);
}

TEST_F(WashingtonCherries, WindowsKeepTheirWordAtEveryLead) {
    const auto found = scores(testing::peak_bloom_days(washington), {{0, 14, 30, 60}, {}, false});
    double before = 0;
    for (const int lead : {0, 14, 30, 60}) {
        const auto score = *std::ranges::find_if(found, [&](const SkillScore& s) {
            return s.method == BloomMethod::averaged && s.lead_days == lead;
        });
        EXPECT_GE(score.coverage_80, 0.70) << lead;
        EXPECT_LE(score.coverage_80, 0.90) << lead;
        EXPECT_GT(score.rmse, before) << lead;
        before = score.rmse;
    }
    EXPECT_LT(before, 1.05 * washington_score(found, BloomMethod::mean_day).rmse);
}

}  // namespace
}  // namespace pipward::bloom
