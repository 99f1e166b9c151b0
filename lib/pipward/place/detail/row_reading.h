// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "pipward/place/detail/row_contest.h"
#include "pipward/place/detail/row_noise.h"
#include "pipward/place/detail/row_phase.h"
#include "pipward/place/detail/row_question.h"
#include "pipward/place/detail/row_trace.h"

/// Inside of the room: the rows of a cloud of points, before their trees are numbered.
namespace pipward::place::detail {

/// Rows that were followed, and positions along them.
struct RowReading {
    RowTrace trace{};
    std::vector<RowPhase> phases{};  ///< of each row
    std::vector<double> spacings{};  ///< metres, of each row
    std::vector<Sentence> doubts{};  ///< why no tree of the row can be numbered; empty where some can
    double spacing = 0;              ///< metres, of most
    RowNoise noise{};
    double along_noise = 0;  ///< positions
    double wander = 0;       ///< positions: by how much rows deviate from even spacing, piece by piece
};

/// Why no tree can be numbered, and what to ask or do.
struct Refusal {
    Sentence words{};
    Sentence remedy{};
    std::optional<Question> question{};
};

/// The reading is of no use where there is a refusal. `plane` holds six points or more.
std::optional<Refusal> read_rows(std::span<const math::PlanePoint> plane, const NearTrees& near, double step,
                                 const RecoveryRule& rule, RowReading& reading);

Refusal no_rows();

}  // namespace pipward::place::detail
