// SPDX-License-Identifier: MIT
#include "pipward/math/plane_point.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace pipward::math {
namespace {

TEST(PlanePoint, HasBearingsClockwiseFromNorth) {
    EXPECT_NEAR(bearing_deg({0, 1}), 0, 1e-12);
    EXPECT_NEAR(bearing_deg({1, 1}), 45, 1e-12);
    EXPECT_NEAR(bearing_deg({1, 0}), 90, 1e-12);
    EXPECT_NEAR(bearing_deg({0, -1}), 180, 1e-12);
    EXPECT_NEAR(bearing_deg({-1, 0}), 270, 1e-12);
    for (double bearing = 0; bearing < 360; bearing += 17) {
        EXPECT_NEAR(bearing_deg(way_at(bearing) * 42), bearing, 1e-9);
        EXPECT_NEAR(length(way_at(bearing)), 1, 1e-12);
    }
}

TEST(PlanePoint, TurnsToTheLeft) {
    EXPECT_EQ(left_of({0, 1}), (PlanePoint{-1, 0}));
    EXPECT_EQ(unit({0, 0}), (PlanePoint{1, 0}));
    EXPECT_NEAR(length(unit({3, -4})), 1, 1e-12);
}

TEST(MainDirection, FollowsTheOrderOfThePoints) {
    const std::vector<PlanePoint> there{{0, 0}, {2, 0.1}, {4, -0.1}, {6, 0}};
    const std::vector<PlanePoint> back(there.rbegin(), there.rend());
    EXPECT_NEAR(bearing_deg(main_direction(there)), 90, 2);
    EXPECT_NEAR(bearing_deg(main_direction(back)), 270, 2);
    EXPECT_EQ(main_direction({}), (PlanePoint{1, 0}));
}

TEST(BoxAround, ReachesToTheOutermost) {
    const std::vector<PlanePoint> points{{3, 1}, {-2, 5}, {0, -7}};
    const auto box = box_around(points);
    EXPECT_EQ(box.low, (PlanePoint{-2, -7}));
    EXPECT_EQ(box.high, (PlanePoint{3, 5}));
}

}  // namespace
}  // namespace pipward::math
