// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/season_request.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/season/words.h"

namespace pipward::operation::detail {
namespace {

struct Request : SeasonRequest {
    std::vector<int> lead;
    std::optional<int> training_seasons;
    bool per_accession = false;
    bool keep = true;
};

Sentence summary_of(const std::vector<bloom::SkillScore>& scores) {
    const auto chosen = std::ranges::find_if(scores, [](const bloom::SkillScore& score) {
        return score.chosen && score.accession.empty() && !score.lead_days;
    });
    if (chosen == scores.end()) {
        return say("No method was chosen: too few seasons could be scored.");
    }
    return say("Used: {}, RMSE {:.1f} days in {} seasons left out of the fit, weather known.",
               season::method_words(chosen->method), chosen->rmse, chosen->seasons);
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto step = step_of(lent);
    const auto past = season::read_past(place, step);
    const auto scores = season::score_past(
        place, past, {request.lead, request.training_seasons, request.per_accession}, step);
    Outcome outcome;
    outcome.tables = {bloom_skill_table.of(scores)};
    outcome.findings = std::move(place.findings);
    outcome.summary = summary_of(scores);
    keep_results(request.book, request.keep, outcome, lent);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> bloom_skill() {
    return declare<Request>(
        {.about = {"bloom-skill", "Bloom forecast skill", "Bloom",
                   "Shows how well each method forecasts full bloom in this orchard: every past season is "
                   "left out in turn, forecast from the others and compared with the observations."},
         .parameters = season_parameters<Request>(
             {parameter(&Request::lead, "lead", "Leads",
                        "Score true forecasts as well, issued this many days before bloom.")
                  .in("d")
                  .between(0, 120),
              parameter(&Request::training_seasons, "training-seasons", "Training seasons",
                        "Number of seasons to fit on, as in a young orchard; all but one where not given.")
                  .between(1, 200),
              parameter(&Request::per_accession, "per-accession", "Per accession",
                        "Whether each accession gets scores of its own besides those of all together."),
              keep_parameter(&Request::keep)}),
         .results = {bloom_skill_table.shape()},
         .examples = {{"How far off, with the weather known and a fortnight ahead.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"lead", "14"}, {"keep", "no"}}},
                      {"What five seasons of observations are worth, accession by accession.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"training-seasons", "5"},
                        {"per-accession", "yes"},
                        {"keep", "no"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
