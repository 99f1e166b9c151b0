// SPDX-License-Identifier: MIT
#include "pipward/season/plan_replay.h"

#include <cmath>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/season_request.h"
#include "pipward/season/replay_summary.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request : SeasonRequest {
    season::MethodChoice method = season::MethodChoice::averaged;
    int days_between_looks = season::ReplayRequest{}.days_between_looks;
    std::optional<int> first_season;
};

const std::vector<ColumnOf<season::PlannerScore>>& planner_columns() {
    using R = const season::PlannerScore&;
    static const std::vector<ColumnOf<season::PlannerScore>> columns{
        {{"planner",
          text,
          "",
          "Planner",
          "Who works the crosses.",
          {{"as planned", "by the plan of each look, from what was known that day"},
           {"with hindsight", "by the same plan, the whole spring known beforehand"},
           {"fresh only", "with fresh pollen on the day it sheds, every day looked at"},
           {"fixed calendar", "on the usual days, whatever the spring"}}},
         [](R r) { return text_cell(cross::to_text(r.planner)); }},
        {{"springs", whole, "", "Springs", "Springs replayed."}, [](R r) { return whole_cell(r.springs); }},
        {{"crosses", whole, "", "Crosses", "Crosses of all springs together."},
         [](R r) { return whole_cell(r.crosses); }},
        {{"success", number, "0 to 1", "Success",
          "Share of the crosses of which nine flowers in ten were pollinated in time, with living pollen."},
         [](R r) { return number_cell(r.success, 3); }},
        {{"success_sd", number, "0 to 1", "Spread of success",
          "Standard deviation of that share from spring to spring."},
         [](R r) { return number_cell(r.success_sd, 3); }},
        {{"seedlings", whole, "", "Seedlings",
          "Seedlings wanted of each cross, times the share of its flowers that were pollinated in time."},
         [](R r) { return whole_cell(static_cast<int>(std::lround(r.seedlings))); }},
        {{"of_hindsight", number, "0 to 1", "Of hindsight", "These seedlings over those with hindsight."},
         [](R r) { return number_cell(r.of_hindsight, 3); }},
    };
    return columns;
}

const TableOf<season::PlannerScore> planner_table{
    "plan_replay", "Plan replay",
    "The season plan lived through in past springs, beside other ways of working.", planner_columns, [] {
        return TableView{
            .first = {"planner", "springs", "crosses", "success", "success_sd", "seedlings", "of_hindsight"}};
    }};

const std::vector<ColumnOf<cross::ReplayedCross>>& cross_columns() {
    using R = const cross::ReplayedCross&;
    static const std::vector<ColumnOf<cross::ReplayedCross>> columns{
        {{"season", whole, "", "Season", "The spring replayed."},
         [](R r) { return whole_cell(r.season.year); }},
        {{"cross", text, "", "Cross", "Code of the cross goal."}, [](R r) { return text_cell(r.cross); }},
        {{"observed", yes_no, "", "Observed",
          "Whether full bloom of all parents was noted; else the model with the weather known stands for "
          "it."},
         [](R r) { return Cell{r.observed}; }},
        {{"wanted", whole, "", "Seedlings wanted", "Of the cross."},
         [](R r) { return whole_cell(r.wanted); }},
        {{"planned", number, "0 to 1", "As planned", "Share of the flowers pollinated in time, as planned."},
         [](R r) { return number_cell(r.done[0], 3); }},
        {{"hindsight", number, "0 to 1", "With hindsight", "The same, the spring known beforehand."},
         [](R r) { return number_cell(r.done[1], 3); }},
        {{"fresh", number, "0 to 1", "Fresh only", "The same with fresh pollen only."},
         [](R r) { return number_cell(r.done[2], 3); }},
        {{"fixed", number, "0 to 1", "Fixed calendar", "The same on the usual days."},
         [](R r) { return number_cell(r.done[3], 3); }},
        {{"flips", whole, "", "Changes of way",
          "How often the plan changed the way of getting pollen before any was in hand."},
         [](R r) { return whole_cell(r.flips); }},
        {{"late", yes_no, "", "Late", "Whether work was first announced after its last day."},
         [](R r) { return Cell{r.late}; }},
    };
    return columns;
}

const TableOf<cross::ReplayedCross> cross_table{
    "plan_replay_cross", "Plan replay by cross", "One row a cross of a replayed spring.", cross_columns, [] {
        return TableView{.first = {"season", "cross", "planned", "hindsight", "fresh", "fixed", "flips"}};
    }};

const std::vector<ColumnOf<cross::Reliability>>& chance_columns() {
    using R = const cross::Reliability&;
    static const std::vector<ColumnOf<cross::Reliability>> columns{
        {{"chance_from", number, "0 to 1", "Probability, from",
          "Least probability in the row, of a tenth of the scale."},
         [](R r) { return number_cell(r.from, 1); }},
        {{"n", whole, "", "Said", "How often the plan said a probability of it, one a look and cross."},
         [](R r) { return whole_cell(r.n); }},
        {{"mean_chance", number, "0 to 1", "Mean probability", "Mean of what the plan said."},
         [](R r) { return number_cell(r.said, 3); }},
        {{"observed_share", number, "0 to 1", "Observed share", "Share in which the cross succeeded."},
         [](R r) { return number_cell(r.came, 3); }},
    };
    return columns;
}

const TableOf<cross::Reliability> chance_table{
    "plan_replay_chance", "Probabilities of the replayed plans",
    "The probability that the plan said of a cross against the share in which it succeeded.", chance_columns,
    [] {
        return TableView{.first = {"chance_from", "n", "mean_chance", "observed_share"}};
    }};

Sentence springs_words(int springs) {
    return springs == 1 ? say("1 spring") : say("{} springs", springs);
}

Sentence summary_of(const season::ReplayScore& score) {
    return say(
        "In {} the plan reached {:.0f} % of the seedlings that hindsight reaches. Crosses that changed their "
        "way: {:.0f} %. Crosses with work first announced after its last day: {}.",
        springs_words(score.planners.front().springs), 100 * score.planners.front().of_hindsight,
        100 * score.flipped, score.late);
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto replays = season::replay_springs(
        place, {{request.method}, request.days_between_looks, request.first_season}, step_of(lent));
    const auto score = season::score_replays(replays);
    Outcome outcome;
    outcome.tables = {planner_table.of(score.planners), cross_table.of(score.crosses),
                      chance_table.of(score.chances)};
    outcome.findings = std::move(place.findings);
    outcome.summary = summary_of(score);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> plan_replay() {
    return declare<Request>(
        {.about = {"plan-replay", "Plan replay", "Season",
                   "Shows what the season plan is worth in this orchard: this season's crosses are planned "
                   "in every past spring, look by look, from what was known that day, and judged by what "
                   "bloomed."},
         .parameters = season_parameters<Request>(
             {method_parameter(&Request::method),
              parameter(&Request::days_between_looks, "days-between-looks", "Days between looks",
                        "The plan is made again every so many days.")
                  .in("d")
                  .between(1, 30),
              parameter(&Request::first_season, "first-season", "First season",
                        "The first spring replayed; where not given, the fourth one with observations.")
                  .between(1800, 2200)}),
         .results = {planner_table.shape(), cross_table.shape(), chance_table.shape()},
         .examples = {{"The last spring, looked at once a month.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"first-season", "2025"},
                        {"days-between-looks", "30"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
