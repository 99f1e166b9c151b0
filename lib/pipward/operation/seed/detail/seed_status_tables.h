// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/operation/declare/column_of.h"
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

extern const TableOf<CrossRow> seed_status_table;
extern const TableOf<LotRow> seed_on_hand_table;
extern const TableOf<FigureRow> seed_figures_table;

}  // namespace pipward::operation::detail
