// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_decode.h"

#include <gtest/gtest.h>

namespace pipward::place {
namespace {

std::vector<detail::PlacedPoint> decoded(const std::vector<double>& along, double noise = 0.2) {
    return detail::decode_row(along, {.origin = 0, .step = 2, .noise = noise});
}

TEST(DecodeRow, KeepsAGapAsAGap) {
    const auto points = decoded({0.1, 2.2, 7.9, 10.1});
    EXPECT_EQ(points[1].number, 1);
    EXPECT_EQ(points[2].number, 4);
    for (const auto& point : points) {
        EXPECT_GT(point.certainty, 0.99);
    }
}

TEST(DecodeRow, IsUnsureHalfwayToAGapButNotHalfwayToANeighbour) {
    const auto to_gap = decoded({0.0, 2.0, 5.0, 8.0, 10.0});
    EXPECT_LT(to_gap[2].certainty, 0.6);
    const auto closed = decoded({0.0, 2.0, 4.8, 6.0, 8.0}, 0.3);
    EXPECT_EQ(closed[2].number, 2);
    EXPECT_GT(closed[2].certainty, 0.95);
}

TEST(DecodeRow, DoubtsBothOfTwoTreesOnOneSpot) {
    const auto points = decoded({0.0, 2.0, 3.95, 4.05, 6.0, 8.0});
    EXPECT_LT(points[2].certainty, 0.9);
    EXPECT_LT(points[3].certainty, 0.9);
    EXPECT_GT(points[4].certainty, 0.99);
}

TEST(DecodeRow, DoubtsNeighboursThatMayHaveChangedPlaces) {
    const auto points = decoded({0.0, 2.9, 3.1, 6.0}, 0.5);
    EXPECT_LT(points[1].certainty, 0.9);
    EXPECT_LT(points[2].certainty, 0.9);
}

TEST(DecodeRow, NumbersNothingBeyondTheRowsEnds) {
    const auto points = detail::decode_row(std::vector{-6.0, 0.0, 2.0}, {0, 2, 0.2, 0.1, 0, 5});
    EXPECT_LT(points[0].certainty, 0.01);
    EXPECT_GT(points[1].certainty, 0.99);
    EXPECT_TRUE(detail::decode_row({}, {}).empty());
}

}  // namespace
}  // namespace pipward::place
