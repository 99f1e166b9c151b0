// SPDX-License-Identifier: MIT
#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/bloom_skill_tables.h"
#include "pipward/operation/season/detail/season_request.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/paper/skill_sheet.h"
#include "pipward/season/words.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

struct Request : SeasonRequest {
    bool forward = true;
    std::string issued_on;
    std::optional<int> first_season;
    bool pairs = false;
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

/// Each is a forecast of every accession in every season.
constexpr std::size_t most_forecasts = 24;

template <class Value>
std::vector<Value> each_once(std::vector<Value> values) {
    std::vector<Value> kept;
    for (auto& value : values) {
        if (std::ranges::find(kept, value) == kept.end()) {
            kept.push_back(std::move(value));
        }
    }
    return kept;
}

std::optional<Finding> too_many(const std::string& key, std::size_t number) {
    if (number <= most_forecasts) {
        return std::nullopt;
    }
    return about_parameter(key, std::to_string(number),
                           say("{} different ones are more than can be scored in one run.", number),
                           say("Give at most {}.", most_forecasts));
}

Findings check(const Request& request) {
    Findings findings;
    const auto days =
        request.issued_on.empty() ? std::vector<bloom::DayOfYear>{} : read_issue_days(request.issued_on);
    if (!days) {
        findings.push_back(about_parameter("on", request.issued_on, say("These are not days of a year."),
                                           say("Write month and day, with commas between: 02-15,03-01.")));
    }
    for (auto& finding : {too_many("on", days ? each_once(*days).size() : 0),
                          too_many("lead", each_once(request.lead).size())}) {
        if (finding) {
            findings.push_back(*finding);
        }
    }
    return findings;
}

bloom::ForwardRequest forward_request(const Request& request, Hemisphere hemisphere) {
    return {request.issued_on.empty() ? usual_issue_days(hemisphere)
                                      : each_once(*read_issue_days(request.issued_on)),
            request.first_season,
            {}};
}

/// Steps of one part of the work, within its share of the whole.
season::Step within(const season::Step& whole, double from, double to) {
    return
        [&whole, from, to](double share, const Sentence& words) { whole(from + (to - from) * share, words); };
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto step = step_of(lent);
    const auto forward_step = within(step, 0.75, 0.9);  // scoring the seasons left out ends at the first
    const auto meeting_step = within(step, 0.9, 1);
    const auto past = season::read_past(place, step);
    const auto forward = forward_request(request, place.hemisphere);
    const auto scores = season::score_past(
        place, past, {each_once(request.lead), request.training_seasons, request.per_accession}, step);
    Outcome outcome;
    using Forward = std::vector<bloom::ForwardScore>;
    using Meetings = std::vector<cross::MeetingScore>;
    const auto chosen = bloom::best_method(scores);
    const auto ahead =
        request.forward ? season::score_forward(place, past, forward, forward_step) : Forward{};
    outcome.tables = {
        bloom_skill_table(ahead, chosen), bloom_left_out_table.of(scores),
        meeting_skill_table.of(request.pairs ? season::score_meetings(place, past, forward, meeting_step)
                                             : Meetings{}),
        forecast_place_table(ahead, chosen)};
    outcome.files = {{"bloom-skill.html", "text/html",
                      paper::skill_sheet_html({orchard_name({}, request.book), place.as_of, chosen, ahead},
                                              lent.wording)}};
    outcome.findings = std::move(place.findings);
    outcome.summary = summary_of(scores);
    keep_results(request.book, request.keep, outcome, lent);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> bloom_skill() {
    return declare<Request>(
        {.about =
             {"bloom-skill", "Bloom forecast skill", "Bloom",
              "Shows how well each method forecasts bloom in this orchard: every past spring is forecast "
              "on days of the calendar from what was known by then and compared with the observations. "
              "Besides, every season is left out in turn and forecast from all others. Makes a sheet to "
              "print, in whose appendix the observed days stand within their forecasts."},
         .parameters = season_parameters<Request>(
             {parameter(&Request::forward, "forward", "Forward in time",
                        "Whether to forecast each past spring from earlier springs alone."),
              parameter(&Request::issued_on, "on", "Issued on",
                        "Days of the year on which forecasts are made, as 02-15,03-01; where not given, from "
                        "mid-February to mid-April, in the south half a year later."),
              parameter(&Request::first_season, "first-season", "First season",
                        "The first spring forecast forward in time; where not given, the sixth one with "
                        "observations.")
                  .between(1800, 2200),
              parameter(&Request::pairs, "pairs", "Pairs",
                        "Whether to score the probabilities that two accessions meet as well."),
              parameter(&Request::lead, "lead", "Leads",
                        "Score true forecasts as well, issued this many days before bloom.")
                  .in("d")
                  .between(0, 120),
              parameter(&Request::training_seasons, "training-seasons", "Training seasons",
                        "Number of seasons to fit on, as in a young orchard; all but one where not given.")
                  .between(1, 200),
              parameter(&Request::per_accession, "per-accession", "Per accession",
                        "Whether each accession gets scores of its own besides those of all together."),
              keep_parameter(&Request::keep)}),
         .results = {bloom_skill_shape(), bloom_left_out_table.shape(), meeting_skill_table.shape(),
                     forecast_place_shape()},
         .examples = {{"How far off on the first of March and of April, and how well meetings are forecast.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"on", "03-01,04-01"},
                        {"pairs", "yes"},
                        {"keep", "no"}}},
                      {"How far off, with the weather known and a fortnight ahead.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"forward", "no"},
                        {"lead", "14"},
                        {"keep", "no"}}},
                      {"What five seasons of observations are worth, accession by accession.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"forward", "no"},
                        {"training-seasons", "5"},
                        {"per-accession", "yes"},
                        {"keep", "no"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
