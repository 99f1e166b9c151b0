// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/detail/tree_choice.h"
#include "pipward/operation/place/tree_reading.h"
#include "pipward/place/address.h"
#include "pipward/place/named_place.h"
#include "pipward/place/sheet_walk.h"
#include "pipward/place/walk.h"
#include "pipward/place/walk_end.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

struct Request : TreeChoice {
    BookName book;
    std::string from;
    std::string to;
    bool back = false;
    bool alleys = true;
    Metres gap{0};
    Metres beside{1};
    Day as_of;
};

struct StopRow {
    int order = 0;
    const Tree* tree = nullptr;
    const place::WalkLeg* leg = nullptr;
    double walked = 0;
    Sentence address{};
    Sentence work{};
    Sentence from{};
};

using enum CellType;

const std::vector<ColumnOf<StopRow>>& walk_columns() {
    static const std::vector<ColumnOf<StopRow>> columns{
        {{"order", whole, "", "Order", "1 for the first tree of the walk."},
         [](const StopRow& r) { return whole_cell(r.order); }},
        {{"label", text, "", "Label", "What stands on the tree's tag."},
         [](const StopRow& r) { return text_cell(r.tree->label); }},
        {{"accession", text, "", "Accession", "What the tree is."},
         [](const StopRow& r) { return cell(r.tree->accession); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const StopRow& r) { return text_cell(r.address); }},
        {{"distance_m", number, "m", "From the last", "How far to walk from the stop before, or the start."},
         [](const StopRow& r) { return number_cell(r.leg->metres, 1); }},
        {{"walked_m", number, "m", "Walked", "How far the walk is up to here."},
         [](const StopRow& r) { return number_cell(r.walked, 1); }},
        {{"side", text, "", "Side", "The side of the row from which the tree is worked."},
         [](const StopRow& r) { return text_cell(r.leg->side); }},
        {{"alley", text, "", "Alley", "The alley in which one stands."},
         [](const StopRow& r) { return text_cell(r.leg->alley); }},
        {{"work", text, "", "Work", "What the plan asks for there, where trees were chosen by their tasks."},
         [](const StopRow& r) { return text_cell(r.work); }},
    };
    return columns;
}

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
        {{"distance_m", number, "m", "Distance", "How far it is."},
         [](const StopRow& r) { return number_cell(r.leg->metres, 1); }},
    };
    return columns;
}

TableShape walk_shape() {
    return shape_of<StopRow>({"walk", "Walk", "The trees in the order in which to visit them.", true, {}},
                             walk_columns());
}

TableShape leg_shape() {
    auto shape = shape_of<StopRow>(
        {"walk_leg", "Way of the walk", "The way from each stop to the next, along the alleys.", false, {}},
        leg_columns());
    shape.has_lines = true;
    return shape;
}

Findings check(const Request& request) {
    Findings findings;
    if (request.is_empty()) {
        findings.push_back(about_parameter("trees", "", say("Nothing says which trees to visit."),
                                           say("Give labels with trees, or choose by of-accession, of-block, "
                                               "purpose, tasks-on or urgency.")));
    }
    if (request.back && !request.to.empty()) {
        findings.push_back(about_parameter("back", "yes", say("The walk cannot end in two places."),
                                           say("Leave out either end or back.")));
    }
    if (request.back && request.from.empty()) {
        findings.push_back(about_parameter("back", "yes", say("There is no start to come back to."),
                                           say("Give the start.")));
    }
    return findings;
}

void refuse_too_many(std::size_t trees) {
    if (trees > place::most_stops) {
        throw Error(Trouble::input, about_table(Level::error, "tree",
                                                say("{} trees are too many for one walk; {} is the most.",
                                                    trees, place::most_stops),
                                                say("Choose a block, an accession or fewer labels.")));
    }
}

void warn_of_barred(const place::Walk& walk, const Orchard& orchard, Findings& findings) {
    for (const auto& leg : walk.legs) {
        if (leg.through_rows) {
            findings.push_back(
                {Level::warning, "tree", leg.tree ? orchard.trees[*leg.tree].label : "", "", "",
                 say("No way round the rows leads there from the stop before it: the line goes straight."),
                 say("See whether trees of different rows stand in each other's way on the map.")});
        }
    }
}

