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
    bool write = true;
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
        say("{} needs fitted ({}) from {} full-bloom days in {} seasons.", fitted.model.needs.size(),
            season::method_words(fitted.model.method), past.observations.size(), past.seasons.size());
    keep_results(request.book, request.write, outcome, lent);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> bloom_fit() {
    return declare<Request>(
        {.about = {"bloom-fit", "Fit bloom needs", "Bloom",
                   "Learns from the bloom notes and the temperatures of past seasons what each accession "
                   "needs before it blooms. Accessions with few notes lean on the orchard's mean; those "
                   "without any borrow from their parents or from it."},
         .parameters = season_parameters<Request>(
             {method_parameter(&Request::method), write_parameter(&Request::write)}),
         .results = {bloom_model_table.shape()},
         .examples = {{"What each accession needs, as known in March 2026.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"write", "no"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
