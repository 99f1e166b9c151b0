// SPDX-License-Identifier: MIT
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/operation/season/detail/plan_answer.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/season/summary.h"

namespace pipward::operation::detail {
namespace {

Outcome run(const CrossingRequest& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto step = step_of(lent);
    const auto forecast = season::make_forecast(place, request.method, step).forecast;
    const auto assumptions = season::assumptions_of(plan_wish(request), place.orchard, place.as_of);
    const auto plan = season::plan_crosses(place, forecast, assumptions, step);
    Outcome outcome;
    outcome.tables = {cross_outlook_table(plan)};
    outcome.findings = std::move(place.findings);
    outcome.crs = place.orchard.crs;
    outcome.answer = crosses_answer(plan);
    outcome.summary = season::summary_of(plan);
    keep_results(request.book, request.keep, outcome, lent);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> cross_outlook() {
    return declare<CrossingRequest>(
        {.about = {"cross-outlook", "Cross outlook", "Cross",
                   "Shows for every cross goal of the season whether its pollen can be available while the "
                   "seed parent's flowers are receptive, by each way to obtain it, with dates, amounts, "
                   "S-alleles, kinship and the reasons."},
         .parameters = crossing_parameters(),
         .results = {cross_outlook_shape()},
         .examples = {{"The outlook of this season's crosses as seen on 20 March.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"keep", "no"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
