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
    double coverage_80 = 0;                      ///< share of dates inside the 80 % window, p10 to p90
    /// Days squared: mean over the seasons of the averaged method's squared error less this one's.
    double gain = 0;
    double gain_error = 0;  ///< its standard error, the seasons being independent
    bool chosen = false;    ///< whether its method is best_method() of all scores
};

/// What is to be scored besides every method with the weather known.
struct SkillRequest {
    std::vector<int> leads;  ///< true forecasts issued so many days before bloom, besides weather known
    std::optional<int> training_seasons;  ///< learn from so many seasons, drawn in a fixed, repeatable way
    bool per_accession = false;           ///< whether each accession is scored apart as well
    bool only_to_choose = false;          ///< leaves out rivals that could not be chosen on so few seasons
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

/// The averaged method, unless a rival earned its place: weather known, over ten seasons or more its error is
/// smaller by a tenth, and its gain, season by season, larger than two standard errors.
BloomMethod best_method(std::span<const SkillScore> scores);

}  // namespace pipward::bloom
