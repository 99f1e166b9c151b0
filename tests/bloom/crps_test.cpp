// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/crps.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "pipward/math/distributions.h"
#include "testing.h"

namespace pipward::bloom {
namespace {

std::vector<double> normal_sample(double mean, double sd, int count) {
    std::vector<double> values;
    for (int i = 0; i < count; ++i) {
        values.push_back(mean + sd * math::normal_quantile((i + 0.5) / count));
    }
    return values;
}

TEST(Crps, OfANormalForecastIsThePublishedOne) {
    int checked = 0;
    for (const auto& row : testing::oracle_rows("bloom-crps.txt")) {
        const auto at = [&](int column) { return std::stod(row[column]); };
        EXPECT_NEAR(detail::crps_of_sample(normal_sample(at(0), at(1), 4000), at(2)), at(3), 1e-3);
        ++checked;
    }
    EXPECT_EQ(checked, 1);
}

TEST(Crps, OfAForecastWithoutSpreadIsTheSizeOfTheError) {
    EXPECT_DOUBLE_EQ(detail::crps_of_sample(std::vector{112.0}, 115), 3);
    EXPECT_DOUBLE_EQ(detail::crps_of_sample(std::vector{112.0, 112.0, 112.0}, 109), 3);
}

TEST(Crps, IsBestForTheSpreadThatIsRight) {
    const auto mean_score = [](double sd) {
        double sum = 0;
        for (const double observed : normal_sample(100, 4, 200)) {
            sum += detail::crps_of_sample(normal_sample(100, sd, 400), observed);
        }
        return sum / 200;
    };
    EXPECT_LT(mean_score(4), mean_score(2));
    EXPECT_LT(mean_score(4), mean_score(8));
}

TEST(PlaceAmong, CountsThoseBelowAndHalfOfThoseEqual) {
    const std::vector<double> days{1, 2, 2, 3};
    EXPECT_DOUBLE_EQ(detail::place_among(days, 0), 0);
    EXPECT_DOUBLE_EQ(detail::place_among(days, 2), 0.5);
    EXPECT_DOUBLE_EQ(detail::place_among(days, 2.5), 0.75);
    EXPECT_DOUBLE_EQ(detail::place_among(days, 9), 1);
}

}  // namespace
}  // namespace pipward::bloom
