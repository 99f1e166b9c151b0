// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/bloom/detail/fit_table.h"
#include "pipward/bloom/detail/pooling.h"
#include "pipward/bloom/wandering_level.h"

namespace pipward::bloom::detail {

/// A method fitted on some rows of a table: numbers only, no names.
struct RowFit {
    std::vector<double> weights;     ///< one a structure, sum 1; those that cannot matter are exactly 0
    Pooled pooled;                   ///< what each accession needs, and the orchard's mean
    PoolStrength strength;           ///< how hard needs were drawn to that mean
    double season_sd_days = 0;       ///< days: residual that the orchard shares in a season
    double own_sd_days = 0;          ///< days: residual of one accession beside it
    std::vector<double> own_sd_of;   ///< days, by accession
    WanderingLevel drift;            ///< days: by how much this orchard's springs are forecast too late
    int seasons = 0;                 ///< with rows
    std::vector<int> rows;           ///< into the table
    std::vector<double> departures;  ///< by row: forecast less observed, as if the row had been left out
    std::vector<double> luck;        ///< by row: what the whole orchard departed by in that season
    std::vector<double> apart;       ///< by row: departure beside the season's luck and the accession's own
    std::vector<double> trust;       ///< by row: 0..1
    double scale = 0;                ///< days: the usual size of a departure beside the season's luck
};

/// Fits the rows named (indices into table.rows, ascending, at least one).
RowFit fit_rows(const FitTable& table, std::vector<int> rows);

/// The weighted average of the structures' days. `amounts` and `runs`: one a structure.
double weighted_day(std::span<const double> weights, std::span<const double> amounts,
                    std::span<const StructureRun> runs);

/// The day of an accession of the table in a season, its drift taken off.
double forecast_day(const RowFit& fitted, int accession, std::span<const StructureRun> runs, Season season);

/// The spread of an accession's need, days: parameter uncertainty of one with notes worth `worth`. The
/// variance of a mean drawn to the centre, own_sd^2 / (worth + pull), and that of the seasons' luck, which no
/// number of accessions averages out: season_sd^2 / seasons.
double need_sd_days(const RowFit& fitted, double worth);

}  // namespace pipward::bloom::detail
