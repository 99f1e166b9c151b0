// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/bloom/observed_stages.h"
#include "pipward/record/orchard.h"
#include "pipward/weather/season_weather.h"

/// How well bloom is forecast as a breeder lives: each spring by what earlier springs taught, on a day of the
/// calendar, the weather after it and the spring's own observations hidden. Counting back from the day that
/// came would tell a part of it.
namespace pipward::bloom {

/// A day of the calendar, whatever the year.
struct DayOfYear {
    int month = 1;  ///< 1 to 12
    int day = 1;    ///< of the month, from 1

    auto operator<=>(const DayOfYear&) const = default;
};

/// What is to be forecast, and when.
struct ForwardRequest {
    std::vector<DayOfYear> issued;       ///< days on which forecasts are made; none: nothing is scored
    std::optional<int> first_season;     ///< the first one forecast; empty: the first with five before it
    std::vector<BloomMethod> methods{};  ///< empty: all
};

/// One stage of one accession in one spring, forecast by one method, beside the day that was observed.
struct ForwardCase {
    BloomMethod method = BloomMethod::averaged;  ///< that forecast it
    Bbch stage;                                  ///< one of the window stages
    std::string accession;                       ///< its name
    std::string species;                         ///< empty where the book does not tell it
    Season season;                               ///< the one forecast
    DayOfYear issued;                            ///< when the forecast was made
    double error = 0;                            ///< days: the median forecast less the day observed
    double crps = 0;                             ///< days
    double place = 0;                            ///< share of the scenarios before the day observed, 0..1
    bool inside = false;                         ///< the day observed lies from p10 to p90, as calendar days
    std::optional<double> length_error;          ///< days from first bloom to the end, forecast less observed
};

inline constexpr int histogram_bins = 10;  ///< of ForwardScore::places, each a tenth

/// The cases of one method, stage and day of issue together. Days; bias is forecast less observed.
struct ForwardScore {
    BloomMethod method = BloomMethod::averaged;  ///< the one scored
    Bbch stage;                                  ///< one of the window stages
    std::string accession;                       ///< or a species, or empty: all together
    bool of_species = false;                     ///< whether `accession` is a species
    DayOfYear issued;                            ///< when the forecasts were made
    int springs = 0;                             ///< forecast, each counted once
    int n = 0;                                   ///< accession-springs
    double rmse = 0;                             ///< days: root of the mean squared error of the median
    double mae = 0;                              ///< days: mean size of that error
    double bias = 0;                             ///< days; above 0: forecast too late
    double crps = 0;                             ///< days: mean continuous ranked probability score
    double inside_80 = 0;                        ///< share of days from p10 to p90, 0..1
    std::optional<double> length_bias;           ///< of the cases with first bloom and end observed
    std::array<int, histogram_bins> places{};    ///< how many days fell in each tenth of the forecasts
};

/// What past springs are forecast from.
struct ForwardGround {
    const Orchard& orchard;                           ///< with all its observations
    const Station& station;                           ///< by whose height the trees' temperatures move
    Latitude latitude;                                ///< of the station
    Day as_of;                                        ///< observations after it are passed over
    std::span<const weather::SeasonWeather> seasons;  ///< whole ones, in any order
};

/// A forecast as it would have been made on a past day, and what came.
struct PastForecast {
    const BloomForecast& forecast;                          ///< of the past spring
    DayOfYear issued;                                       ///< when it was made
    const std::map<std::string, ObservedStages>& observed;  ///< by accession, in the forecast's spring
};

/// Calls `visit` with each method's forecast on each day of issue of each spring with observations.
/// `progress` is told 0..1 and returns false to stop (Error, cancelled).
void for_each_past_forecast(const ForwardGround& ground, const ForwardRequest& request,
                            const std::function<void(const PastForecast&)>& visit,
                            const std::function<bool(double)>& progress = {});

/// Every spring with observations, from the first asked for on. An accession without earlier observations is
/// forecast by what it borrows, and scored. The day observed is the mean over the accession's trees of the
/// first observation of just that stage. `progress` is told 0..1 and returns false to stop (Error,
/// cancelled).
std::vector<ForwardCase> forward_cases(const ForwardGround& ground, const ForwardRequest& request,
                                       const std::function<bool(double)>& progress = {});

/// One score a method, stage, issue day and: accession, species, all together.
std::vector<ForwardScore> forward_scores(std::span<const ForwardCase> cases);

}  // namespace pipward::bloom
