// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/paper/work_lines.h"
#include "pipward/place/walk_end.h"
#include "pipward/season/picking_walk.h"
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

const std::vector<ColumnOf<season::Picking>>& pick_columns() {
    static const std::vector<ColumnOf<season::Picking>> columns{
        {{"order", whole, "", "Order", "Of the walk; unknown for fruit that must hang on."},
         [](const season::Picking& p) { return whole_cell(p.order); }},
        {{"tag", text, "", "Tag", "What hangs at the branch."},
         [](const season::Picking& p) { return text_cell(p.tag.work->tag); }},
        {{"label", text, "", "Label", "What stands on the tree's tag."},
         [](const season::Picking& p) { return text_cell(p.tag.work->tree); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const season::Picking& p) { return text_cell(p.address); }},
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const season::Picking& p) { return text_cell(p.tag.work->cross); }},
        {{"seed_parent", text, "", "Seed parent", "Its accession."},
         [](const season::Picking& p) {
             return p.tag.goal == nullptr ? Cell{} : text_cell(p.tag.goal->seed_parent);
         }},
        {{"flowers", whole, "", "Flowers worked", "At this tag: no more fruit can hang there."},
         [](const season::Picking& p) { return whole_cell(p.tag.work->flowers); }},
        {{"full_from", day, "", "Full bloom from", "P10 of the tree's full bloom."},
         [](const season::Picking& p) { return Cell{p.tag.bloom.early}; }},
        {{"full_to", day, "", "Full bloom to", "P90 of the tree's full bloom."},
         [](const season::Picking& p) { return Cell{p.tag.bloom.late}; }},
        {{"ripe_days", whole, "d", "Seed ripe after", "Days from full bloom."},
         [](const season::Picking& p) { return whole_cell(p.tag.days.ripe_days); }},
        {{"pick_from", day, "", "Pick from", "The seed is ripe even if the tree bloomed late."},
         [](const season::Picking& p) { return Cell{p.tag.days.from}; }},
        {{"pick_to", day, "", "Pick to", "After that drop, rot or theft is more likely than not."},
         [](const season::Picking& p) { return Cell{p.tag.days.to}; }},
        {{"state", text, "", "State", "Pick now, late, or from when on."},
         [](const season::Picking& p) { return Cell{p.state}; }},
        {{"walked_m", number, "m", "Walked", "How far the walk is up to here."},
         [](const season::Picking& p) { return number_cell(p.walked, 1); }},
        {{"mind", text, "", "Mind", "What to take care of at this very piece."},
         [](const season::Picking& p) { return text_cell(seed::picking_caution(p.tag)); }},
    };
    return columns;
}

constexpr TableOf<season::Picking> pick_table{
    "pick_list", "Picking list",
    "Tagged branches with fruit: those to pick in walking order, then the others by day.", pick_columns,
    [](const season::Picking& p) { return point_of(p.tree); }};

paper::WorkSheet sheet_of(const Request& request, const std::vector<season::Picking>& pickings,
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
            sheet.at_trees.push_back(paper::work_line(picking));
            sheet.at_trees.back().late = picking.tag.days.to < request.as_of;
        }
    }
    if (!sheet.at_trees.empty()) {
        sheet.hazards = {season::Hazard::ladders, season::Hazard::sprays, season::Hazard::seeds};
    }
    return sheet;
}

Sentence summary_of(const std::vector<season::Picking>& pickings, const place::SheetWalk& walk) {
    const auto now = std::ranges::count_if(pickings, &season::Picking::now);
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
    expect_no_errors(orchard_place.findings);
    auto pickings = season::pickings_of(season::picking_to_come(request.method, orchard_place, step_of(lent)),
                                        {request.as_of, request.as_of + (request.days - 1)});
    const auto walk = place::walk_to(season::trees_to_pick(pickings), orchard, start, walking(lent));
    season::put_in_walking_order(pickings, walk, orchard);
    Outcome outcome;
    outcome.tables = {pick_table.of(pickings)};
    outcome.files = {{"pick-list.html", "text/html",
                      paper::work_sheet_html(sheet_of(request, pickings, walk), lent.wording)}};
    outcome.crs = orchard.crs;
    outcome.summary = summary_of(pickings, walk);
    outcome.findings = std::move(orchard_place.findings);
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    auto all = season_parameters<Request>({method_parameter(&Request::method)});
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
         .results = {pick_table.shape()},
         .examples = {{"The last week of September 2025.",
                       {{"book", "BOOK"}, {"as-of", "2025-09-24"}, {"start", "48.1335,9.3009"}}},
                      {"What hangs in summer, and until when.", {{"book", "BOOK"}, {"as-of", "2025-07-01"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
