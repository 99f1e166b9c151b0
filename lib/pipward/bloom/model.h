// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/bloom/observation.h"
#include "pipward/bloom/wandering_level.h"

namespace pipward::bloom {

/// The ways of forecasting full bloom that are compared; the averaged one is the tool's own.
enum class BloomMethod {
    averaged,         ///< weighted average of the fixed set of one-number structures
    mean_day,         ///< the long-run mean day
    recent_mean,      ///< the mean day of the last 15 springs
    degree_days,      ///< degree-days from a fixed day
    chill_then_heat,  ///< the best-fitting chill threshold and heat curve
};
/// "averaged", "mean_day", "recent_mean", "degree_days", "chill_then_heat": as stored and typed.
std::string_view to_text(BloomMethod method);
/// All of them, in the order above.
std::span<const BloomMethod> bloom_methods();

/// On what an accession's need rests, the surest first.
enum class NeedSource {
    own_observations,  ///< bloom noted on it in a season with weather
    mid_parent,        ///< the mean of both parents' needs
    one_parent,        ///< the mean of the one known parent's need and the orchard's
    orchard_mean,      ///< nothing is known of it or its parents
};
/// The word as above: "own_observations".
std::string_view to_text(NeedSource source);

/// What one accession needs before it blooms.
struct Need {
    std::string accession;                             ///< its name
    NeedSource source = NeedSource::own_observations;  ///< own observations, or whose it borrowed
    int seasons = 0;                                   ///< seasons of its own observations
    int observations = 0;                              ///< own ones; 0 where it borrowed
    std::vector<double> amount;  ///< one number a structure of the method (heat sum, or day for the mean day)
    double sd_days = 0;      ///< of the need itself: parameter uncertainty, and borrowing where it borrowed
    double own_sd_days = 0;  ///< residual of this accession beside the season's
    std::string species{};   ///< empty where the book does not tell it
};

/// A fitted model of one method.
struct BloomModel {
    BloomMethod method = BloomMethod::averaged;  ///< the one fitted
    std::vector<double> weights;                 ///< one a structure, sum 1
    std::map<std::string, Need> needs;           ///< by accession; every accession of the book has one
    double season_sd_days = 0;                   ///< residual shared by the whole orchard in a season
    double own_sd_days = 0;                      ///< residual of an accession beside it, on the whole
    WanderingLevel drift;  ///< days: by how much springs are forecast too late, from year to year
    Findings findings;     ///< unlikely notes, borrowed needs, too few seasons
};

/// Fits `method` on the observations. Needs at least one observation; throws Error (input) otherwise.
BloomModel fit(BloomMethod method, std::span<const Observation> observations, const CurvesOf& curves,
               std::span<const Accession> accessions);

/// Full bloom by the model under one season's weather, drift aside: a fractional season day.
/// `offset` matters only to the mean day, which has no weather to feel it by.
double predict(const BloomModel& model, const Need& need, const SeasonCurves& curves, CelsiusStep offset);

/// "sigmoid heat from 60 chill portions": the structure's name in words, for tables and sheets.
Sentence structure_name(BloomMethod method, int structure);

}  // namespace pipward::bloom
