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
    std::string subtitle;
};

const std::vector<ColumnOf<season::Harvest>>& harvest_columns() {
    static const std::vector<ColumnOf<season::Harvest>> columns{
        {{"order", whole, "", "Order", "In the walk; unknown for fruit that is not ripe."},
         [](const season::Harvest& p) { return whole_cell(p.order); }},
        {{"tag", text, "", "Tag", "Code of the tag."},
         [](const season::Harvest& p) { return text_cell(p.tag.work->tag); }},
        {{"tree", text, "", "Tree", "The tree's label."},
         [](const season::Harvest& p) { return text_cell(p.tag.work->tree); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const season::Harvest& p) { return text_cell(p.address); }},
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const season::Harvest& p) { return text_cell(p.tag.work->cross); }},
        {{"seed_parent", text, "", "Seed parent", "Its accession."},
         [](const season::Harvest& p) {
             return p.tag.goal == nullptr ? Cell{} : text_cell(p.tag.goal->seed_parent);
         }},
        {{"flowers", whole, "", "Flowers pollinated", "At this tag: there cannot be more fruit."},
         [](const season::Harvest& p) { return whole_cell(p.tag.work->flowers); }},
        {{"full_from", day, "", "Full bloom from", "P10 of the tree's full bloom."},
         [](const season::Harvest& p) { return Cell{p.tag.bloom.early}; }},
        {{"full_to", day, "", "Full bloom to", "P90 of the tree's full bloom."},
         [](const season::Harvest& p) { return Cell{p.tag.bloom.late}; }},
        {{"ripe_days", whole, "d", "Seed ripe after", "Days from full bloom."},
         [](const season::Harvest& p) { return whole_cell(p.tag.days.ripe_days); }},
        {{"harvest_from", day, "", "Harvest from", "The seed is ripe even if the tree bloomed late."},
         [](const season::Harvest& p) { return Cell{p.tag.days.from}; }},
        {{"harvest_to", day, "", "Harvest to", "After that drop, rot or theft is more likely than not."},
         [](const season::Harvest& p) { return Cell{p.tag.days.to}; }},
        {{"state", text, "", "State", "Harvest now, late, or from which day."},
         [](const season::Harvest& p) { return Cell{p.state}; }},
        {{"walked_m", number, "m", "Walked", "Length of the walk up to here."},
         [](const season::Harvest& p) { return number_cell(p.walked, 1); }},
        {{"caution", text, "", "Caution", "Caution for this task."},
         [](const season::Harvest& p) { return text_cell(seed::harvest_caution(p.tag)); }},
    };
    return columns;
}

constexpr TableOf<season::Harvest> pick_table{
    "harvest_list",
    "Harvest list",
    "Tagged branches with fruit: those to harvest in walking order, then the others by date.",
    harvest_columns,
    [] {
        return TableView{.first = {"order", "tree", "tag", "address", "cross", "harvest_from", "harvest_to",
                                   "state", "flowers", "seed_parent"},
                         .below = {"caution"}};
    },
    [](const season::Harvest& p) { return point_of(p.tree); }};

paper::WorkSheet sheet_of(const Request& request, const std::vector<season::Harvest>& harvests,
                          const place::SheetWalk& walk) {
    paper::WorkSheet sheet;
    sheet.title = say("Harvest list");
    sheet.orchard_name = orchard_name(request.orchard, request.book);
    sheet.from = request.as_of;
    sheet.to = request.as_of + (request.days - 1);
    sheet.walk_metres = walk.metres;
    sheet.subtitle = request.subtitle;
    for (const auto& harvest : harvests) {
        if (harvest.now) {
            sheet.at_trees.push_back(paper::work_line(harvest));
            sheet.at_trees.back().late = harvest.tag.days.to < request.as_of;
        }
    }
    if (!sheet.at_trees.empty()) {
        sheet.hazards = {season::Hazard::ladders, season::Hazard::sprays, season::Hazard::seeds};
    }
    return sheet;
}

Sentence summary_of(const std::vector<season::Harvest>& harvests, const place::SheetWalk& walk) {
    const auto now = std::ranges::count_if(harvests, &season::Harvest::now);
    const auto tags = harvests.size() == 1 ? say("1 tagged branch has fruit")
                                           : say("{} tagged branches have fruit", harvests.size());
    if (now == 0) {
        return say("{}; none is to be harvested yet.", tags);
    }
    return say("{}; {} to harvest, {:.0f} m walk.", tags, now, walk.metres);
}

Outcome run(const Request& request, const Run& lent) {
    auto orchard_place = read_place(request, lent);
    const auto& orchard = orchard_place.orchard;
    const auto start = place::walk_end(orchard, {"at", request.start}, orchard_place.findings);
    expect_no_errors(orchard_place.findings);
    auto harvests = season::pickings_of(season::harvest_to_come(request.method, orchard_place, step_of(lent)),
                                        {request.as_of, request.as_of + (request.days - 1)});
    const auto walk = place::walk_to(season::trees_to_pick(harvests), orchard, start, walking(lent));
    season::put_in_walking_order(harvests, walk, orchard);
    Outcome outcome;
    outcome.tables = {pick_table.of(harvests)};
    outcome.files = {{"harvest-list.html", "text/html",
                      paper::work_sheet_html(sheet_of(request, harvests, walk), lent.wording)}};
    outcome.crs = orchard.crs;
    outcome.summary = summary_of(harvests, walk);
    outcome.findings = std::move(orchard_place.findings);
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    auto all = season_parameters<Request>({method_parameter(&Request::method)});
    add_sheet_parameters(all);
    return all;
}

}  // namespace

std::unique_ptr<const Operation> harvest_list() {
    return declare<Request>(
        {.about = {"harvest-list", "Harvest list", "Seed",
                   "When the fruit of every tagged branch can be harvested for its seed: from the tree's own "
                   "full bloom, forecast or observed, and the days that its seed needs to ripen, which is "
                   "often before the fruit is ripe for consumption. The fruit to harvest is listed in "
                   "walking order, as a sheet to print."},
         .parameters = parameters(),
         .results = {pick_table.shape()},
         .examples = {{"The last week of September 2025.",
                       {{"book", "BOOK"}, {"as-of", "2025-09-24"}, {"at", "48.1335,9.3009"}}},
                      {"Fruit in summer, and when to harvest it.",
                       {{"book", "BOOK"}, {"as-of", "2025-07-01"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
