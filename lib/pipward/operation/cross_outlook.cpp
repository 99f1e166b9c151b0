// SPDX-License-Identifier: MIT
#include "pipward/operation/crossing_request.h"
#include "pipward/operation/list.h"
#include "pipward/operation/season_summary.h"

namespace pipward::operation {
namespace {

Outcome run(const CrossingRequest& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto past = read_past(place, lent);
    const auto fitted = fit_past(place, past, request.method, lent);
    const auto forecast = forecast_season(place, past, fitted.model, lent);
    const auto plan = plan_crosses(place, forecast, assumptions_of(request, place.orchard), lent);
    Outcome outcome;
    outcome.tables = {cross_outlook_table(plan)};
    outcome.findings = std::move(place.findings);
    outcome.crs = place.orchard.crs;
    outcome.summary = summary_of(plan);
    keep_results(request.book, request.write, outcome, lent);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> cross_outlook() {
    return declare<CrossingRequest>(
        {.about = {"cross-outlook", "Outlook of crosses", "Cross",
                   "Tells for every cross goal of the season whether its pollen can be on hand while the "
                   "seed parent's "
                   "flowers take it, by each way of having it, with dates, amounts, S-alleles, kinship and "
                   "the reasons."},
         .parameters = crossing_parameters(),
         .results = {cross_outlook_shape()},
         .examples = {{"The outlook of this season's crosses as seen on 20 March.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"write", "no"}}}},
         .run = run});
}

}  // namespace pipward::operation
