// SPDX-License-Identifier: MIT
#include "pipward/bloom/forward.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "pipward/bloom/detail/crps.h"
#include "pipward/bloom/detail/model_findings.h"
#include "pipward/bloom/detail/scoring_progress.h"
#include "pipward/bloom/detail/window.h"
#include "pipward/math/quantile.h"
#include "pipward/record/descent.h"

namespace pipward::bloom {
namespace {

struct ForwardWork {
    const ForwardGround& ground;
    const ForwardRequest& request;
    const std::function<bool(double)>& progress;
    const std::function<void(const PastForecast&)>& visit;
    Hemisphere hemisphere;
    std::vector<BloomMethod> methods;
    StagesReport placed;
    CurvesOf curves;  // of every season at every offset with observations
    CurveStore store;
    std::map<Season, std::map<std::string, ObservedStages>> observed;
};

// The springs to forecast: observed, of whole weather, with something to learn before them.
std::vector<Season> springs_to_forecast(const ForwardWork& work) {
    std::vector<Season> springs;
    for (const auto& [season, stages] : work.observed) {
        if (work.store.weather(season) != nullptr) {
            springs.push_back(season);
        }
    }
    const auto wanted = work.request.first_season;
    const int least = wanted ? 1 : detail::few_seasons;
    springs.erase(springs.begin(), springs.begin() + std::min<std::ptrdiff_t>(least, std::ssize(springs)));
    if (wanted) {
        std::erase_if(springs, [&](Season season) { return season.year < *wanted; });
    }
    return springs;
}

std::vector<weather::SeasonWeather> seasons_before(const ForwardWork& work, Season season) {
    std::vector<weather::SeasonWeather> before;
    for (const auto& weather : work.ground.seasons) {
        if (weather.season < season) {
            before.push_back(weather);
        }
    }
    return before;
}

CurvesOf curves_before(const ForwardWork& work, Season season) {
    CurvesOf before;
    for (const auto& [key, curves] : work.curves) {
        if (key.season < season) {
            before.emplace(key, curves);
        }
    }
    return before;
}

// The day of issue in the season that blooms in `season`; nothing where it lies outside of the season.
std::optional<Day> issue_day(const ForwardWork& work, Season season, DayOfYear issued) {
    const Day first = anchor_of(season, work.hemisphere) + season_first;
    for (const int year : {season.year - 1, season.year, season.year + 1}) {
        const auto day = make_day({year, issued.month, issued.day});
        if (day && *day >= first && *day <= first + season_length - 1) {
            return day;
        }
    }
    return std::nullopt;
}

weather::CurrentSeason known_by(const weather::SeasonWeather& whole, Day day) {
    weather::CurrentSeason current{whole, 0, {}};
    const auto known = static_cast<std::size_t>(std::max(0, day - whole.first + 1));
    current.weather.days.resize(std::min(known, whole.days.size()));
    current.observed_days = static_cast<int>(current.weather.days.size());
    return current;
}

double length_of(const ObservedStages& stages) {
    return stages.at(bloom_end) - stages.at(first_bloom);
}

struct StageForecast {
    std::vector<double> sorted;  // every scenario's day
    detail::SeasonDayQuantiles quantiles;
};

std::map<Bbch, StageForecast> forecast_stages(const BloomForecast& forecast, const BloomWindow& window) {
    std::map<Bbch, StageForecast> stages;
    for (const auto stage : window_stages) {
        auto days = detail::stage_days(forecast, window, stage);
        std::ranges::sort(days);
        auto quantiles = detail::quantiles_of(days);
        stages.emplace(stage, StageForecast{std::move(days), quantiles});
    }
    return stages;
}

using SpeciesOf = std::map<std::string, std::string>;

void score_window(std::vector<ForwardCase>& cases, const PastForecast& past, const BloomWindow& window,
                  const std::string& species, const ObservedStages& observed) {
    const auto& forecast = past.forecast;
    const auto stages = forecast_stages(forecast, window);
    std::optional<double> length_error;
    if (observed.contains(first_bloom) && observed.contains(bloom_end)) {
        length_error =
            stages.at(bloom_end).quantiles.p50 - stages.at(first_bloom).quantiles.p50 - length_of(observed);
    }
    for (const auto& [stage, day] : observed) {
        const auto& [sorted, quantiles] = stages.at(stage);
        ForwardCase scored;
        scored.method = forecast.method;
        scored.stage = stage;
        scored.accession = window.accession;
        scored.species = species;
        scored.season = forecast.season;
        scored.issued = past.issued;
        scored.error = quantiles.p50 - day;
        scored.crps = detail::crps_of_sample(sorted, day);
        scored.place = detail::place_among(sorted, day);
        scored.inside = std::floor(quantiles.p10 + 0.5) <= day && day <= std::floor(quantiles.p90 + 0.5);
        scored.length_error = length_error;
        cases.push_back(std::move(scored));
    }
}

void score_forecast(std::vector<ForwardCase>& cases, const PastForecast& past, const SpeciesOf& species) {
    for (const auto& [accession, stages] : past.observed) {
        const auto window = past.forecast.of_accession.find(accession);
        if (window != past.forecast.of_accession.end()) {
            score_window(cases, past, past.forecast.windows[window->second], species.at(accession), stages);
        }
    }
}

void issue_forecasts(ForwardWork& work, const BloomModel& model, const ObservationsReport& taught,
                     Season season, std::span<const weather::SeasonWeather> past) {
    for (const auto issued : work.request.issued) {
        const auto day = issue_day(work, season, issued);
        if (!day) {
            continue;
        }
        const auto current = known_by(*work.store.weather(season), *day);
        const ForecastGround ground{current,
                                    *day,
                                    past,
                                    work.ground.latitude,
                                    work.ground.station,
                                    work.ground.orchard.trees,
                                    work.ground.orchard.accessions,
                                    {},
                                    {},
                                    taught.ladders,
                                    &work.store};
        work.visit({forecast_bloom(model, ground), issued, work.observed.at(season)});
    }
}

void forecast_spring(ForwardWork& work, Season season) {
    const auto past = seasons_before(work, season);
    const auto curves = curves_before(work, season);
    const Day eve = anchor_of(season, work.hemisphere) + season_first - 1;
    const auto seen = observe(work.ground.orchard, work.ground.station, work.hemisphere, eve, curves);
    if (seen.observations.empty() || past.empty()) {
        return;
    }
    for (const auto method : work.methods) {
        issue_forecasts(work, fit(method, seen.observations, curves, work.ground.orchard.accessions), seen,
                        season, past);
    }
}

SpeciesOf species_in(const Orchard& orchard) {
    const OrchardIndex book(orchard);
    SpeciesOf species;
    for (const auto& accession : orchard.accessions) {
        species[accession.name] = species_of(book, accession.name).value_or("");
    }
    return species;
}

std::vector<BloomMethod> methods_of(const ForwardRequest& request) {
    const auto all = bloom_methods();
    return request.methods.empty() ? std::vector<BloomMethod>(all.begin(), all.end()) : request.methods;
}

ForwardWork begin(const ForwardGround& ground, const ForwardRequest& request,
                  const std::function<void(const PastForecast&)>& visit,
                  const std::function<bool(double)>& progress) {
    static const CurvesOf none;
    const auto hemisphere = hemisphere_of(ground.latitude);
    ForwardWork work{ground,
                     request,
                     progress,
                     visit,
                     hemisphere,
                     methods_of(request),
                     stages_seen(ground.orchard, ground.station, hemisphere, ground.as_of),
                     {},
                     CurveStore(none, ground.seasons, ground.latitude),
                     {}};
    work.curves = curves_for_observations(work.placed.stages, ground.seasons, ground.latitude);
    for (auto& [spring, stages] : observed_stages(work.placed.stages, hemisphere)) {
        work.observed[spring.season].emplace(spring.accession, stages);
    }
    return work;
}

}  // namespace

void for_each_past_forecast(const ForwardGround& ground, const ForwardRequest& request,
                            const std::function<void(const PastForecast&)>& visit,
                            const std::function<bool(double)>& progress) {
    ForwardWork work = begin(ground, request, visit, progress);
    const auto springs = springs_to_forecast(work);
    for (std::size_t i = 0; i < springs.size(); ++i) {
        detail::tell_scoring(work.progress, static_cast<double>(i) / static_cast<double>(springs.size()));
        forecast_spring(work, springs[i]);
    }
}

std::vector<ForwardCase> forward_cases(const ForwardGround& ground, const ForwardRequest& request,
                                       const std::function<bool(double)>& progress) {
    const auto species = species_in(ground.orchard);
    std::vector<ForwardCase> cases;
    for_each_past_forecast(
        ground, request, [&](const PastForecast& past) { score_forecast(cases, past, species); }, progress);
    return cases;
}

}  // namespace pipward::bloom
