// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/paper/work_lines.h"
#include "pipward/place/walk_end.h"
#include "pipward/season/work_to_come.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request : CrossingRequest {
    int days = 1;
    std::string start;
    std::string orchard;
    std::string subtitle;
};

const std::vector<ColumnOf<season::WorkStop>>& work_columns() {
    static const std::vector<ColumnOf<season::WorkStop>> columns{
        {{"order", whole, "", "Order", "In walking order, then the indoor work."},
         [](const season::WorkStop& w) { return whole_cell(w.order); }},
        {{"kind", text, "", "Kind", "Pollen, flowers, fruit or seed."},
         [](const season::WorkStop& w) { return Cell{season::kind_words(w.item.kind)}; }},
        {{"what", text, "", "What", "What is to be done."},
         [](const season::WorkStop& w) { return Cell{w.item.title}; }},
        {{"tree", text, "", "Tree", "The tree's; unknown for indoor work."},
         [](const season::WorkStop& w) { return text_cell(w.item.tree); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const season::WorkStop& w) { return text_cell(w.address); }},
        {{"cross", text, "", "Cross", "Its code, or several."},
         [](const season::WorkStop& w) { return text_cell(w.item.cross); }},
        {{"tags", text, "", "Tags", "Tags at the branches."},
         [](const season::WorkStop& w) { return text_cell(w.item.tags); }},
        {{"lot", text, "", "With", "The pollen or the seed lot."},
         [](const season::WorkStop& w) { return text_cell(w.item.with); }},
        {{"amount", text, "", "How much", "Flowers to pollinate or to collect, pollen."},
         [](const season::WorkStop& w) { return text_cell(w.item.amount); }},
        {{"do_from", day, "", "From", "First day; unknown where any day is suitable."},
         [](const season::WorkStop& w) { return cell(w.item.from); }},
        {{"do_to", day, "", "To", "Last day; unknown where there is none."},
         [](const season::WorkStop& w) { return cell(w.item.to); }},
        {{"late", yes_no, "", "Late", "Whether that day is past."},
         [](const season::WorkStop& w) { return Cell{w.item.late}; }},
        {{"caution", text, "", "Caution", "Caution for this task."},
         [](const season::WorkStop& w) { return text_cell(w.item.mind); }},
        {{"walked_m", number, "m", "Walked", "Length of the walk up to here."},
         [](const season::WorkStop& w) { return number_cell(w.stop.walked, 1); }},
        {{"why", text, "", "Why", "Basis of the calculation."},
         [](const season::WorkStop& w) { return text_cell(w.item.why); }},
    };
    return columns;
}

constexpr TableOf<season::WorkStop> work_table{
    "work_sheet",
    "Work sheet",
    "Work of the given days, in walking order.",
    work_columns,
    [] {
        return TableView{.first = {"order", "what", "address", "do_to", "tags", "lot", "late", "walked_m"},
                         .below = {"caution", "why"}};
    },
    [](const season::WorkStop& w) { return point_of(w.stop.tree); }};

paper::WorkSheet sheet_of(const Request& request, const std::vector<season::WorkStop>& works,
                          const place::SheetWalk& walk, const Findings& findings) {
    paper::WorkSheet sheet;
    sheet.title = say("Work sheet");
    sheet.orchard_name = orchard_name(request.orchard, request.book);
    sheet.from = request.as_of;
    sheet.to = request.as_of + (request.days - 1);
    sheet.walk_metres = walk.metres;
    sheet.subtitle = request.subtitle;
    for (const auto& work : works) {
        (work.stop.tree == nullptr ? sheet.on_bench : sheet.at_trees).push_back(paper::work_line(work));
        sheet.hazards.insert(work.item.hazards.begin(), work.item.hazards.end());
    }
    for (const auto& finding : findings) {
        if (finding.level != Level::notice) {
            sheet.warnings.push_back(finding.message);
        }
    }
    return sheet;
}

Sentence summary_of(const std::vector<season::WorkStop>& works, const place::SheetWalk& walk) {
    if (works.empty()) {
        return say("Nothing is to be done.");
    }
    const auto pieces = works.size() == 1 ? say("1 task") : say("{} tasks", works.size());
    return walk.stops.empty() ? say("{}, none at a tree.", pieces)
                              : say("{}; {:.0f} m walk.", pieces, walk.metres);
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto start = place::walk_end(place.orchard, {"at", request.start}, place.findings);
    expect_no_errors(place.findings);
    const auto items = season::work_until(season::work_to_come(plan_wish(request), place, step_of(lent)),
                                          request.as_of + (request.days - 1));
    const auto walk = place::walk_to(season::trees_of(items), place.orchard, start, walking(lent));
    const auto works = season::in_walking_order(items, walk, place.orchard);
    Outcome outcome;
    outcome.tables = {work_table.of(works)};
    outcome.files = {{"work-sheet.html", "text/html",
                      paper::work_sheet_html(sheet_of(request, works, walk, place.findings), lent.wording)}};
    outcome.crs = place.orchard.crs;
    outcome.summary = summary_of(works, walk);
    outcome.findings = std::move(place.findings);
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    auto all = extended<Request>(crossing_parameters(), {}, {"keep"});
    add_sheet_parameters(all);
    return all;
}

}  // namespace

std::unique_ptr<const Operation> work_sheet() {
    return declare<Request>(
        {.about = {"work-sheet", "Work sheet", "Season",
                   "The work of a day or a week to print: the tasks at each tree in walking order, with "
                   "address, tags, lot and amount, a box to tick and space for results; then the indoor "
                   "work, and the cautions for this work."},
         .parameters = parameters(),
         .results = {work_table.shape()},
         .examples = {{"A week at the end of March, from the gate.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-28"}, {"days", "7"}, {"at", "48.1335,9.3009"}}},
                      {"A day in autumn, fruit to harvest and seed to wash.",
                       {{"book", "BOOK"}, {"as-of", "2025-09-26"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
