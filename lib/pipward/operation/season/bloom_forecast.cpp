// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/season_request.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/season/summary.h"

namespace pipward::operation::detail {
namespace {

struct Request : SeasonRequest {
    season::MethodChoice method = season::MethodChoice::best;
    bool write = true;
};

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto forecast = season::foretell(place, request.method, step_of(lent)).forecast;
    Outcome outcome;
    outcome.tables = {bloom_window_table(forecast)};
    outcome.findings = std::move(place.findings);
    outcome.crs = place.orchard.crs;
    outcome.summary = season::summary_of(forecast);
    keep_results(request.book, request.write, outcome, lent);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> bloom_forecast() {
    return declare<Request>(
        {.about =
             {"bloom-forecast", "Bloom forecast", "Bloom",
              "Foretells first bloom, full bloom and end of bloom of every living tree this season, with the "
              "odds: from the temperatures so far, the forecast days in the book, and every past season's "
              "remainder as one way that the spring may go on. Trees higher up the slope bloom later."},
         .parameters = season_parameters<Request>(
             {method_parameter(&Request::method), write_parameter(&Request::write)}),
         .results = {bloom_window_shape()},
         .examples =
             {{"This season's bloom as seen on 20 March.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"write", "no"}}},
              {"The same by degree-days alone.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"method", "degree_days"}, {"write", "no"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
