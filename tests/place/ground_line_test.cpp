// SPDX-License-Identifier: MIT
#include "pipward/place/ground_line.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "testing.h"

namespace pipward::place {
namespace {

double metres_between(const GroundPoint& a, const GroundPoint& b) {
    return way_between(a.at, b.at).distance.value;
}

TEST(WayFrom, ComesToThePublishedEndOfAGeodesic) {
    for (const auto& row : testing::oracle_rows("place-geodesics.txt")) {
        const auto number = [&](std::size_t i) { return std::stod(row.at(i)); };
        const auto end = way_from({number(1), number(0)}, number(4), Metres{number(5)});
        EXPECT_LT(way_between(end, {number(3), number(2)}).distance.value, 10 * number(6)) << row.at(0);
    }
}

TEST(GroundLine, IsAsLongAsThePublishedGeodesicAndDividesItEvenly) {
    for (const auto& row : testing::oracle_rows("place-geodesics.txt")) {
        const auto number = [&](std::size_t i) { return std::stod(row.at(i)); };
        const std::vector<GroundPoint> ends{{{number(1), number(0)}}, {{number(3), number(2)}}};
        const GroundLine line(ends);
        EXPECT_NEAR(line.length().value, number(5), number(6));
        const auto middle = line.at(Metres{number(5) / 2});
        EXPECT_NEAR(metres_between(ends[0], middle), number(5) / 2, 1e-3);
        EXPECT_NEAR(metres_between(middle, ends[1]), number(5) / 2, 1e-3);
    }
}

TEST(GroundLine, PassesOverPointsThatRepeatTheOneBefore) {
    const GroundPoint here{{11.3, 48.1}};
    const GroundPoint there{{11.301, 48.1}};
    const GroundLine line(std::vector{here, here, there, there});
    EXPECT_DOUBLE_EQ(line.length().value, metres_between(here, there));
    EXPECT_EQ(GroundLine(std::vector{here, here}).length().value, 0);
    EXPECT_EQ(GroundLine({}).length().value, 0);
}

TEST(GroundLine, MeasuresTheSlopeWhereHeightsAreKnown) {
    const LonLat foot{11.3, 48.1};
    const auto top = way_from(foot, 0, Metres{100});
    const GroundLine line(std::vector<GroundPoint>{{foot, Metres{450}}, {top, Metres{460}}});
    EXPECT_NEAR(line.length().value, std::hypot(100 * (1 + 455.0 / 6371000), 10), 1e-6);
    const auto half = line.at(Metres{line.length().value / 2});
    EXPECT_NEAR(half.height->value, 455, 1e-9);
    EXPECT_NEAR(way_between(foot, half.at).distance.value, 50, 1e-6);
}

TEST(GroundLine, IgnoresAHeightThatOnlyOneEndHas) {
    const LonLat foot{11.3, 48.1};
    const auto top = way_from(foot, 0, Metres{100});
    const GroundLine line(std::vector<GroundPoint>{{foot, Metres{450}}, {top, {}}});
    EXPECT_NEAR(line.length().value, 100, 1e-6);
    EXPECT_FALSE(line.at(Metres{10}).height);
}

TEST(GroundLine, LiesBesideItselfAtTheWantedDistanceOnEveryLeg) {
    const LonLat start{11.3, 48.1};
    const auto corner = way_from(start, 80, Metres{60});
    const auto end = way_from(corner, 95, Metres{60});
    const GroundLine line(std::vector<GroundPoint>{{start}, {corner}, {end}});
    const auto beside = line.beside(Metres{4});
    ASSERT_EQ(beside.size(), 3u);
    EXPECT_NEAR(way_between(start, beside[0].at).distance.value, 4, 1e-6);
    EXPECT_NEAR(way_between(start, beside[0].at).bearing_deg, 170, 1e-4);
    EXPECT_NEAR(way_between(corner, beside[1].at).distance.value, 4 / std::cos(7.5 * M_PI / 180), 1e-4);
    const auto left = line.beside(Metres{-4});
    EXPECT_NEAR(way_between(start, left[0].at).bearing_deg, 350, 1e-4);
}

TEST(GroundLine, ToldOfAPartItHasTheCornersBetween) {
    const LonLat start{11.3, 48.1};
    const auto corner = way_from(start, 80, Metres{60});
    const auto end = way_from(corner, 95, Metres{60});
    const GroundLine line(std::vector<GroundPoint>{{start}, {corner}, {end}});
    EXPECT_EQ(line.part(Metres{10}, Metres{50}).size(), 2u);
    EXPECT_EQ(line.part(Metres{10}, Metres{70}).size(), 3u);
    EXPECT_NEAR(line.sharpest_turn_deg(), 15, 0.01);
}

}  // namespace
}  // namespace pipward::place
