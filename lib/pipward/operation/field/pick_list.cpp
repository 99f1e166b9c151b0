// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/paper/work_sheet.h"
#include "pipward/place/address.h"
#include "pipward/place/sheet_walk.h"
#include "pipward/place/walk_end.h"
#include "pipward/record/orchard_index.h"
#include "pipward/season/work_to_come.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request : SeasonRequest {
    season::MethodChoice method = season::MethodChoice::best;
    int days = 7;
    std::string start;
    std::string orchard;
    std::string note;
};

struct Picking {
    std::optional<int> order{};  ///< in the walk; nothing for fruit that is not to be picked yet
    seed::TagToPick tag;
    const Tree* tree = nullptr;
    Sentence address{};
    Sentence state{};
    bool now = false;
    std::optional<double> walked{};
};

const std::vector<ColumnOf<Picking>>& pick_columns() {
    static const std::vector<ColumnOf<Picking>> columns{
        {{"order", whole, "", "Order", "Of the walk; unknown for fruit that must hang on."},
         [](const Picking& p) { return whole_cell(p.order); }},
        {{"tag", text, "", "Tag", "What hangs at the branch."},
         [](const Picking& p) { return text_cell(p.tag.work->tag); }},
        {{"label", text, "", "Label", "What stands on the tree's tag."},
         [](const Picking& p) { return text_cell(p.tag.work->tree); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const Picking& p) { return text_cell(p.address); }},
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const Picking& p) { return text_cell(p.tag.work->cross); }},
        {{"seed_parent", text, "", "Seed parent", "Its accession."},
         [](const Picking& p) {
             return p.tag.goal == nullptr ? Cell{} : text_cell(p.tag.goal->seed_parent);
         }},
        {{"flowers", whole, "", "Flowers worked", "At this tag: no more fruit can hang there."},
         [](const Picking& p) { return whole_cell(p.tag.work->flowers); }},
        {{"full_from", day, "", "Full bloom from", "P10 of the tree's full bloom."},
         [](const Picking& p) { return Cell{p.tag.bloom.early}; }},
        {{"full_to", day, "", "Full bloom to", "P90 of the tree's full bloom."},
         [](const Picking& p) { return Cell{p.tag.bloom.late}; }},
        {{"ripe_days", whole, "d", "Seed ripe after", "Days from full bloom."},
         [](const Picking& p) { return whole_cell(p.tag.days.ripe_days); }},
        {{"pick_from", day, "", "Pick from", "The seed is ripe even if the tree bloomed late."},
         [](const Picking& p) { return Cell{p.tag.days.from}; }},
        {{"pick_to", day, "", "Pick to", "After that drop, rot or theft is more likely than not."},
         [](const Picking& p) { return Cell{p.tag.days.to}; }},
        {{"state", text, "", "State", "Pick now, late, or from when on."},
         [](const Picking& p) { return Cell{p.state}; }},
        {{"walked_m", number, "m", "Walked", "How far the walk is up to here."},
         [](const Picking& p) { return number_cell(p.walked, 1); }},
        {{"mind", text, "", "Mind", "What to take care of at this very piece."},
         [](const Picking& p) { return text_cell(seed::picking_caution(p.tag)); }},
    };
    return columns;
}

TableShape pick_shape() {
    return shape_of<Picking>(
        {"pick_list",
         "Picking list",
         "Tagged branches with fruit: those to pick in walking order, then the others by day.",
         true,
         {}},
        pick_columns());
}

Sentence state_of(const seed::TagToPick& tag, Day as_of, Day last) {
    if (tag.days.to < as_of) {
        return say("late: pick at once what still hangs");
    }
    if (tag.days.from <= as_of) {
        return say("pick now");
    }
    return tag.days.from <= last ? say("pick from {} on", to_iso(tag.days.from))
                                 : say("let hang until {}", to_iso(tag.days.from));
}

Picking picking_of(const seed::TagToPick& tag, const Request& request) {
    const Day last = request.as_of + (request.days - 1);
    Picking picking;
    picking.tag = tag;
    picking.state = state_of(tag, request.as_of, last);
    picking.now = tag.days.from <= last;
    return picking;
}

void place(std::vector<Picking>& pickings, const place::SheetWalk& walk, const Orchard& orchard) {
    const OrchardIndex book(orchard);
    for (auto& picking : pickings) {
        picking.tree = book.tree(picking.tag.work->tree);
        if (picking.tree != nullptr) {
            picking.address = place::address_of(*picking.tree, orchard.rows);
        }
        const auto stop = std::ranges::find(walk.stops, picking.tree, &place::SheetWalk::Stop::tree);
        if (picking.now && stop != walk.stops.end()) {
            picking.order = static_cast<int>(stop - walk.stops.begin()) + 1;
            picking.walked = stop->walked;
        }
    }
    std::ranges::stable_sort(pickings, [](const Picking& a, const Picking& b) {
        return std::pair{!a.order, a.order} < std::pair{!b.order, b.order};
    });
}

