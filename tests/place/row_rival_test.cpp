// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_rival.h"

#include <gtest/gtest.h>

#include <cmath>

#include "place/made_orchard.h"

namespace pipward::testing {
namespace {

using Alongs = std::vector<std::vector<double>>;

/// Rows of 40 positions, a tenth of them empty, each tree 0.1 m off at random.
Alongs rows_spaced(const std::vector<double>& spacings) {
    Alongs rows;
    Chance chance(5);
    for (const double spacing : spacings) {
        std::vector<double> row;
        for (int position = 0; position < 40; ++position) {
            if (chance.uniform() > 0.1) {
                row.push_back(position * spacing + 0.1 * chance.normal());
            }
        }
        rows.push_back(row);
    }
    return rows;
}

std::vector<place::detail::ChosenSpacing> choice(const Alongs& rows, const std::vector<double>& taken) {
    return place::detail::choose_spacings(rows, taken, 0.7, 6);
}

TEST(ChooseSpacings, LeavesRowsOfOneSpacingAsTheyAre) {
    const std::vector<double> spacings(12, 2.0);
    for (const auto& chosen : choice(rows_spaced(spacings), spacings)) {
        EXPECT_EQ(chosen.spacing, 2.0);
        EXPECT_TRUE(chosen.is_sure);
    }
}

TEST(ChooseSpacings, FindsTheSecondSpacingThatEveryOtherRowKeepsTo) {
    std::vector<double> spacings;
    for (int row = 0; row < 12; ++row) {
        spacings.push_back(row % 2 == 0 ? 2.0 : 2.5);
    }
    const auto chosen = choice(rows_spaced(spacings), std::vector<double>(12, 2.0));
    for (std::size_t row = 0; row < spacings.size(); ++row) {
        EXPECT_NEAR(chosen[row].spacing, spacings[row], 0.01 * spacings[row]) << row;
        EXPECT_TRUE(chosen[row].is_sure) << row;
    }
}

TEST(ChooseSpacings, DoesNotTakeHalfOrDoubleOfASpacingForARival) {
    auto rows = rows_spaced(std::vector<double>(12, 2.0));
    for (auto& row : rows) {  // trees between the positions, as of interplants
        row.insert(row.begin() + 10, (row[9] + row[10]) / 2);
    }
    for (const auto& chosen : choice(rows, std::vector<double>(12, 2.0))) {
        EXPECT_EQ(chosen.spacing, 2.0);
    }
}

TEST(ChooseSpacings, IsUnsureOfARowTooShortToTellWhichOfBothItHas) {
    std::vector<double> spacings;
    for (int row = 0; row < 12; ++row) {
        spacings.push_back(row % 2 == 0 ? 2.0 : 2.5);
    }
    auto rows = rows_spaced(spacings);
    rows.push_back({0, 2.2, 4.5});  // by 2 m or by 2.5 m
    spacings.push_back(2.0);
    const auto chosen = choice(rows, spacings);
    EXPECT_FALSE(chosen.back().is_sure);
    EXPECT_NEAR(chosen.back().spacing + chosen.back().other, 4.5, 0.05);
}

}  // namespace
}  // namespace pipward::testing
