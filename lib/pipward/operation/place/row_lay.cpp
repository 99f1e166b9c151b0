// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/book/new_rows.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/detail/row_tables.h"
#include "pipward/operation/place/detail/user_places.h"
#include "pipward/place/row_laying.h"
#include "pipward/record/name_index.h"
#include "pipward/record/reader_days.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {

namespace {

using enum CellType;

struct Request : PlacesRequest, place::LayingWish {
    BookName book;
    Day as_of;
    bool write = false;
};

const std::vector<ColumnOf<place::LaidRow>>& laid_columns() {
    static const std::vector<ColumnOf<place::LaidRow>> columns{
        {{"row", text, "", "Tree row", "The row's name within its block."},
         [](const place::LaidRow& r) { return text_cell(r.name); }},
        {{"positions", whole, "", "Positions", "Number of positions."},
         [](const place::LaidRow& r) { return whole_cell(static_cast<int>(r.positions.size())); }},
        {{"first_position", whole, "", "First position", "The number of its first position."},
         [](const place::LaidRow& r) { return whole_cell(r.first_position); }},
        {{"last_position", whole, "", "Last position", "The number of its last position."},
         [](const place::LaidRow& r) {
             return whole_cell(r.first_position + static_cast<int>(r.positions.size()) - 1);
         }},
        {{"length_m", number, "m", "Length", "Over the ground, from the first position to the last."},
         [](const place::LaidRow& r) { return number_cell(r.length.value, 3); }},
        {{"bearing_deg", number, "°", "Bearing", "Direction of the numbering, clockwise from true north."},
         [](const place::LaidRow& r) { return number_cell(r.bearing_deg, 2); }},
        {{"first_lon", number, "°", "Longitude of the first position", "East of Greenwich, WGS 84."},
         [](const place::LaidRow& r) { return number_cell(r.positions.front().at.lon, 8); }},
        {{"first_lat", number, "°", "Latitude of the first position", "North of the equator, WGS 84."},
         [](const place::LaidRow& r) { return number_cell(r.positions.front().at.lat, 8); }},
    };
    return columns;
}

constexpr TableOf<place::LaidRow> laid_table{
    "row_lay", "New rows", "The rows that were laid out, each with its numbered positions.", laid_columns,
    [] {
        return TableView{
            .first = {"row", "positions", "first_position", "last_position", "length_m", "bearing_deg"}};
    }};

Findings check(const Request& request) {
    auto findings = place::check_courses(request);
    if (request.points.find_first_not_of(" \t\r\n") == std::string::npos && !request.file) {
        findings.push_back(
            about_parameter("points", "", say("There is no line to lay rows on."),
                            say("Give the row's points, or a layer file with lines or points.")));
    }
    return findings;
}

Sentence laid_words(const Request& request, std::size_t rows, std::size_t positions) {
    if (request.write) {
        return rows == 1
                   ? say("1 row with {} positions in block {} added.", positions, request.block)
                   : say("{} rows with {} positions in block {} added.", rows, positions, request.block);
    }
    return rows == 1
               ? say("1 row with {} positions in block {}: nothing was written.", positions, request.block)
               : say("{} rows with {} positions in block {}: nothing was written.", rows, positions,
                     request.block);
}

Sentence summary_of(const Request& request, const std::vector<place::LaidRow>& laid,
                    std::span<const place::RowPosition> positions) {
    std::size_t count = 0;
    for (const auto& row : laid) {
        count += row.positions.size();
    }
    const auto taken = std::ranges::count(positions, place::PositionState::taken, &place::RowPosition::state);
    const auto added = laid_words(request, laid.size(), count);
    return say("{} The book's rows have {} positions, {} taken.", added, positions.size(), taken);
}

Outcome lay(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    auto reading = book::read_trees(request.book);
    auto& orchard = reading.orchard;
    Outcome outcome;
    outcome.findings = std::move(reading.findings);
    lent.step(0.4, say("Laying the rows"));
    const auto layer = intake::read_places(given_places(request), orchard.crs, place::known_places(orchard),
                                           outcome.findings);
    const auto laid = place::lay_rows(request, layer, orchard, outcome.findings);
    expect_no_errors(outcome.findings);
    const place::ToEarth to_earth(orchard.crs);
    std::vector<TreeRow> rows;
    for (const auto& row : laid) {
        rows.push_back(place::record_of(row, request, to_earth));
    }
    const bool new_block = first_named(orchard.blocks, &Block::name, request.block) == nullptr;
    orchard.rows.insert(orchard.rows.end(), rows.begin(), rows.end());
    const auto positions = place::row_positions(orchard, request.as_of, outcome.findings);
    outcome.tables = {laid_table.of(laid), row_position_table(positions, orchard.rows)};
    if (request.write) {
        lent.step(0.8, say("Writing the rows"));
        book::BookChange change;
        if (new_block) {
            const auto box = place::box_around(rows, request, to_earth);
            change.added.push_back(book::block_to_add(request.block, box.low, box.high));
        }
        change.added.push_back(book::rows_to_add(rows));
        change.results.push_back(spoken(outcome.tables[1], with_stored_days(lent.wording)));
        book::apply_change(request.book, change);
    }
    outcome.crs = orchard.crs;
    outcome.summary = summary_of(request, laid, positions);
    lent.step(1.0, say("Done"));
    return outcome;
}

Outcome run(const Request& request, const Run& lent) {
    return in_one_change_if(request.write, request, lent, lay);
}

std::vector<Bound<Request>> parameters() {
    return {
        book_parameter(&Request::book),
        Bound<Request>(
            parameter(&place::CoursesWish::block, "block", "Block", "The block of the rows.").required()),
        parameter(&place::LayingWish::spacing, "spacing", "Spacing",
                  "From one position to the next, over the ground.")
            .in("m")
            .between(0.1, 100.0)
            .required(),
        Bound<PlacesRequest>(parameter(&PlacesRequest::points, "points", "Points of the row",
                                       "Two or more, east (longitude) first, as in \"522400 5331200, 522440 "
                                       "5331210\", or well-known text; in the direction of the numbering.")),
        places_file_parameter(),
        parameter(&place::CoursesWish::row, "row", "Row",
                  "The name of the row, or of the first one, from which the others count on."),
        parameter(&place::LayingWish::first_position, "first-position", "First position",
                  "The number of the first position.")
            .between(0, 99999),
        parameter(&place::LayingWish::count, "count", "Positions per row",
                  "Number of positions; as many as fit where not given.")
            .between(1, 100000),
        parameter(&place::LayingWish::headland, "headland", "Headland",
                  "Free length at both ends of the line, before the first position.")
            .in("m")
            .between(0.0, 1000.0),
        parameter(&place::CoursesWish::rows, "rows", "Rows",
                  "Number of parallel rows, the given line being the first.")
            .between(1, 1000),
        parameter(&place::CoursesWish::row_distance, "row-distance", "Row distance",
                  "From row to row, over the ground.")
            .in("m")
            .between(0.1, 100.0),
        parameter(&place::CoursesWish::side, "side", "Side",
                  "On which side of the line the further rows lie, seen in its direction."),
        parameter(&place::CoursesWish::alternate, "alternate", "Alternate direction",
                  "Whether every second row is numbered from the other end."),
        parameter(&place::LayingWish::add_block, "add-block", "Add the block",
                  "Whether a block that the book does not have is added, as a rectangle around its rows."),
        places_layer_parameter(),
        parameter(&place::CoursesWish::row_column, "row-column", "Column of the row",
                  "The layer's column with the rows' names, where it is not recognised.")
            .advanced(),
        places_crs_parameter(),
        as_of_parameter(&Request::as_of),
        write_parameter(&Request::write),
    };
}

}  // namespace

