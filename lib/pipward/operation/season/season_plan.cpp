// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/operation/season/detail/plan_answer.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/paper/season_sheet.h"
#include "pipward/season/summary.h"

namespace pipward::operation::detail {
namespace {

struct Request : CrossingRequest {
    std::string orchard;
    std::string subtitle;
};

MadeFile file_of(const paper::SeasonSheet& sheet, const Wording& wording) {
    return {"season-sheet.html", "text/html", paper::season_sheet_html(sheet, wording)};
}

std::vector<Bound<Request>> parameters() {
    const auto shared = crossing_parameters();
    std::vector<Bound<Request>> all(shared.begin(), shared.end());
    all.push_back(orchard_parameter(&Request::orchard));
    all.push_back(subtitle_parameter(&Request::subtitle));
    return all;
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto step = step_of(lent);
    const auto past = season::read_past(place, step);
    auto fitted = season::fit_past(place, past, request.method, step);
    if (fitted.scores.empty()) {
        fitted.scores = season::score_past(place, past, {}, step);
    }
    const auto forecast = season::forecast_season(place, past, fitted.model, step);
    const auto assumptions = season::assumptions_of(plan_wish(request), place.orchard, place.as_of);
    const auto plan = season::plan_crosses(place, forecast, assumptions, step);
    Outcome outcome;
    outcome.tables = {pollen_task_table(plan),
                      field_task_table(plan),
                      cross_outlook_table(plan),
                      bloom_window_table(forecast),
                      bloom_left_out_table.of(fitted.scores),
                      bloom_model_table.of(season::need_rows(place, past, fitted.model))};
    outcome.files = {file_of({.orchard_name = orchard_name(request.orchard, request.book),
                              .plan = &plan,
                              .forecast = &forecast,
                              .skill = fitted.scores,
                              .assumptions = assumptions,
                              .findings = place.findings,
                              .subtitle = request.subtitle},
                             lent.wording)};
    outcome.findings = std::move(place.findings);
    outcome.crs = place.orchard.crs;
    outcome.answer = plan_answer(plan);
    outcome.summary = season::summary_of(forecast) + verbatim(" ") + season::summary_of(plan);
    keep_results(request.book, request.keep, outcome, lent);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> season_plan() {
    return declare<Request>(
        {.about = {"season-plan", "Season plan", "Season",
                   "The main operation: fits on past springs, forecasts this one, assesses every wanted "
                   "cross and lists the pollen work and the field work with last safe days. Replaces the "
                   "result tables of the book in one step and makes a sheet to print.",
                   Role::plan_season},
         .parameters = parameters(),
         .results = {pollen_task_shape(), field_task_shape(), cross_outlook_shape(), bloom_window_shape(),
                     bloom_left_out_table.shape(), bloom_model_table.shape()},
         .examples = {{"The plan as seen on 20 March.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
                      {"The same for a grower who can bear more risk, the book left as it is.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"risk", "0.3"}, {"keep", "no"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
