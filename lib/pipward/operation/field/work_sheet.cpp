// SPDX-License-Identifier: MIT
#include "pipward/paper/work_sheet.h"

#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/place/address.h"
#include "pipward/place/sheet_walk.h"
#include "pipward/place/walk_end.h"
#include "pipward/season/work_to_come.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request : CrossingRequest {
    int days = 1;
    std::string start;
    std::string orchard;
    std::string note;
};

/// One line of the sheet.
struct Work {
    int order = 0;
    season::FieldWorkItem item;
    place::SheetWalk::Stop stop{};  ///< no tree: on the bench
    Sentence address{};
};

const std::vector<ColumnOf<Work>>& work_columns() {
    static const std::vector<ColumnOf<Work>> columns{
        {{"order", whole, "", "Order", "In walking order, then the work on the bench."},
         [](const Work& w) { return whole_cell(w.order); }},
        {{"kind", text, "", "Kind", "Pollen, flowers, fruit or seed."},
         [](const Work& w) { return Cell{season::kind_words(w.item.kind)}; }},
        {{"what", text, "", "What", "What is to be done."}, [](const Work& w) { return Cell{w.item.title}; }},
        {{"label", text, "", "Label", "The tree's; unknown for work on the bench."},
         [](const Work& w) { return text_cell(w.item.tree); }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const Work& w) { return text_cell(w.address); }},
        {{"cross", text, "", "Cross", "Its code, or several."},
         [](const Work& w) { return text_cell(w.item.cross); }},
        {{"tags", text, "", "Tags", "What hangs at the branches."},
         [](const Work& w) { return text_cell(w.item.tags); }},
        {{"lot", text, "", "With", "The pollen or the seed lot."},
         [](const Work& w) { return text_cell(w.item.with); }},
        {{"amount", text, "", "How much", "Flowers to work or to gather, pollen."},
         [](const Work& w) { return text_cell(w.item.amount); }},
        {{"do_from", day, "", "From", "First day; unknown for any day."},
         [](const Work& w) { return cell(w.item.from); }},
        {{"do_to", day, "", "To", "Last day; unknown where nothing tells it."},
         [](const Work& w) { return cell(w.item.to); }},
        {{"late", yes_no, "", "Late", "Whether that day is past."},
         [](const Work& w) { return Cell{w.item.late}; }},
        {{"mind", text, "", "Mind", "What to take care of at this very piece."},
         [](const Work& w) { return text_cell(w.item.mind); }},
        {{"walked_m", number, "m", "Walked", "How far the walk is up to here."},
         [](const Work& w) { return number_cell(w.stop.walked, 1); }},
        {{"why", text, "", "Why", "What that is reckoned from."},
         [](const Work& w) { return text_cell(w.item.why); }},
    };
    return columns;
}

TableShape work_shape() {
    return shape_of<Work>(
        {"work_sheet", "Work sheet", "Work of the days asked for, in walking order.", true, {}},
        work_columns());
}

bool falls_into(const season::FieldWorkItem& item, Day last) {
    return !item.from || *item.from <= last;
}

std::vector<Work> in_walking_order(const std::vector<season::FieldWorkItem>& items, const Orchard& orchard,
                                   const place::SheetWalk& walk) {
    std::vector<Work> works;
    const auto add = [&](const season::FieldWorkItem& item, const place::SheetWalk::Stop& stop) {
        works.push_back({static_cast<int>(works.size()) + 1, item, stop,
                         stop.tree == nullptr ? Sentence{} : place::address_of(*stop.tree, orchard.rows)});
    };
    std::set<std::string> visited;
    for (const auto& stop : walk.stops) {
        visited.insert(stop.tree->label);
        for (const auto& item : items) {
            if (item.tree == stop.tree->label) {
                add(item, stop);
            }
        }
    }
    for (const auto& item : items) {
        if (item.tree.empty() || !visited.contains(item.tree)) {
            add(item, {});
        }
    }
    return works;
}

Sentence to_write_down(const season::FieldWorkItem& item) {
    switch (item.kind) {
        case season::WorkKind::pollen:
            return say("lot, flowers");
        case season::WorkKind::flowers:
            return say("flowers, tag, by whom");
        case season::WorkKind::fruit:
            return say("fruits, sound and empty seed");
        case season::WorkKind::seed:
            break;
    }
    return say("count, day");
}

