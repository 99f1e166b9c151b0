// SPDX-License-Identifier: MIT
#include "pipward/place/planting_walk.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace pipward::place {
namespace {

RowPosition at(std::string row, int position, PositionState state = PositionState::vacant) {
    RowPosition made;
    made.block = "N";
    made.row = std::move(row);
    made.position = position;
    made.state = state;
    made.at = {0.5 * position, 0, {}};
    return made;
}

std::vector<RowPosition> row_of(int positions) {
    std::vector<RowPosition> all;
    for (int i = 1; i <= positions; ++i) {
        all.push_back(at("1", i));
    }
    return all;
}

TreeRow row_with_spacing(double metres) {
    TreeRow row;
    row.block = "N";
    row.name = "1";
    row.spacing = Metres{metres};
    return row;
}

std::vector<int> numbers(const std::vector<RowPosition>& positions) {
    std::vector<int> all;
    std::ranges::transform(positions, std::back_inserter(all), &RowPosition::position);
    return all;
}

TEST(KeepApart, TakesEveryPositionWhereTheyStandFarEnough) {
    const std::vector rows{row_with_spacing(0.5)};
    EXPECT_EQ(keep_apart(row_of(6), rows, Metres{0}).size(), 6U);
    EXPECT_EQ(keep_apart(row_of(6), rows, Metres{0.5}).size(), 6U) << "exactly the spacing is far enough";
}

TEST(KeepApart, PassesOverPositionsThatAreTooNear) {
    const std::vector rows{row_with_spacing(0.5)};
    EXPECT_EQ(numbers(keep_apart(row_of(7), rows, Metres{1.2})), (std::vector{1, 4, 7}));
}

TEST(KeepApart, KeepsClearOfTreesThatStandOrAreToStand) {
    auto positions = row_of(9);
    positions[4].state = PositionState::taken;
    positions[8].state = PositionState::reserved;
    const std::vector rows{row_with_spacing(0.5)};
    EXPECT_EQ(numbers(keep_apart(positions, rows, Metres{1})), (std::vector{1, 3, 5, 7, 9}));
}

TEST(KeepApart, NeverPutsTwoNearerThanAskedForWhateverIsTaken) {
    const std::vector rows{row_with_spacing(0.4)};
    for (unsigned pattern = 0; pattern < 256; ++pattern) {
        auto positions = row_of(8);
        std::set<int> trees;
        for (int i = 0; i < 8; ++i) {
            if ((pattern >> i) & 1U) {
                positions[static_cast<std::size_t>(i)].state = PositionState::taken;
                trees.insert(i + 1);
            }
        }
        for (const auto& position : keep_apart(positions, rows, Metres{1})) {
            for (const int tree : trees) {
                const bool is_itself = tree == position.position;
                EXPECT_TRUE(is_itself || position.state != PositionState::vacant ||
                            std::abs(tree - position.position) * 0.4 >= 1 - 1e-9)
                    << pattern;
            }
            trees.insert(position.position);
        }
    }
}

TEST(PlantingOrder, GoesToAndFroThroughTheRows) {
    std::vector<RowPosition> positions;
    for (const auto* row : {"1", "2"}) {
        for (int i = 1; i <= 3; ++i) {
            positions.push_back(at(row, i));
        }
    }
    EXPECT_EQ(numbers(in_planting_order(positions)), (std::vector{1, 2, 3, 3, 2, 1}));
}

}  // namespace
}  // namespace pipward::place
