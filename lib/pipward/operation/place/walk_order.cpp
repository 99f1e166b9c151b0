// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/detail/tree_choice.h"
#include "pipward/place/misplaced.h"
#include "pipward/place/walk_end.h"
#include "pipward/place/walk_stops.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

struct Request : TreeRequest {
    std::string from;
    std::string to;
    bool back = false;
    bool alleys = true;
    Metres gap{0};
    Metres beside{1};
};

struct StopRow : place::WalkStop {
    Sentence work{};
};

using enum CellType;

const std::vector<ColumnOf<StopRow>>& walk_columns() {
    static const std::vector<ColumnOf<StopRow>> columns{
        {{"order", whole, "", "Order", "1 for the first tree of the walk."},
         [](const StopRow& r) { return whole_cell(r.order); }},
        {{"tree", text, "", "Tree", "The tree's label."},
         [](const StopRow& r) { return text_cell(r.tree->label); }},
        {{"accession", text, "", "Accession", "What the tree is."},
         [](const StopRow& r) { return cell(r.tree->accession); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const StopRow& r) { return text_cell(r.address); }},
        {{"distance_m", number, "m", "From the last stop",
          "Walking distance from the previous stop, or the start."},
         [](const StopRow& r) { return number_cell(r.leg->metres, 1); }},
        {{"walked_m", number, "m", "Walked", "Length of the walk up to here."},
         [](const StopRow& r) { return number_cell(r.walked, 1); }},
        {{"side", text, "", "Side", "The side of the row from which the tree is reached."},
         [](const StopRow& r) { return text_cell(r.leg->side); }},
        {{"alley", text, "", "Alley", "The alley of the stop."},
         [](const StopRow& r) { return text_cell(r.leg->alley); }},
        {{"work", text, "", "Work", "Tasks of the plan, where trees were chosen by their tasks."},
         [](const StopRow& r) { return text_cell(r.work); }},
    };
    return columns;
}

constexpr TableOf<StopRow> walk_table{
    "walk",
    "Walk",
    "The trees in the order in which to visit them.",
    walk_columns,
    [] {
        return TableView{.first = {"order", "tree", "accession", "address", "distance_m", "side", "alley",
                                   "work", "walked_m"}};
    },
    [](const StopRow& r) { return r.tree->at; }};

const std::vector<ColumnOf<StopRow>>& leg_columns() {
    static const std::vector<ColumnOf<StopRow>> columns{
        {{"order", whole, "", "Order", "1 for the way to the first tree."},
         [](const StopRow& r) { return whole_cell(r.order); }},
        {{"from", text, "", "From", "A tree's label, or the start."},
         [](const StopRow& r) { return text_cell(r.from); }},
        {{"to", text, "", "To", "A tree's label, or the end."},
         [](const StopRow& r) {
             return r.tree == nullptr ? text_cell(say("end")) : text_cell(r.tree->label);
         }},
        {{"distance_m", number, "m", "Distance", "Distance."},
         [](const StopRow& r) { return number_cell(r.leg->metres, 1); }},
    };
    return columns;
}

constexpr TableOf<StopRow> leg_table{"walk_leg",
                                     "Route of the walk",
                                     "The way from each stop to the next, along the alleys.",
                                     leg_columns,
                                     nullptr,
                                     nullptr,
                                     [](const StopRow& r) { return r.leg->line; }};

Findings check(const Request& request) {
    Findings findings;
    if (request.is_empty()) {
        findings.push_back(about_parameter(
            "trees", "", say("No trees to visit are given."),
            say("Give labels with trees, or choose by accessions, block, purpose, tasks-on or urgency.")));
    }
    if (request.back && !request.to.empty()) {
        findings.push_back(about_parameter("back", "yes", say("The walk cannot end in two places."),
                                           say("Leave out either end or back.")));
    }
    if (request.back && request.from.empty()) {
        findings.push_back(about_parameter("back", "yes", say("There is no start to come back to."),
                                           say("Give the start with at.")));
    }
    return findings;
}

