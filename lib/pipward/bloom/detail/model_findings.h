// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/bloom/detail/row_fit.h"
#include "pipward/bloom/model.h"

namespace pipward::bloom::detail {

/// Departures beyond so many days look like a slip of the pen, where they are beyond what is usual as well.
inline constexpr double unlikely_days = 8;
/// Below this many seasons a model is a beginning.
inline constexpr int few_seasons = 5;

/// Unlikely notes, too few seasons, borrowed needs.
Findings model_findings(const FitTable& table, const RowFit& fitted,
                        const std::map<std::string, Need>& needs);

}  // namespace pipward::bloom::detail
