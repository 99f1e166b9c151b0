// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/season_request.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/season/summary.h"

namespace pipward::operation::detail {
namespace {

struct Request : SeasonRequest {
    season::MethodChoice method = season::MethodChoice::best;
    bool keep = true;
};

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto forecast = season::make_forecast(place, request.method, step_of(lent)).forecast;
    Outcome outcome;
    outcome.tables = {bloom_window_table(forecast)};
    outcome.findings = std::move(place.findings);
    outcome.crs = place.orchard.crs;
    outcome.summary = season::summary_of(forecast);
    keep_results(request.book, request.keep, outcome, lent);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> bloom_forecast() {
    return declare<Request>(
        {.about =
             {"bloom-forecast", "Bloom forecast", "Bloom",
              "Forecasts first bloom, full bloom and end of bloom of every living tree this season, with 80 "
              "% prediction intervals: from the temperatures so far, the forecast days in the book, and the "
              "rest of every past season as a member of an ensemble. Trees higher up the slope bloom later."},
         .parameters =
             season_parameters<Request>({method_parameter(&Request::method), keep_parameter(&Request::keep)}),
         .results = {bloom_window_shape()},
         .examples =
             {{"This season's bloom as seen on 20 March.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"keep", "no"}}},
              {"The same by degree-days alone.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"method", "degree_days"}, {"keep", "no"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
