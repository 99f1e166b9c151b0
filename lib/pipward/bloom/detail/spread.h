// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

namespace pipward::bloom::detail {

/// One departure that the fit left.
struct SpreadRow {
    int season = 0;  ///< or a species in a season: what shares its luck
    int accession = 0;
    double departure = 0;  ///< days, as if the row had been left out of the fit
    double trust = 1;      ///< 0..1: how surely it is no slip of the pen
};

/// What is left when the model has spoken, split in two.
struct Spread {
    double season_sd = 0;           ///< days, shared by the whole orchard in a season
    double own_sd = 0;              ///< days, of one accession beside it
    std::vector<double> own_sd_of;  ///< by accession, drawn to own_sd
    int seasons = 0;                ///< with rows
};

/// Begins at 3.5 days in all, worth three seasons (bloom models on open series leave 2.5 to 4.5 days), so
/// that a short record does not promise more than it knows. Where no season has two accessions the parts
/// cannot be told apart, and the whole is shared out as it is believed to be. Seasons and accessions are
/// numbered below their counts.
Spread season_and_own_spread(std::span<const SpreadRow> rows, int season_count, int accession_count);

}  // namespace pipward::bloom::detail
