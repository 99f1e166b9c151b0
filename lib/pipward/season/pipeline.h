// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/bloom/forward.h"
#include "pipward/bloom/skill.h"
#include "pipward/cross/meeting_skill.h"
#include "pipward/cross/plan.h"
#include "pipward/record/orchard.h"
#include "pipward/record/words.h"
#include "pipward/seed/harvest.h"

/// From an orchard's records to the season's plan, each step once. Every step adds what it notices to
/// `Place::findings`, and where a step cannot go on its Error carries all of them.
namespace pipward::season {

/// Told how far the whole work is (0 to 1) and what is being done. May throw to stop it.
using Step = std::function<void(double share, const Sentence& doing)>;
/// Tells nobody.
Step quietly();

/// From when and where a season is looked at.
struct OwnPosition {
    Day as_of;            ///< nothing observed later is used
    std::string station;  ///< its name; empty: the one with the most days
};

/// An orchard and the weather station that stands for it.
struct Place {
    Orchard orchard;                            ///< as read, gone trees and past seasons too
    Station station;                            ///< a copy of the orchard's row
    Latitude latitude;                          ///< of the station
    Hemisphere hemisphere = Hemisphere::north;  ///< by the latitude
    weather::DailySeries series;                ///< the station's days
    Day as_of;                                  ///< the Position's
    Season season;                              ///< the one that holds as_of
    Findings findings;                          ///< of reading, then of every step so far
};
/// `findings` are what reading the orchard noticed. Throws Error: usage for a station that the orchard does
/// not have, input where no station will do.
Place place_of(Orchard orchard, const OwnPosition& from, Findings findings = {});

/// What past springs tell: whole seasons up to as_of, and the full bloom noted in them.
struct Past {
    std::vector<weather::SeasonWeather> seasons;   ///< whole ones, rising
    bloom::CurvesOf curves;                        ///< of every season at every offset at which a note stands
    std::vector<bloom::Observation> observations;  ///< full bloom as the notes tell it
    std::vector<bloom::StageSeen> stages;          ///< every note that could be placed, this season's too
    std::vector<bloom::NotYet> not_yet;            ///< notes that no flower was open yet, this season's too
    bloom::Ladders ladders;  ///< how each species goes through bloom, learned from its notes
};
/// Adds to the place's findings what is odd in the weather and the notes; throws nothing of its own.
Past read_past(Place& place, const Step& step = quietly());

/// Every method held against the past seasons. Throws Error (input) where they are too few.
std::vector<bloom::SkillScore> score_past(Place& place, const Past& past, const bloom::SkillRequest& request,
                                          const Step& step = quietly());

/// The past springs forecast forward in time, from what was known on the days of issue; `past` is what they
/// are replayed from. Throws Error (input) where nothing can be learned from.
std::vector<bloom::ForwardScore> score_forward(Place& place, const Past& past,
                                               const bloom::ForwardRequest& request,
                                               const Step& step = quietly());

/// The probabilities that two accessions meet, as forecast forward in time; else as score_forward().
std::vector<cross::MeetingScore> score_meetings(Place& place, const Past& past,
                                                const bloom::ForwardRequest& request,
                                                const Step& step = quietly());

/// Which way of forecasting: a fixed one, or the one that did best on the orchard's own past.
enum class MethodChoice {
    best,             ///< the one with the smallest error on the orchard's own past
    averaged,         ///< bloom::BloomMethod::averaged, whatever the past says; below likewise
    mean_day,         ///< the long-run mean day
    recent_mean,      ///< the mean day of the last 15 springs
    degree_days,      ///< from a fixed day
    chill_then_heat,  ///< the best-fitting chill threshold and heat curve
};
/// The choices as they are typed.
std::span<const Word<MethodChoice>> words(MethodChoice);

/// The chosen method fitted; `scores` are there where they had to be made to choose.
struct Fitted {
    bloom::BloomModel model;                ///< of the chosen method
    std::vector<bloom::SkillScore> scores;  ///< empty where the method was fixed
};
/// Throws Error (input) where no note can be learned from.
Fitted fit_past(Place& place, const Past& past, MethodChoice choice, const Step& step = quietly());

/// One accession's need, and when it usually blooms by it at the station: the mean over the past seasons.
struct NeedRow {
    const bloom::BloomModel* model = nullptr;  ///< the one asked; never null
    const bloom::Need* need = nullptr;         ///< one of the model's; never null
    std::optional<Day> usual_full_bloom;       ///< its day and month; the year is the last past season's
};
/// Every accession's need, and its usual full bloom over the past seasons at the station.
std::vector<NeedRow> need_rows(const Place& place, const Past& past, const bloom::BloomModel& model);

/// This season's bloom. Throws Error (input) where as_of lies beyond the season, or the orchard has no
/// weather of it.
bloom::BloomForecast forecast_season(Place& place, const Past& past, const bloom::BloomModel& model,
                                     const Step& step = quietly());

/// The steps up to the forecast in one: past, fit, forecast.
struct SeasonForecast {
    Past past;                      ///< what was learned from
    Fitted fitted;                  ///< by the method chosen
    bloom::BloomForecast forecast;  ///< of the season that holds as_of; points into the place's trees
};
/// Throws Error (input) as its steps do.
SeasonForecast make_forecast(Place& place, MethodChoice choice, const Step& step = quietly());

/// Whether flowers may still be to come or to be worked in the season that holds `place.as_of`.
bool is_in_progress(const Place& place);

/// The full bloom (P10 to P90) of every living tree, by label.
std::map<std::string, seed::FullBloomSpan> full_bloom_of(const bloom::BloomForecast& forecast);

/// The full bloom of every living tree in a season as it is known at `place.as_of`, by label; of
/// a season that is over, as seen on its last day. Throws Error (input) as forecast_season().
std::map<std::string, seed::FullBloomSpan> full_bloom_known(Place place, Season season, MethodChoice method,
                                                            const Step& step = quietly());

/// How crosses are to be planned.
struct PlanWish {
    MethodChoice method = MethodChoice::best;  ///< how bloom is forecast
    cross::CrossingAssumptions assumptions{};  ///< as stated
    bool own_counts = true;  ///< whether the orchard's own counts of fruit, seed and germination move them
};

/// What the wish states; where it wants so, moved by the orchard's own counts up to a day.
cross::CrossingAssumptions assumptions_of(const PlanWish& wish, const Orchard& orchard, Day as_of);

/// The plan of the season's goals, and of the next season's. Adds its findings to the place's.
cross::SeasonPlan plan_crosses(Place& place, const bloom::BloomForecast& forecast,
                               const cross::CrossingAssumptions& assumptions, const Step& step = quietly());

}  // namespace pipward::season
