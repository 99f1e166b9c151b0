// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/bloom/skill.h"
#include "pipward/cross/plan.h"
#include "pipward/operation/common_parameters.h"
#include "pipward/operation/operation.h"
#include "pipward/operation/result_tables.h"
#include "pipward/record/words.h"
#include "pipward/seed/picking.h"

/// From the book to the plan, each step once; the season's operations are compositions of these. Every step
/// adds what it notices to `findings`, and where a step cannot go on its Error carries all of them.
namespace pipward::operation {

/// What every operation on the season asks for; requests extend it.
struct SeasonRequest {
    BookName book;
    Day as_of;
    std::string station;
};

/// The book, read and checked, and the weather station that stands for the orchard.
struct Place {
    Orchard orchard;
    Station station;
    Latitude latitude;
    Hemisphere hemisphere = Hemisphere::north;
    weather::DailySeries series;
    Day as_of;
    Season season;  ///< the one that holds as_of
    Findings findings;
};
Place read_place(const SeasonRequest& request, const Run& lent);

/// What past springs tell: whole seasons up to as_of, and the full bloom noted in them.
struct Past {
    std::vector<weather::SeasonWeather> seasons;
    bloom::CurvesOf curves;
    std::vector<bloom::Observation> observations;
    std::vector<bloom::StageSeen> stages;  ///< every note that could be placed, this season's too
};
Past read_past(Place& place, const Run& lent);

std::vector<bloom::SkillScore> score_past(Place& place, const Past& past, const bloom::SkillRequest& request,
                                          const Run& lent);

/// Which way of foretelling: a fixed one, or the one that did best on the orchard's own past.
enum class MethodChoice { best, averaged, mean_day, degree_days, chill_then_heat };
std::span<const Word<MethodChoice>> words(MethodChoice);

/// The chosen method fitted; `scores` are there where they had to be made to choose.
struct Fitted {
    bloom::BloomModel model;
    std::vector<bloom::SkillScore> scores;
};
Fitted fit_past(Place& place, const Past& past, MethodChoice choice, const Run& lent);

/// Every accession's need, and its usual full bloom over the past seasons at the station.
std::vector<NeedRow> need_rows(const Place& place, const Past& past, const bloom::BloomModel& model);

/// This season's bloom. Throws Error (input) where as_of lies beyond the season, or the book has no weather
/// of it.
bloom::BloomForecast forecast_season(Place& place, const Past& past, const bloom::BloomModel& model,
                                     const Run& lent);

/// Whether flowers may still be to come or to be worked in the season that holds `place.as_of`.
bool is_in_progress(const Place& place);

/// The full bloom (P10 to P90) of every living tree, by label.
std::map<std::string, seed::FullBloomSpan> full_bloom_of(const bloom::BloomForecast& forecast);

/// The full bloom of every living tree in a season as it is known at `place.as_of`, by label; of
/// a season that is over, as seen on its last day. Throws Error (input) as forecast_season().
std::map<std::string, seed::FullBloomSpan> full_bloom_known(Place place, Season season, MethodChoice method,
                                                            const Run& lent);

cross::SeasonPlan plan_crosses(Place& place, const bloom::BloomForecast& forecast,
                               const cross::CrossingAssumptions& assumptions, const Run& lent);

/// Writes the outcome's tables to the book where the user wants it. A dressed book is dressed anew, so that a
/// desktop shows them; where that does not work the results are kept all the same and a warning tells it.
void keep_results(const BookName& book, bool write, Outcome& outcome, const Run& lent);

/// The parameters of a SeasonRequest, then those of one's own.
template <class Request>
std::vector<Bound<Request>> season_parameters(std::vector<Bound<Request>> more) {
    std::vector<Bound<Request>> all{book_parameter(&SeasonRequest::book),
                                    as_of_parameter(&SeasonRequest::as_of),
                                    station_parameter(&SeasonRequest::station)};
    all.insert(all.end(), more.begin(), more.end());
    return all;
}

template <class Request>
Bound<Request> method_parameter(MethodChoice Request::*field) {
    return parameter(field, "method", "Method", "The way of foretelling full bloom.").advanced();
}

}  // namespace pipward::operation
