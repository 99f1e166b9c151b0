// SPDX-License-Identifier: MIT
#include "pipward/season/pipeline.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "pipward/season/detail/station_choice.h"
#include "pipward/seed/learning.h"
#include "pipward/value/complaint.h"

namespace pipward::season {
namespace {

// Shares of the whole work at which each step begins; skill is the long one.
constexpr double past_begins = 0.10;
constexpr double skill_begins = 0.25;
constexpr double fit_begins = 0.75;
constexpr double forecast_begins = 0.80;
constexpr double plan_begins = 0.90;

void add(Findings& all, const Findings& more) {
    all.insert(all.end(), more.begin(), more.end());
}

/// Does a step; should it fail, its error carries what was found before as well.
template <class Work>
auto carrying(const Findings& before, Work work) {
    try {
        return work();
    } catch (const Error& error) {
        if (error.trouble() != Trouble::input) {
            throw;
        }
        auto all = before;
        add(all, error.findings());
        throw Error(Trouble::input, std::move(all));
    }
}

Error stopped(const Place& place, Finding why) {
    auto all = place.findings;
    all.push_back(std::move(why));
    return {Trouble::input, std::move(all)};
}

std::optional<Day> last_reading(const weather::DailySeries& series, Day until) {
    for (Day day = std::min(until, series.end() - 1); day >= series.first; day = day - 1) {
        if (series.at(day)) {
            return day;
        }
    }
    return std::nullopt;
}

/// Days that a record may lag behind as_of in autumn, before the first day of the new season has come in.
constexpr int late_record_days = 10;

Sentence no_temperatures(Season season, Day first, const std::optional<Day>& known) {
    return known ? say("The book has no temperatures of the {} season, which began on {}; the last day known "
                       "is {}.",
                       season.year, to_iso(first), to_iso(*known))
                 : say("The book has no temperatures of the {} season, which began on {}.", season.year,
                       to_iso(first));
}

void need_a_season_in_progress(const Place& place) {
    const Day anchor = anchor_of(place.season, place.hemisphere);
    const Day first = anchor + season_first;
    const Day last = anchor + season_last;
    if (place.as_of > last) {
        throw stopped(
            place, about_parameter("as-of", to_iso(place.as_of),
                                   say("The {} season ended on {}: nothing is left to forecast.",
                                       place.season.year, to_iso(last)),
                                   say("Give an earlier day, or one from the start of the next season on.")));
    }
    const auto reading = last_reading(place.series, place.as_of);
    if (!reading || *reading < first - late_record_days) {
        throw stopped(
            place,
            about_table(Level::error, "weather_day", no_temperatures(place.season, first, reading),
                        say("Import the station's temperatures from {} on with weather-import, or give an "
                            "as-of within the days that the book has.",
                            to_iso(first))));
    }
}

bloom::BloomMethod method_of(MethodChoice choice, const std::vector<bloom::SkillScore>& scores) {
    switch (choice) {
        case MethodChoice::mean_day:
            return bloom::BloomMethod::mean_day;
        case MethodChoice::recent_mean:
            return bloom::BloomMethod::recent_mean;
        case MethodChoice::degree_days:
            return bloom::BloomMethod::degree_days;
        case MethodChoice::chill_then_heat:
            return bloom::BloomMethod::chill_then_heat;
        case MethodChoice::best:
            return bloom::best_method(scores);
        case MethodChoice::averaged:
            break;
    }
    return bloom::BloomMethod::averaged;
}

std::optional<Day> mean_day(const bloom::BloomModel& model, const bloom::Need& need,
                            std::span<const bloom::SeasonCurves> curves, const Place& place, Season latest) {
    if (curves.empty()) {
        return std::nullopt;
    }
    double sum = 0;
    for (const auto& season : curves) {
        sum += bloom::predict(model, need, season, CelsiusStep{0});
    }
    const double mean = sum / static_cast<double>(curves.size());
    return anchor_of(latest, place.hemisphere) + static_cast<int>(std::floor(mean + 0.5));
}

bloom::ForwardGround ground_of(const Place& place, const Past& past) {
    return {place.orchard, place.station, place.latitude, place.as_of, past.seasons};
}

}  // namespace

std::span<const Word<MethodChoice>> words(MethodChoice) {
    static constexpr std::array table{
        Word<MethodChoice>{MethodChoice::best, "best",
                           "the one with the best skill in the orchard's own past seasons"},
        Word<MethodChoice>{MethodChoice::averaged, "averaged",
                           "the average of several heat and chill models"},
        Word<MethodChoice>{MethodChoice::mean_day, "mean_day",
                           "the long-term mean date, whatever the weather"},
        Word<MethodChoice>{MethodChoice::recent_mean, "recent_mean",
                           "the mean date of the last 15 springs, whatever the weather"},
        Word<MethodChoice>{MethodChoice::degree_days, "degree_days", "degree-days from a fixed day"},
        Word<MethodChoice>{MethodChoice::chill_then_heat, "chill_then_heat", "a chill threshold, then heat"},
    };
    return table;
}

Step quietly() {
    return [](double, const Sentence&) {};
}

Place place_of(Orchard orchard, const OwnPosition& from, Findings findings) {
    Place place;
    place.orchard = std::move(orchard);
    place.findings = std::move(findings);
    place.as_of = from.as_of;
    carrying(place.findings, [&] { detail::choose_station(place, from.station); });
    return place;
}

Past read_past(Place& place, const Step& step) {
    step(past_begins, say("Reading past seasons"));
    auto report = weather::past_seasons(place.series, place.hemisphere, place.as_of);
    add(place.findings, report.findings);
    Past past;
    past.seasons = std::move(report.seasons);
    const auto placed = bloom::stages_seen(place.orchard, place.station, place.hemisphere, place.as_of);
    past.curves = bloom::curves_for_observations(placed.stages, past.seasons, place.latitude);
    auto seen = bloom::observe(place.orchard, place.station, place.hemisphere, place.as_of, past.curves);
    add(place.findings, seen.findings);
    past.observations = std::move(seen.observations);
    past.stages = std::move(seen.stages);
    past.not_yet = std::move(seen.not_yet);
    past.ladders = std::move(seen.ladders);
    return past;
}

std::vector<bloom::SkillScore> score_past(Place& place, const Past& past, const bloom::SkillRequest& request,
                                          const Step& step) {
    step(skill_begins, say("Forecasting past seasons"));
    const auto progress = [&](double share) {
        step(skill_begins + share * (fit_begins - skill_begins), say("Forecasting past seasons"));
        return true;
    };
    return carrying(place.findings, [&] {
        return bloom::score_methods(past.observations, past.curves, past.seasons, place.latitude,
                                    place.orchard.accessions, request, progress);
    });
}

std::vector<bloom::ForwardScore> score_forward(Place& place, const Past& past,
                                               const bloom::ForwardRequest& request, const Step& step) {
    const auto progress = [&](double share) {
        step(fit_begins * share, say("Forecasting past seasons"));
        return true;
    };
    return carrying(place.findings, [&] {
        return bloom::forward_scores(bloom::forward_cases(ground_of(place, past), request, progress));
    });
}

std::vector<cross::MeetingScore> score_meetings(Place& place, const Past& past,
                                                const bloom::ForwardRequest& request, const Step& step) {
    const auto progress = [&](double share) {
        step(share, say("Forecasting past meetings"));
        return true;
    };
    return carrying(place.findings,
                    [&] { return cross::meeting_scores(ground_of(place, past), request, progress); });
}

Fitted fit_past(Place& place, const Past& past, MethodChoice choice, const Step& step) {
    Fitted fitted;
    if (choice == MethodChoice::best) {
        fitted.scores = score_past(place, past, {{}, {}, false, true}, step);
    }
    step(fit_begins, say("Fitting the requirements"));
    fitted.model = carrying(place.findings, [&] {
        return bloom::fit(method_of(choice, fitted.scores), past.observations, past.curves,
                          place.orchard.accessions);
    });
    add(place.findings, fitted.model.findings);
    return fitted;
}

std::vector<NeedRow> need_rows(const Place& place, const Past& past, const bloom::BloomModel& model) {
    std::vector<bloom::SeasonCurves> curves;
    for (const auto& season : past.seasons) {
        curves.push_back(bloom::season_curves(season.days, season.first, place.latitude, CelsiusStep{0}));
    }
    const Season latest = past.seasons.empty() ? place.season : past.seasons.back().season;
    std::vector<NeedRow> rows;
    for (const auto& [accession, need] : model.needs) {
        rows.push_back({&model, &need, mean_day(model, need, curves, place, latest)});
    }
    return rows;
}

bloom::BloomForecast forecast_season(Place& place, const Past& past, const bloom::BloomModel& model,
                                     const Step& step) {
    step(forecast_begins, say("Forecasting this season"));
    need_a_season_in_progress(place);
    return carrying(place.findings, [&] {
        auto current = weather::current_season(place.series, place.season, place.hemisphere, place.as_of);
        add(place.findings, current.findings);
        return bloom::forecast_bloom(
            model, {current, place.as_of, past.seasons, place.latitude, place.station, place.orchard.trees,
                    place.orchard.accessions, past.stages, past.not_yet, past.ladders});
    });
}

SeasonForecast make_forecast(Place& place, MethodChoice choice, const Step& step) {
    SeasonForecast forecast_made;
    forecast_made.past = read_past(place, step);
    forecast_made.fitted = fit_past(place, forecast_made.past, choice, step);
    forecast_made.forecast = forecast_season(place, forecast_made.past, forecast_made.fitted.model, step);
    return forecast_made;
}

bool is_in_progress(const Place& place) {
    return place.as_of <= anchor_of(place.season, place.hemisphere) + season_last;
}

std::map<std::string, seed::FullBloomSpan> full_bloom_of(const bloom::BloomForecast& forecast) {
    std::map<std::string, seed::FullBloomSpan> full;
    for (const auto& bloom : forecast.trees) {
        const auto& days = forecast.windows[bloom.window].full;
        full.emplace(bloom.tree->label, seed::FullBloomSpan{days.p10, days.p90});
    }
    return full;
}

std::map<std::string, seed::FullBloomSpan> full_bloom_known(Place place, Season season, MethodChoice method,
                                                            const Step& step) {
    place.season = season;
    place.as_of = std::min(place.as_of, anchor_of(season, place.hemisphere) + season_last);
    return full_bloom_of(make_forecast(place, method, step).forecast);
}

cross::CrossingAssumptions assumptions_of(const PlanWish& wish, const Orchard& orchard, Day as_of) {
    return wish.own_counts
               ? seed::with_learned(wish.assumptions, seed::learn(orchard, as_of, wish.assumptions))
               : wish.assumptions;
}

cross::SeasonPlan plan_crosses(Place& place, const bloom::BloomForecast& forecast,
                               const cross::CrossingAssumptions& assumptions, const Step& step) {
    step(plan_begins, say("Planning the crosses"));
    auto plan =
        carrying(place.findings, [&] { return cross::plan_season(forecast, place.orchard, assumptions); });
    add(place.findings, plan.findings);
    return plan;
}

}  // namespace pipward::season