std::vector<StopRow> rows_of(const place::Walk& walk, const Orchard& orchard,
                             const std::vector<ChosenTree>& chosen) {
    std::vector<StopRow> rows;
    double walked = 0;
    for (const auto& leg : walk.legs) {
        StopRow row{static_cast<int>(rows.size()) + 1, nullptr, &leg};
        row.walked = walked += leg.metres;
        row.from = rows.empty() ? say("start") : verbatim(rows.back().tree->label);
        if (leg.tree) {
            row.tree = &orchard.trees[*leg.tree];
            row.address = place::address_of(*row.tree, orchard.rows);
            row.work = std::ranges::find(chosen, *leg.tree, &ChosenTree::tree)->work;
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<Table> tables_of(const std::vector<StopRow>& rows) {
    Table stops{walk_shape(), {}};
    Table legs{leg_shape(), {}};
    for (const auto& row : rows) {
        if (row.tree != nullptr) {
            stops.rows.push_back(row_of(row, walk_columns()));
            stops.rows.back().at = row.tree->at;
        }
        if (row.leg->line.size() > 1) {
            legs.rows.push_back(row_of(row, leg_columns()));
            legs.rows.back().line = row.leg->line;
        }
    }
    return {std::move(stops), std::move(legs)};
}

Sentence summary_of(const place::Walk& walk, std::size_t trees) {
    if (trees == 0) {
        return say("No tree is to be visited.");
    }
    const auto way = trees == 1 ? say("1 tree, {:.0f} m to walk", walk.metres)
                                : say("{} trees, {:.0f} m to walk", trees, walk.metres);
    return walk.is_shortest ? say("{}: no order is shorter.", way) : say("{}.", way);
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = read_stands(request.book.location);
    const auto& orchard = reading.orchard;
    lent.step(0.2, say("Choosing trees"));
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto chosen =
        chosen_trees(request.book.location, orchard, request, outcome.findings, {.as_of = request.as_of});
    place::WalkWish wish;
    wish.start = place::walk_end(orchard, {"start", request.from}, outcome.findings);
    wish.end = request.back ? wish.start : place::walk_end(orchard, {"end", request.to}, outcome.findings);
    if (has_errors(outcome.findings)) {
        throw Error(Trouble::input, std::move(outcome.findings));
    }
    refuse_too_many(chosen.size());
    std::ranges::transform(chosen, std::back_inserter(wish.trees), &ChosenTree::tree);
    wish.rules = {request.beside, request.gap};
    wish.rows_bar = request.alleys;
    const auto walk =
        place::plan_walk(orchard, wish, [&](double share) { lent.step(0.3 + 0.65 * share, say("Walking")); });
    warn_of_barred(walk, orchard, outcome.findings);
    outcome.tables = tables_of(rows_of(walk, orchard, chosen));
    outcome.crs = orchard.crs;
    outcome.summary = summary_of(walk, chosen.size());
    lent.step(1.0, say("Done"));
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    std::vector<Bound<Request>> all{book_parameter(&Request::book)};
    std::ranges::copy(tree_choice_parameters(), std::back_inserter(all));
    const std::vector<Bound<Request>> own{
        walk_start_parameter(&Request::from),
        parameter(&Request::to, "end", "End",
                  "Where the walk ends, written like the start; at its last tree where left out."),
        parameter(&Request::back, "back", "Back to the start", "Whether the walk ends where it began."),
        parameter(&Request::alleys, "alleys", "Keep to the alleys",
                  "Whether rows bar the way; no for trees without wires or hedges between them."),
        parameter(&Request::gap, "gap-m", "Gap to walk through",
                  "A stretch of a row longer than this without a tree, not even a removed one, can be walked "
                  "through; 0 where no row can.")
            .in("m")
            .between(0.0, 1000.0)
            .advanced(),
        parameter(&Request::beside, "beside-m", "Distance from the row",
                  "How far from the trunks one walks; less where rows stand closer.")
            .in("m")
            .between(0.1, 10.0)
            .advanced(),
        as_of_parameter(&Request::as_of)};
    std::ranges::copy(own, std::back_inserter(all));
    return all;
}

}  // namespace

std::unique_ptr<const Operation> walk_order() {
    return declare<Request>(
        {.about =
             {"walk-order", "Order of a walk", "Trees",
              "Puts trees into an order to visit them in so that the walk is short: along the alleys, round "
              "the ends of rows only, each tree worked from whichever side is better. For up to twelve "
              "trees no order is shorter; for hundreds it is close to that. Returns the trees in order and "
              "the way as lines. Nothing is written."},
         .parameters = parameters(),
         .results = {walk_shape(), leg_shape()},
         .examples = {{"Every tree of an accession, from the gate and back.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"of-accession", "Wrenlea"},
                        {"start", "48.1335,9.3009"},
                        {"back", "yes"}}},
                      {"Three trees from the first to wherever.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"trees", "UP-03-09, LO-02-08, LO-04-11"},
                        {"start", "UP-03-09"}}},
                      {"The seedlings of a block, rows walked through.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"purpose", "seedling"},
                        {"of-block", "Upper"},
                        {"alleys", "no"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