paper::WorkLine line_of(const Picking& picking) {
    return {.title = say("Cross {}: pick the fruit", picking.tag.work->cross),
            .from = picking.tag.days.from,
            .to = picking.tag.days.to,
            .address = picking.address,
            .label = picking.tag.work->tree,
            .tags = say("Tag {}.", picking.tag.work->tag),
            .with = {},
            .amount = picking.tag.work->flowers == 1 ? say("1 flower worked")
                                                     : say("{} flowers worked", picking.tag.work->flowers),
            .mind = seed::picking_caution(picking.tag),
            .write_down = say("fruits, sound and empty seed")};
}

paper::WorkSheet sheet_of(const Request& request, const std::vector<Picking>& pickings,
                          const place::SheetWalk& walk) {
    paper::WorkSheet sheet;
    sheet.title = say("Picking list");
    sheet.orchard_name = orchard_name(request.orchard, request.book);
    sheet.from = request.as_of;
    sheet.to = request.as_of + (request.days - 1);
    sheet.walk_metres = walk.metres;
    sheet.note = request.note;
    for (const auto& picking : pickings) {
        if (picking.now) {
            sheet.at_trees.push_back(line_of(picking));
            sheet.at_trees.back().late = picking.tag.days.to < request.as_of;
        }
    }
    if (!sheet.at_trees.empty()) {
        sheet.hazards = {season::Hazard::ladders, season::Hazard::sprays, season::Hazard::seeds};
    }
    return sheet;
}

Table table_of_pickings(const std::vector<Picking>& pickings) {
    auto table = table_of<Picking>(pick_shape(), pickings, pick_columns());
    for (std::size_t i = 0; i < pickings.size(); ++i) {
        table.rows[i].at = pickings[i].tree == nullptr ? std::nullopt : pickings[i].tree->at;
    }
    return table;
}

Sentence summary_of(const std::vector<Picking>& pickings, const place::SheetWalk& walk) {
    const auto now = std::ranges::count_if(pickings, &Picking::now);
    const auto tags = pickings.size() == 1 ? say("1 tagged branch bears fruit")
                                           : say("{} tagged branches bear fruit", pickings.size());
    if (now == 0) {
        return say("{}; none is to be picked yet.", tags);
    }
    return say("{}; {} to pick, {:.0f} m to walk.", tags, now, walk.metres);
}

Outcome run(const Request& request, const Run& lent) {
    auto orchard_place = read_place(request, lent);
    const auto& orchard = orchard_place.orchard;
    const auto start = place::walk_end(orchard, {"start", request.start}, orchard_place.findings);
    if (has_errors(orchard_place.findings)) {
        throw Error(Trouble::input, orchard_place.findings);
    }
    std::vector<Picking> pickings;
    std::set<std::string> trees;
    for (const auto& tag : season::picking_to_come(request.method, orchard_place, step_of(lent))) {
        pickings.push_back(picking_of(tag, request));
        if (pickings.back().now) {
            trees.insert(tag.work->tree);
        }
    }
    const auto walk = place::walk_to(trees, orchard, start, walking(lent));
    place(pickings, walk, orchard);
    Outcome outcome;
    outcome.tables = {table_of_pickings(pickings)};
    outcome.files = {{"pick-list.html", "text/html",
                      paper::work_sheet_html(sheet_of(request, pickings, walk), lent.wording)}};
    outcome.crs = orchard.crs;
    outcome.summary = summary_of(pickings, walk);
    outcome.findings = std::move(orchard_place.findings);
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    const auto shared = season_parameters<Request>({method_parameter(&Request::method)});
    std::vector<Bound<Request>> all(shared.begin(), shared.end());
    add_sheet_parameters(all);
    return all;
}

}  // namespace

std::unique_ptr<const Operation> pick_list() {
    return declare<Request>(
        {.about = {"pick-list", "Picking list", "Seed",
                   "When the crossed fruit of every tagged branch may be picked for its seed: from the "
                   "tree's own full bloom, foretold or noted, and the days that its seed needs to ripen, "
                   "which is often before the fruit is ripe to eat. What is to be picked stands in walking "
                   "order, as a sheet to take along."},
         .parameters = parameters(),
         .results = {pick_shape()},
         .examples = {{"The last week of September 2025.",
                       {{"book", "BOOK"}, {"as-of", "2025-09-24"}, {"start", "48.1335,9.3009"}}},
                      {"What hangs in summer, and until when.", {{"book", "BOOK"}, {"as-of", "2025-07-01"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
