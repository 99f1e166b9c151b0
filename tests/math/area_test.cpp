// SPDX-License-Identifier: MIT
#include "pipward/math/area.h"

#include <gtest/gtest.h>

#include <cmath>

namespace pipward::math {
namespace {

using Ring = std::vector<PlanePoint>;

Ring square(double from, double to) {
    return {{from, from}, {to, from}, {to, to}, {from, to}, {from, from}};
}

OutlineFault fault(const Outline& outline) {
    const auto found = fault_of(outline);
    return found ? found->fault : throw std::runtime_error("no fault");
}

TEST(Outline, OfASquareWithAHoleIsSound) {
    EXPECT_FALSE(fault_of({square(0, 10)}));
    EXPECT_FALSE(fault_of({square(0, 10), {square(2, 4), square(6, 8)}}));
}

TEST(Outline, TellsWhereItCrossesItself) {
    const auto found = fault_of({{{0, 0}, {10, 10}, {10, 0}, {0, 10}, {0, 0}}});
    ASSERT_TRUE(found);
    EXPECT_EQ(found->fault, OutlineFault::crosses_itself);
    EXPECT_NEAR(found->at.east, 5, 1e-12);
    EXPECT_NEAR(found->at.north, 5, 1e-12);
}

TEST(Outline, TellsWhyItEnclosesNothing) {
    EXPECT_EQ(fault({{{0, 0}, {10, 0}, {10, 10}, {0, 10}}}), OutlineFault::open);
    EXPECT_EQ(fault({{{0, 0}, {10, 0}, {0, 0}}}), OutlineFault::too_few_corners);
    EXPECT_EQ(fault({{{0, 0}, {10, 0}, {10, 0}, {0, 0}}}), OutlineFault::too_few_corners);
    EXPECT_EQ(fault({{}}), OutlineFault::too_few_corners);
    EXPECT_EQ(fault({{{0, 0}, {std::nan(""), 0}, {10, 10}, {0, 0}}}), OutlineFault::no_number);
    EXPECT_EQ(fault({square(0, 10), {square(20, 30)}}), OutlineFault::outside_hole);
    EXPECT_EQ(fault({square(0, 10), {square(2, 8), square(3, 5)}}), OutlineFault::outside_hole);
    // A hole that touches the outline at two corners cuts the inside in two.
    EXPECT_EQ(
        fault({{{0, 0}, {10, 0}, {10, 10}, {0, 10}, {0, 0}}, {{{5, 0}, {7, 5}, {5, 10}, {3, 5}, {5, 0}}}}),
        OutlineFault::in_parts);
}

}  // namespace
}  // namespace pipward::math
