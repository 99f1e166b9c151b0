// SPDX-License-Identifier: MIT
#pragma once

#include <span>

namespace pipward::bloom::detail {

/// One departure that the fit left.
struct SpreadRow {
    int season = 0;        ///< below season_count
    double departure = 0;  ///< days, as if the row had been left out of the fit
    double trust = 1;      ///< 0..1: how surely it is no slip of the pen
};

/// What is left when the model has spoken, split in two.
struct Spread {
    double season_sd = 0;  ///< days, shared by the whole orchard in a season
    double own_sd = 0;     ///< days, of one accession beside it
    int seasons = 0;       ///< with rows
};

/// Begins at 3.5 days in all, worth three seasons (bloom models on open series leave 2.5 to 4.5 days), so
/// that a short record does not promise more than it knows. Seasons are numbered below `season_count`.
Spread season_and_own_spread(std::span<const SpreadRow> rows, int season_count);

}  // namespace pipward::bloom::detail
