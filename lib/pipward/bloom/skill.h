// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/bloom/model.h"
#include "pipward/weather/season_weather.h"

namespace pipward::bloom {

/// How well one method forecast full bloom of seasons it had not seen. Days; bias is predicted less observed.
struct SkillScore {
    BloomMethod method = BloomMethod::averaged;  ///< the one scored
    std::string accession;                       ///< empty: all together
    std::optional<int> lead_days;                ///< empty: the weather was known
    std::optional<int> training_seasons;         ///< empty: all but the one forecast
    int seasons = 0;                             ///< forecast, each counted once
    int observations = 0;                        ///< accession-seasons scored
    double rmse = 0;                             ///< days: root of the mean squared error
    double mae = 0;                              ///< days: mean size of the error
    double bias = 0;                             ///< days; above 0: forecast too late
    double within_3_days = 0;                    ///< share of errors of at most so many days, 0..1
    double within_5_days = 0;                    ///< likewise
    double coverage_80 = 0;                      ///< share of dates inside the p10..p90 window
    bool chosen = false;                         ///< whether its method is best_method() of all scores
};

/// What is to be scored besides every method with the weather known.
struct SkillRequest {
    std::vector<int> leads;  ///< true forecasts issued so many days before bloom, besides weather known
    std::optional<int> training_seasons;  ///< learn from so many seasons, drawn in a fixed, repeatable way
    bool per_accession = false;           ///< whether each accession is scored apart as well
};

/// Leaves each season out in turn, fits on the others and forecasts it. With a lead the weather after the
/// issue day is hidden and the other seasons' remainders stand in for it; the median of the ensemble is
/// scored. An accession counts in a season only where its other seasons have notes: borrowed needs are not
/// scored, so `accessions` have no say today. With `training_seasons`, 60 draws are learned from and up to 20
/// other seasons forecast by each, weather known. No scores where the observations cover fewer than two
/// seasons. `progress` is told 0..1 and returns false to stop (Error, cancelled).
std::vector<SkillScore> score_methods(std::span<const Observation> observations, const CurvesOf& curves,
                                      std::span<const weather::SeasonWeather> seasons, Latitude latitude,
                                      std::span<const Accession> accessions, const SkillRequest& request,
                                      const std::function<bool(double)>& progress = {});

/// The method with the lowest error when the weather is known; the averaged one at a near tie or with too few
/// seasons.
BloomMethod best_method(std::span<const SkillScore> scores);

}  // namespace pipward::bloom