std::vector<Table> tables_of(const std::vector<place::WalkStop>& stops,
                             const std::map<std::string, Sentence>& works) {
    std::vector<StopRow> trees;
    std::vector<StopRow> ways;
    for (const auto& stop : stops) {
        const auto work = stop.tree == nullptr ? works.end() : works.find(stop.tree->label);
        const StopRow row{stop, work == works.end() ? Sentence{} : work->second};
        if (stop.tree != nullptr) {
            trees.push_back(row);
        }
        if (stop.leg->line.size() > 1) {
            ways.push_back(row);
        }
    }
    return {walk_table.of(trees), leg_table.of(ways)};
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = book::read_stands(request.book);
    const auto& orchard = reading.orchard;
    lent.step(0.2, say("Choosing trees"));
    Outcome outcome;
    outcome.findings = reading.findings;
    add_findings(outcome, place::check_places(orchard));
    const auto works = planned_works(request);
    place::WalkWish wish;
    wish.trees = chosen_trees(orchard, request, {.as_of = request.as_of}, outcome.findings, works);
    wish.start = place::walk_end(orchard, {"at", request.from}, outcome.findings);
    wish.end = request.back ? wish.start : place::walk_end(orchard, {"end", request.to}, outcome.findings);
    expect_no_errors(outcome.findings);
    place::expect_walkable(wish.trees.size());
    wish.rules = {request.beside, request.gap};
    wish.rows_bar = request.alleys;
    const auto walk =
        place::plan_walk(orchard, wish, [&](double share) { lent.step(0.3 + 0.65 * share, say("Walking")); });
    add_findings(outcome, place::barred_legs(walk, orchard));
    outcome.tables = tables_of(place::walk_stops(walk, orchard), works);
    outcome.crs = orchard.crs;
    outcome.summary = place::walk_summary(walk, wish.trees.size());
    lent.step(1.0, say("Done"));
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    return extended<Request>(
        tree_parameters(),
        {walk_start_parameter(&Request::from),
         parameter(&Request::to, "end", "End",
                   "End of the walk, written like the start; at its last tree where left out."),
         parameter(&Request::back, "back", "Back to the start", "Whether the walk ends where it began."),
         parameter(&Request::alleys, "alleys", "Keep to the alleys",
                   "Whether rows block the way; no for trees without wires or hedges between them."),
         parameter(&Request::gap, "gap-m", "Gap to walk through",
                   "Length of a gap in a row, without even a removed tree, through which one can walk; 0 "
                   "where no row can be crossed.")
             .in("m")
             .between(0.0, 1000.0)
             .advanced(),
         parameter(&Request::beside, "beside-m", "Distance from the row",
                   "Walking distance from the trunks; less where rows stand closer.")
             .in("m")
             .between(0.1, 10.0)
             .advanced(),
         as_of_parameter(&TreeRequest::as_of)});
}

}  // namespace

std::unique_ptr<const Operation> walk_order() {
    return declare<Request>(
        {.about =
             {"walk-order", "Walking order", "Trees",
              "Orders trees for a short walk: along the alleys, round the ends of rows only, each tree "
              "reached from the better side. For up to twelve trees the order is the shortest; for hundreds "
              "it is close to that. Returns the trees in order and the way as lines. Nothing is written."},
         .parameters = parameters(),
         .results = {walk_table.shape(), leg_table.shape()},
         .examples = {{"Every tree of an accession, from the gate and back.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"accessions", "Wrenlea"},
                        {"at", "48.1335,9.3009"},
                        {"back", "yes"}}},
                      {"Three trees from the first to wherever.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"trees", "UP-03-09, LO-02-08, LO-04-11"},
                        {"at", "UP-03-09"}}},
                      {"The seedlings of a block, rows walked through.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"purpose", "seedling"},
                        {"block", "Upper"},
                        {"alleys", "no"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
