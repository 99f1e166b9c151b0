// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/detail/tree_choice.h"
#include "pipward/paper/day_words.h"
#include "pipward/paper/field_contents.h"
#include "pipward/paper/field_pages.h"
#include "pipward/paper/paper_size.h"
#include "pipward/paper/pdf.h"
#include "pipward/place/address_order.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

struct Request : TreeRequest {
    std::string orchard;
    paper::PaperSize paper = paper::PaperSize::a4;
    std::optional<int> scale;
    bool rows_across = false;
    bool removed = true;
    bool walk = false;
};

constexpr std::size_t most_trees = 100000;

struct MapPage {
    int page = 0;
    int denominator = 0;
    int trees = 0;
    bool is_overview = false;
};

using enum CellType;

const std::vector<ColumnOf<MapPage>>& columns() {
    static const std::vector<ColumnOf<MapPage>> all{
        {{"page", whole, "", "Page", "The page of the file."},
         [](const MapPage& p) { return whole_cell(p.page); }},
        {{"scale", whole, "", "Scale", "Scale denominator: 250 for 1:250."},
         [](const MapPage& p) { return whole_cell(p.denominator); }},
        {{"trees", whole, "", "Trees",
          "How many trees it shows, those that its neighbours show as well counted."},
         [](const MapPage& p) { return whole_cell(p.trees); }},
        {{"overview", yes_no, "", "Overview", "Whether it shows where the other pages lie."},
         [](const MapPage& p) { return Cell{p.is_overview}; }},
    };
    return all;
}

constexpr TableOf<MapPage> page_table{"map_page", "Pages of the map", "The pages of the map.", columns};

std::string title_of(const Request& request) {
    const auto name = orchard_name(request.orchard, request.book);
    return name.empty() || request.block.empty() ? name + request.block : name + ": " + request.block;
}

std::vector<std::uint32_t> trees_of(const Request& request, const Orchard& orchard, Findings& findings) {
    auto trees = chosen_trees(orchard, request, {.as_of = request.as_of, .removed_too = request.removed},
                              findings, planned_works(request));
    if (trees.empty() && !has_errors(findings)) {
        findings.push_back(about_table(Level::error, "tree", say("There is no tree to draw."),
                                       say("Choose other trees, or give them locations on the map.")));
    }
    if (trees.size() > most_trees) {
        findings.push_back(
            about_table(Level::error, "tree",
                        say("{} trees are too many for one map; {} is the most.", trees.size(), most_trees),
                        say("Choose a block.")));
    }
    return place::in_order(orchard, std::move(trees), place::LabelOrder::address);
}

Table table_of_pages(const paper::FieldPlan& plan, const paper::FieldPages& pages) {
    std::vector<MapPage> rows;
    for (std::size_t i = 0; i < pages.pages.size(); ++i) {
        rows.push_back({static_cast<int>(i) + 1, pages.denominators[i], pages.trees[i],
                        i == 0 && plan.overview.has_value()});
    }
    return page_table.of(rows);
}

void put_gps_files(const paper::GpsFile& file, Outcome& outcome) {
    outcome.files.push_back({"trees.gpx", "application/gpx+xml", paper::gpx_text(file)});
    outcome.files.push_back({"trees.kml", "application/vnd.google-earth.kml+xml", paper::kml_text(file)});
}

Sentence summary_of(const paper::FieldPlan& plan, const paper::FieldPages& pages, std::size_t waypoints) {
    const int largest = std::ranges::min(plan.windows, {}, &paper::MapWindow::denominator).denominator;
    const auto map = pages.pages.size() == 1 ? say("A map at 1:{} on 1 page.", largest)
                                             : say("A map at 1:{} on {} pages.", largest, pages.pages.size());
    const auto points =
        waypoints == 1 ? say("1 tree in the GNSS files.") : say("{} trees in the GNSS files.", waypoints);
    return joined({map, points}, verbatim(" "));
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = book::read_stands(request.book);
    const auto& orchard = reading.orchard;
    const auto wording = lent.wording;
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto trees = trees_of(request, orchard, outcome.findings);
    expect_no_errors(outcome.findings);
    lent.step(0.2, say("Laying out the map"));
    auto map = paper::map_of(orchard, trees, request.as_of);
    map.title = title_of(request);
    map.made_on = say("as of {}", paper::long_day(request.as_of)).in(wording);
    map.turned_deg = request.rows_across ? paper::turn_to_rows_deg(map.rows) : 0.0;
    const auto plan = paper::planned_map(map, paper::size_of(request.paper), request.scale);
    const paper::Typesetter typesetter;
    const auto pages = paper::field_pages(map, plan, typesetter.ruler(), wording, [&](double share) {
        lent.step(0.2 + 0.3 * share, say("Laying out the map"));
    });
    add_findings(outcome, paper::findings_on(plan, pages));
    auto pdf = paper::pdf_of(pages.pages, {map.title, request.as_of}, typesetter,
                             [&](double share) { lent.step(0.5 + 0.2 * share, say("Drawing the map")); });
    outcome.files.push_back({"field-map.pdf", "application/pdf", std::move(pdf)});
    paper::GpsFile gps{map.title, paper::waypoints_of(orchard, trees, request.as_of, outcome.findings), {}};
    if (request.walk) {
        gps.route = paper::route_of(
            orchard, trees, request.as_of,
            [&](double share) { lent.step(0.7 + 0.29 * share, say("Walking")); }, outcome.findings);
    }
    put_gps_files(gps, outcome);
    outcome.tables = {table_of_pages(plan, pages)};
    outcome.summary = summary_of(plan, pages, gps.waypoints.size());
    lent.step(1.0, say("Done"));
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    return extended<Request>(
        tree_parameters(),
        {parameter(&Request::paper, "paper", "Paper",
                   "Page size; portrait or landscape is chosen by the program."),
         parameter(&Request::scale, "scale", "Scale",
                   "Scale denominator, 250 for 1:250; the largest scale at which everything can be read "
                   "where left out.")
             .between(50, 1000000),
         parameter(&Request::rows_across, "rows-across", "Rows across",
                   "Whether the map is turned so that rows lie across the page; north is up otherwise."),
         parameter(&Request::removed, "removed", "Removed trees",
                   "Whether positions of removed trees are drawn."),
         parameter(&Request::walk, "walk", "Walk",
                   "Whether the GNSS files contain a walk along the alleys to all trees."),
         orchard_parameter(&Request::orchard), as_of_parameter(&TreeRequest::as_of)});
}

}  // namespace

std::unique_ptr<const Operation> field_map() {
    return declare<Request>(
        {.about = {"field-map", "Field map", "Paper",
                   "Makes a PDF map of a block or of the whole orchard at a round scale: trees by purpose in "
                   "shape and colour, rows and positions with their numbers, scale bar and north arrow, on "
                   "several pages with an overview where one page would be too small. It also makes a GPX "
                   "and a KML file, so that a hand-held GNSS receiver or a telephone leads to the trees. "
                   "Nothing is written to the book."},
         .parameters = parameters(),
         .results = {page_table.shape()},
         .examples =
             {{"A block on one page.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"block", "Upper"}, {"rows-across", "yes"}}},
              {"The whole orchard at 1:200, on as many pages as that takes.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"scale", "200"}}},
              {"The trees of an accession, with a walk for the receiver.",
               {{"book", "BOOK"},
                {"as-of", "2026-03-20"},
                {"accessions", "Wrenlea"},
                {"paper", "a3"},
                {"walk", "yes"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