paper::WorkLine line_of(const Work& work) {
    const auto& item = work.item;
    return {.title = item.title,
            .from = item.from,
            .to = item.to,
            .late = item.late,
            .address = work.address,
            .label = item.tree,
            .tags = item.tags.empty() ? Sentence{} : say("Tags: {}.", item.tags),
            .with = item.with,
            .amount = item.amount,
            .mind = item.mind,
            .write_down = to_write_down(item)};
}

paper::WorkSheet sheet_of(const Request& request, const std::vector<Work>& works,
                          const place::SheetWalk& walk, const Findings& findings) {
    paper::WorkSheet sheet;
    sheet.title = say("Work sheet");
    sheet.orchard_name = orchard_name(request.orchard, request.book);
    sheet.from = request.as_of;
    sheet.to = request.as_of + (request.days - 1);
    sheet.walk_metres = walk.metres;
    sheet.note = request.note;
    for (const auto& work : works) {
        (work.stop.tree == nullptr ? sheet.on_bench : sheet.at_trees).push_back(line_of(work));
        sheet.hazards.insert(work.item.hazards.begin(), work.item.hazards.end());
    }
    for (const auto& finding : findings) {
        if (finding.level != Level::note) {
            sheet.warnings.push_back(finding.message);
        }
    }
    return sheet;
}

Table table_of_works(const std::vector<Work>& works) {
    auto table = table_of<Work>(work_shape(), works, work_columns());
    for (std::size_t i = 0; i < works.size(); ++i) {
        table.rows[i].at = works[i].stop.tree == nullptr ? std::nullopt : works[i].stop.tree->at;
    }
    return table;
}

Sentence summary_of(const std::vector<Work>& works, const place::SheetWalk& walk) {
    if (works.empty()) {
        return say("Nothing is to be done.");
    }
    const auto pieces = works.size() == 1 ? say("1 piece of work") : say("{} pieces of work", works.size());
    return walk.stops.empty() ? say("{}, none at a tree.", pieces)
                              : say("{}; {:.0f} m to walk.", pieces, walk.metres);
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto start = place::walk_end(place.orchard, {"start", request.start}, place.findings);
    if (has_errors(place.findings)) {
        throw Error(Trouble::input, place.findings);
    }
    auto items = season::work_to_come(plan_wish(request), place, step_of(lent));
    std::erase_if(items, [&](const season::FieldWorkItem& item) {
        return !falls_into(item, request.as_of + (request.days - 1));
    });
    std::set<std::string> trees;
    for (const auto& item : items) {
        trees.insert(item.tree);
    }
    const auto walk = place::walk_to(trees, place.orchard, start, walking(lent));
    const auto works = in_walking_order(items, place.orchard, walk);
    Outcome outcome;
    outcome.tables = {table_of_works(works)};
    outcome.files = {{"work-sheet.html", "text/html",
                      paper::work_sheet_html(sheet_of(request, works, walk, place.findings), lent.wording)}};
    outcome.crs = place.orchard.crs;
    outcome.summary = summary_of(works, walk);
    outcome.findings = std::move(place.findings);
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    std::vector<Bound<Request>> all;
    for (const auto& shared : crossing_parameters()) {
        if (shared.words.key != "write") {
            all.emplace_back(shared);
        }
    }
    add_sheet_parameters(all);
    return all;
}

}  // namespace

std::unique_ptr<const Operation> work_sheet() {
    return declare<Request>(
        {.about = {"work-sheet", "Work sheet", "Season",
                   "The work of a day or a week to take along: what is to be done at which tree, in walking "
                   "order, with the address, the tags, the lot and the amount, a box to tick and room to "
                   "write down what came of it; then the work on the bench, and the cautions that go with "
                   "just this work."},
         .parameters = parameters(),
         .results = {work_shape()},
         .examples =
             {{"A week at the end of March, from the gate.",
               {{"book", "BOOK"}, {"as-of", "2026-03-28"}, {"days", "7"}, {"start", "48.1335,9.3009"}}},
              {"A day in autumn, fruit to pick and seed to wash.",
               {{"book", "BOOK"}, {"as-of", "2025-09-26"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