std::unique_ptr<const Operation> row_lay() {
    return declare<Request>(
        {.about = {"row-lay", "Lay rows", "Trees",
                   "Lays out rows with numbered positions from surveyed points or drawn lines, or a whole "
                   "block from one base line; with write they are added to the book. The spacing is true on "
                   "the ground to a centimetre, whatever the coordinate system. Rows that the book has are "
                   "never changed. The positions of all rows, vacant, taken or reserved, are written as a "
                   "layer. A layer file may have one line per row, or two or more points per row."},
         .parameters = parameters(),
         .results = {laid_table.shape(), row_position_shape()},
         .examples = {{"One row between two surveyed points, shown but not written.",
                       {{"book", "BOOK"},
                        {"block", "Upper"},
                        {"row", "T1"},
                        {"spacing", "1.5"},
                        {"points", "522380 5331300, 522418.4 5331311.2"},
                        {"as-of", "2026-03-20"}}},
                      {"A new block of six rows from one base line, every second row numbered the other way.",
                       {{"book", "BOOK"},
                        {"block", "Nursery"},
                        {"add-block", "yes"},
                        {"spacing", "1.25"},
                        {"points", "522460 5331230, 522507.04 5331243.72"},
                        {"rows", "6"},
                        {"row-distance", "3.5"},
                        {"headland", "6"},
                        {"alternate", "yes"},
                        {"write", "yes"},
                        {"as-of", "2026-03-20"}}},
                      {"Rows from a file of surveyed points.",
                       {{"book", "BOOK"},
                        {"block", "Upper"},
                        {"spacing", "2"},
                        {"layer-file", "FILE"},
                        {"as-of", "2026-03-20"}},
                       "row,x,y\nN1,522380,5331300\nN1,522418.4,5331311.2\nN2,522379,5331304\nN2,522417.4,"
                       "5331315.2\n"}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
