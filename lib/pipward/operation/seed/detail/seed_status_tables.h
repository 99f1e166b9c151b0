// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/record/table.h"
#include "pipward/seed/learning.h"
#include "pipward/seed/next_work.h"

/// Where crosses and seed lots stand, as tables.
namespace pipward::operation::detail {

struct CrossRow {
    const seed::CrossTally* tally = nullptr;
    seed::NextWork next{};
};

struct LotRow {
    const seed::LotCourse* course = nullptr;
    Day as_of{};
    double expected_share = 0;
};

struct FigureRow {
    Sentence name;
    const seed::LearnedFigure* figure = nullptr;
    double scale = 100;
    const char* unit = "%";
};

/// Seeds that have not left the lot.
int on_hand(const seed::LotCourse& course);
/// Since when the lot is there: washed, else put in the cold.
std::optional<Day> born(const seed::LotCourse& course);

TableShape seed_status_shape();
Table seed_status_table(const std::vector<CrossRow>& rows);
TableShape seed_on_hand_shape();
Table seed_on_hand_table(const std::vector<LotRow>& rows);
TableShape seed_figures_shape();
Table seed_figures_table(const std::vector<FigureRow>& rows);

}  // namespace pipward::operation::detail
