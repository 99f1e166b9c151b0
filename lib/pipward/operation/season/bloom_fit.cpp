// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/season_request.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/season/words.h"

namespace pipward::operation::detail {
namespace {

struct Request : SeasonRequest {
    season::MethodChoice method = season::MethodChoice::best;
    bool keep = true;
};

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto step = step_of(lent);
    const auto past = season::read_past(place, step);
    const auto fitted = season::fit_past(place, past, request.method, step);
    Outcome outcome;
    outcome.tables = {bloom_model_table.of(season::need_rows(place, past, fitted.model))};
    outcome.findings = std::move(place.findings);
    outcome.summary =
        say("{} requirements fitted ({}) to {} full-bloom dates in {} seasons.", fitted.model.needs.size(),
            season::method_words(fitted.model.method), past.observations.size(), past.seasons.size());
    keep_results(request.book, request.keep, outcome, lent);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> bloom_fit() {
    return declare<Request>(
        {.about = {"bloom-fit", "Fit chill and heat requirements", "Bloom",
                   "Fits the chill and heat requirement of each accession to the bloom observations and the "
                   "temperatures of past seasons. Accessions with few observations are shrunk towards the "
                   "orchard's mean; those without any take their parents' or the orchard's mean."},
         .parameters =
             season_parameters<Request>({method_parameter(&Request::method), keep_parameter(&Request::keep)}),
         .results = {bloom_model_table.shape()},
         .examples = {{"Chill and heat requirements, as known in March 2026.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"keep", "no"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
