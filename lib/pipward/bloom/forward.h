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
#include "pipward/bloom/noted_stages.h"
#include "pipward/record/orchard.h"
#include "pipward/weather/season_weather.h"

/// How well bloom is foretold as a breeder lives: each spring by what earlier springs taught, on a day of the
/// calendar, the weather after it and the spring's own notes hidden. Counting back from the day that came
/// would tell a part of it.
namespace pipward::bloom {

/// A day of the calendar, whatever the year.
struct DayOfYear {
    int month = 1;
    int day = 1;

    auto operator<=>(const DayOfYear&) const = default;
};

struct ForwardRequest {
    std::vector<DayOfYear> issued;
    std::optional<int> first_season;  ///< the first one foretold; empty: the first with few_seasons before it
    std::vector<BloomMethod> methods;  ///< empty: all
};

/// One stage of one accession in one spring, foretold by one method, beside the day that was noted.
struct ForwardCase {
    BloomMethod method = BloomMethod::averaged;
    Bbch stage;
    std::string accession;
    std::string species;  ///< empty where the book does not tell it
    Season season;
    DayOfYear issued;
    double error = 0;                    ///< days: the median foretold less the day noted
    double crps = 0;                     ///< days
    double place = 0;                    ///< share of the scenarios before the day noted
    bool inside = false;                 ///< the day noted lies from p10 to p90, as calendar days
    std::optional<double> length_error;  ///< days from first bloom to the end, foretold less noted
};

inline constexpr int histogram_bins = 10;

/// Days; bias is foretold less noted.
struct ForwardScore {
    BloomMethod method = BloomMethod::averaged;
    Bbch stage;
    std::string accession;  ///< or a species, or empty: all together
    bool of_species = false;
    DayOfYear issued;
    int springs = 0;
    int n = 0;  ///< accession-springs
    double rmse = 0;
    double mae = 0;
    double bias = 0;
    double crps = 0;
    double inside_80 = 0;                      ///< share, 0..1
    std::optional<double> length_bias;         ///< of the cases with first bloom and end noted
    std::array<int, histogram_bins> places{};  ///< how many days noted fell in each tenth of the forecasts
};

/// What past springs are foretold from.
struct ForwardGround {
    const Orchard& orchard;
    const Station& station;
    Latitude latitude;
    Day as_of;  ///< notes after it are passed over
    std::span<const weather::SeasonWeather> seasons;
};

/// A forecast as it would have been made on a past day, and what came.
struct PastForecast {
    const BloomForecast& forecast;
    DayOfYear issued;
    const std::map<std::string, NotedStages>& noted;  ///< by accession, in the forecast's spring
};

/// Calls `visit` with each method's forecast on each day of issue of each spring with notes.
void for_each_past_forecast(const ForwardGround& ground, const ForwardRequest& request,
                            const std::function<void(const PastForecast&)>& visit,
                            const std::function<bool(double)>& progress = {});

/// Every spring with notes, from the first asked for on. An accession without earlier notes is foretold by
/// what it borrows, and scored. The day noted is the mean over the accession's trees of the first note of
/// just that stage. `progress` is told 0..1 and returns false to stop (Error, cancelled).
std::vector<ForwardCase> forward_cases(const ForwardGround& ground, const ForwardRequest& request,
                                       const std::function<bool(double)>& progress = {});

/// One score a method, stage, issue day and: accession, species, all together.
std::vector<ForwardScore> forward_scores(std::span<const ForwardCase> cases);

}  // namespace pipward::bloom
