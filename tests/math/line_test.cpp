// SPDX-License-Identifier: MIT
#include "pipward/math/line.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "pipward/math/line_tree.h"
#include "pipward/math/obstacles.h"
#include "pipward/math/point_tree.h"

namespace pipward::math {
namespace {

Line made_line(std::vector<PlanePoint> points) {
    return Line(std::move(points));
}

TEST(Line, IsAsFarAsItsNearestPlace) {
    const auto line = made_line({{0, 0}, {10, 0}, {10, 10}});
    EXPECT_NEAR(line.length(), 20, 1e-12);
    EXPECT_NEAR(line.distance(PlanePoint{4, 3}), 3, 1e-12);
    EXPECT_NEAR(line.distance(PlanePoint{-3, -4}), 5, 1e-12);
    EXPECT_NEAR(line.distance(made_line({{13, 5}, {20, 5}})), 3, 1e-12);
    EXPECT_EQ(line.distance(made_line({{5, -1}, {5, 1}})), 0);
    EXPECT_NEAR(line.distance(made_line({{13, 14}})), 5, 1e-12);
}

TEST(Line, HasFeet) {
    const auto line = made_line({{0, 0}, {10, 0}, {10, 10}});
    const auto foot = line.foot({12, 6});
    EXPECT_NEAR(foot.at.east, 10, 1e-12);
    EXPECT_NEAR(foot.at.north, 6, 1e-12);
    EXPECT_NEAR(foot.along, 16, 1e-12);
    EXPECT_NEAR(foot.off, 2, 1e-12);
    EXPECT_NEAR(bearing_deg(foot.ahead), 0, 1e-9);
    EXPECT_NEAR(line.foot({-3, 4}).off, 5, 1e-12);
    EXPECT_NEAR(bearing_deg(line.foot({-3, 4}).ahead), 90, 1e-9);
}

TEST(Line, TakesAFootAtACornerForTheLegThatEndsThere) {
    const auto line = made_line({{0, 0}, {10, 0}, {10, 10}});
    EXPECT_NEAR(bearing_deg(line.foot({11, -1}).ahead), 90, 1e-9);
    EXPECT_NEAR(bearing_deg(line.foot({10, 0}).ahead), 90, 1e-9);
}

TEST(Line, MayBeASinglePoint) {
    const auto line = made_line({{3, 4}});
    EXPECT_EQ(line.length(), 0);
    EXPECT_NEAR(line.distance(PlanePoint{0, 0}), 5, 1e-12);
    EXPECT_NEAR(line.foot({0, 0}).off, 5, 1e-12);
    EXPECT_EQ(line.foot({0, 0}).at, (PlanePoint{3, 4}));
}

TEST(Simplified, KeepsEndsAndRealBends) {
    const std::vector<PlanePoint> line{{0, 0}, {5, 0.4}, {10, 0}, {10, 6}, {9.6, 8}, {10, 10}};
    const auto few = simplified(line, 0.5);
    EXPECT_EQ(few, (std::vector<PlanePoint>{{0, 0}, {10, 0}, {10, 10}}));
    EXPECT_EQ(simplified(line, 0.1).size(), line.size());
    EXPECT_EQ(simplified(std::vector<PlanePoint>{{1, 2}}, 1).size(), 1U);
}

TEST(Extended, GoesStraightOnAtBothEnds) {
    const auto longer = extended(std::vector<PlanePoint>{{0, 0}, {10, 0}, {10, 10}}, 3);
    EXPECT_EQ(longer, (std::vector<PlanePoint>{{-3, 0}, {10, 0}, {10, 13}}));
    const auto doubled = extended(std::vector<PlanePoint>{{0, 0}, {0, 0}, {0, 10}, {0, 10}}, 3);
    EXPECT_EQ(doubled.front(), (PlanePoint{0, -3}));
    EXPECT_EQ(doubled.back(), (PlanePoint{0, 13}));
}

TEST(CornersAround, LieBeyondBothEndsAndAtBends) {
    const auto strip = corners_around(std::vector<PlanePoint>{{0, 0}, {10, 0}}, 1);
    ASSERT_EQ(strip.size(), 4U);
    for (const auto& corner : strip) {
        EXPECT_NEAR(std::abs(corner.east - 5), 6, 1e-9);
        EXPECT_NEAR(std::abs(corner.north), 1, 1e-9);
    }
    const auto bent = corners_around(std::vector<PlanePoint>{{0, 0}, {10, 0}, {10, 10}}, 1);
    EXPECT_EQ(bent.size(), 6U);
    // A hair of a line is a square that lies along it.
    const auto way = way_at(30);
    for (const auto& corner :
         corners_around(std::vector<PlanePoint>{{7, 9}, PlanePoint{7, 9} + way * 1e-6}, 2)) {
        EXPECT_NEAR(std::abs(dot(corner - PlanePoint{7, 9}, way)), 2, 1e-5);
        EXPECT_NEAR(std::abs(dot(corner - PlanePoint{7, 9}, left_of(way))), 2, 1e-5);
    }
    // A line around something leaves a hole in its strip.
    const std::vector<PlanePoint> ring{{0, 0}, {10, 0}, {10, 10}, {0, 10}, {0, 0}};
    EXPECT_GE(corners_around(ring, 1).size(), 8U);
}

TEST(PointTree, FindsWhatLiesNear) {
    std::vector<PlanePoint> points;
    for (int i = 0; i < 400; ++i) {
        points.push_back({3.0 * (i % 20), 4.0 * (i / 20)});
    }
    const PointTree tree(points);
    EXPECT_EQ(tree.within({3, 4}, 3.001), (std::vector<std::uint32_t>{20, 21, 22}));
    EXPECT_EQ(tree.within({3, 4}, 3), std::vector<std::uint32_t>{21});  // nearer than, not as near as
    EXPECT_TRUE(tree.within({-50, 0}, 10).empty());
    EXPECT_EQ(tree.nearest_other(21), 3);
}

TEST(PointTree, HasNoOtherForAPointAlone) {
    EXPECT_EQ(PointTree({{1, 1}}).nearest_other(0), std::numeric_limits<double>::infinity());
    EXPECT_EQ(PointTree({{1, 1}, {1, 1}}).nearest_other(0), 0);
    EXPECT_TRUE(PointTree({}).within({0, 0}, 1).empty());
}

TEST(LineTree, FindsLinesThatComeNear) {
    std::vector<Line> lines;
    for (int row = 0; row < 30; ++row) {
        lines.push_back(made_line({{0, 4.0 * row}, {50, 4.0 * row}}));
    }
    const LineTree tree(std::move(lines));
    EXPECT_EQ(tree.within(made_line({{20, 9}, {20, 15}}), 1.5), (std::vector<std::uint32_t>{2, 3, 4}));
    EXPECT_EQ(tree.within(made_line({{20, 9}, {20, 15}}), 1), std::vector<std::uint32_t>{3});
    EXPECT_TRUE(tree.within(made_line({{60, 0}, {60, 200}}), 9).empty());
    EXPECT_NEAR(tree.line(3).distance(PlanePoint{20, 9}), 3, 1e-12);
}

// Against the distance of GEOS, which takes longer: ways in all directions among bent rows.
TEST(Obstacles, BarTheWaysThatComeTooNear) {
    std::vector<Obstacle> rows;
    for (int i = 0; i < 60; ++i) {
        const double north = 4.0 * (i % 12);
        const double east = 17.0 * (i / 12);
        rows.push_back({{east, north}, {east + 15, north + 0.7 * std::sin(i)}, 0.3 + 0.02 * i});
    }
    rows.push_back({{-5, -5}, {-5, -5}, 2});
    Obstacles obstacles(rows);
    int barred = 0;
    int ways = 0;
    for (int i = 0; i < 600; ++i, ++ways) {
        const PlanePoint a{std::fmod(i * 37.71, 95) - 8, std::fmod(i * 11.37, 55) - 8};
        const auto b = a + way_at(std::fmod(i * 41.0, 360)) * std::fmod(i * 0.613, 9);
        bool expected = false;
        for (const auto& row : rows) {
            expected = expected || made_line({a, b}).distance(made_line({row.a, row.b})) < row.clearance;
        }
        EXPECT_EQ(obstacles.bar(a, b), expected) << i;
        barred += expected ? 1 : 0;
    }
    EXPECT_GT(barred, ways / 5);
    EXPECT_LT(barred, ways * 4 / 5);
    EXPECT_TRUE(obstacles.bar({-5, -3.5}, {-5, -3.5}));
    EXPECT_FALSE(Obstacles({}).bar({0, 0}, {9, 9}));
}

}  // namespace
}  // namespace pipward::math
