// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "pipward/book/change.h"
#include "pipward/operation/book/dress_book.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/detail/row_tables.h"
#include "pipward/operation/place/tree_reading.h"
#include "pipward/operation/place/detail/user_places.h"
#include "pipward/place/row_courses.h"
#include "pipward/record/name_index.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {

namespace {

using enum CellType;

struct Request : PlacesRequest, place::CoursesWish {
    BookName book;
    Day as_of;
    Metres spacing;
    int first_position = 1;
    Metres headland{};
    std::optional<int> count;
    bool add_block = false;
    bool write = true;
};

const std::vector<ColumnOf<place::LaidRow>>& laid_columns() {
    static const std::vector<ColumnOf<place::LaidRow>> columns{
        {{"row", text, "", "Tree row", "The row's name within its block."},
         [](const place::LaidRow& r) { return text_cell(r.name); }},
        {{"positions", whole, "", "Positions", "How many positions it has."},
         [](const place::LaidRow& r) { return whole_cell(static_cast<int>(r.positions.size())); }},
        {{"first_position", whole, "", "First position", "The number of its first position."},
         [](const place::LaidRow& r) { return whole_cell(r.first_position); }},
        {{"last_position", whole, "", "Last position", "The number of its last position."},
         [](const place::LaidRow& r) {
             return whole_cell(r.first_position + static_cast<int>(r.positions.size()) - 1);
         }},
        {{"length_m", number, "m", "Length", "Over the ground, from the first position to the last."},
         [](const place::LaidRow& r) { return number_cell(r.length.value, 3); }},
        {{"bearing_deg", number, "degrees", "Bearing",
          "Direction of the numbering, clockwise from true north."},
         [](const place::LaidRow& r) { return number_cell(r.bearing_deg, 2); }},
        {{"first_lon", number, "degrees", "Longitude of the first", "East of Greenwich, WGS 84."},
         [](const place::LaidRow& r) { return number_cell(r.positions.front().at.lon, 8); }},
        {{"first_lat", number, "degrees", "Latitude of the first", "North of the equator, WGS 84."},
         [](const place::LaidRow& r) { return number_cell(r.positions.front().at.lat, 8); }},
    };
    return columns;
}

TableShape laid_shape() {
    return shape_of<place::LaidRow>(
        {"row_lay", "Rows laid", "The rows that were laid out, each with its numbered positions.", false, {}},
        laid_columns());
}

Findings check(const Request& request) {
    auto findings = place::check_courses(request);
    if (request.points.find_first_not_of(" \t\r\n") == std::string::npos && !request.file) {
        findings.push_back(
            about_parameter("points", "", say("There is no line to lay rows on."),
                            say("Give the row's points, or a layer file with lines or points.")));
    }
    return findings;
}

Finding about_row(const std::string& name, Sentence message, Sentence remedy) {
    return {Level::error, "tree_row", name, "name", name, std::move(message), std::move(remedy)};
}

void check_clashes(const Request& request, const std::vector<place::RowCourse>& courses,
                   const Orchard& orchard, Findings& findings) {
    std::set<std::string> taken;
    for (const auto& row : orchard.rows) {
        if (row.block == request.block) {
            taken.insert(row.name);
        }
    }
    std::set<std::string> seen;
    for (const auto& course : courses) {
        if (taken.contains(course.name)) {
            findings.push_back(
                about_row(course.name, say("Block {} has a row of this name already.", request.block),
                          say("Give another name; rows that are there are never overwritten.")));
        } else if (!seen.insert(course.name).second) {
            findings.push_back(about_row(course.name, say("Two of the rows have this name."),
                                         say("Give each row a name of its own within its block.")));
        }
    }
}

void check_block(const Request& request, const Orchard& orchard, Findings& findings) {
    if (request.add_block || first_named(orchard.blocks, &Block::name, request.block) != nullptr) {
        return;
    }
    std::string names;
    for (const auto& block : orchard.blocks) {
        names += (names.empty() ? "" : ", ") + block.name;
    }
    findings.push_back(
        about_parameter("block", request.block, say("The book has no block of this name."),
                        names.empty() ? say("Correct it, or let add-block make it.")
                                      : say("Correct it (there is: {}), or let add-block make it.", names)));
}

std::vector<place::LaidRow> lay(const Request& request, const std::vector<place::RowCourse>& courses,
                                Findings& findings) {
    std::vector<place::LaidRow> laid;
    for (const auto& course : courses) {
        if (auto row = place::lay_row(
                course, {request.spacing, request.first_position, request.headland, request.count},
                findings)) {
            laid.push_back(std::move(*row));
        }
    }
    return laid;
}

TreeRow record_of(const place::LaidRow& laid, const Request& request, const place::ToEarth& to_earth) {
    TreeRow row;
    row.block = request.block;
    row.name = laid.name;
    row.spacing = request.spacing;
    row.first_position = laid.first_position;
    for (const auto& corner : laid.course) {
        if (const auto point = place::to_map(corner, to_earth)) {
            row.line.push_back(*point);
        }
    }
    return row;
}

/// The smallest upright rectangle that holds the rows, half a row distance wider: an area to be redrawn.
Table block_table(const Request& request, std::span<const TreeRow> rows, const place::ToEarth& to_earth) {
    const double metres = std::max(request.row_distance.value_or(request.spacing).value / 2, 1.0);
    auto low = rows.front().line.front();
    auto high = low;
    for (const auto& row : rows) {
        for (const auto& corner : row.line) {
            for (const double bearing : {225.0, 45.0}) {
                const auto out = place::to_map(
                    {place::way_from(*to_earth(corner), bearing, Metres{metres * 1.5}), {}}, to_earth);
                low = {std::min(low.x, out->x), std::min(low.y, out->y), {}};
                high = {std::max(high.x, out->x), std::max(high.y, out->y), {}};
            }
        }
    }
    Table table;
    table.shape.name = "block";
    table.shape.columns = {{"name", text, "", "", ""}, {std::string(book::wkt_column), text, "", "", ""}};
    table.rows.push_back(
        {{request.block, fmt::format("POLYGON (({0} {1}, {2} {1}, {2} {3}, {0} {3}, {0} {1}))", low.x, low.y,
                                     high.x, high.y)}});
    return table;
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

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    auto reading = read_trees(request.book.location);
    auto& orchard = reading.orchard;
    Outcome outcome;
    outcome.findings = std::move(reading.findings);
    lent.step(0.4, say("Laying the rows"));
    const auto layer = read_places(request, orchard.crs, place::known_places(orchard), outcome.findings);
    const auto courses = place::courses_of(request, layer, orchard);
    check_block(request, orchard, outcome.findings);
    check_clashes(request, courses, orchard, outcome.findings);
    const auto laid = lay(request, courses, outcome.findings);
    if (has_errors(outcome.findings)) {
        throw Error(Trouble::input, std::move(outcome.findings));
    }
    const place::ToEarth to_earth(orchard.crs);
    std::vector<TreeRow> rows;
    for (const auto& row : laid) {
        rows.push_back(record_of(row, request, to_earth));
    }
    const bool new_block = first_named(orchard.blocks, &Block::name, request.block) == nullptr;
    orchard.rows.insert(orchard.rows.end(), rows.begin(), rows.end());
    const auto positions = place::row_positions(orchard, request.as_of, outcome.findings);
    outcome.tables = {table_of<place::LaidRow>(laid_shape(), laid, laid_columns()),
                      row_position_table(positions, orchard.rows)};
    if (request.write) {
        lent.step(0.8, say("Writing the rows"));
        book::BookChange change;
        if (new_block) {
            change.added.push_back(block_table(request, rows, to_earth));
        }
        change.added.push_back(tree_row_table(rows));
        change.results.push_back(spoken(outcome.tables[1], lent.wording));
        book::apply_change(request.book.location, change);
        const auto dress = refresh_dress(request.book.location, lent.wording);
        outcome.findings.insert(outcome.findings.end(), dress.begin(), dress.end());
    }
    outcome.crs = orchard.crs;
    outcome.summary = summary_of(request, laid, positions);
    lent.step(1.0, say("Done"));
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    return {
        book_parameter(&Request::book),
        Bound<Request>(
            parameter(&place::CoursesWish::block, "block", "Block", "The block of the rows.").required()),
        parameter(&Request::spacing, "spacing", "Spacing", "From one position to the next, over the ground.")
            .in("m")
            .between(0.1, 100.0)
            .required(),
        Bound<PlacesRequest>(parameter(&PlacesRequest::points, "points", "Points of the row",
                                       "Two or more, east (longitude) first, as in \"522400 5331200, 522440 "
                                       "5331210\", or well-known text; in the direction of the numbering.")),
        places_file_parameter(),
        parameter(&place::CoursesWish::row, "row", "Row",
                  "The name of the row, or of the first one, from which the others count on."),
        parameter(&Request::first_position, "first-position", "First position",
                  "The number of the first position.")
            .between(0, 99999),
        parameter(&Request::count, "count", "Positions a row",
                  "How many positions; as many as there is room for where not given.")
            .between(1, 100000),
        parameter(&Request::headland, "headland", "Headland",
                  "What stays free at both ends of the line: the first position comes after it.")
            .in("m")
            .between(0.0, 1000.0),
        parameter(&place::CoursesWish::rows, "rows", "Rows",
                  "How many rows to lay beside one another, the given line being the first.")
            .between(1, 1000),
        parameter(&place::CoursesWish::row_distance, "row-distance", "Row distance",
                  "From row to row, over the ground.")
            .in("m")
            .between(0.1, 100.0),
        parameter(&place::CoursesWish::side, "side", "Side",
                  "On which side of the line the further rows lie, seen in its direction."),
        parameter(&place::CoursesWish::alternate, "alternate", "Alternate direction",
                  "Whether every second row is numbered from the other end."),
        parameter(&Request::add_block, "add-block", "Add the block",
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
                   "block from one base line, and adds them to the book. The spacing is true on the ground "
                   "to a centimetre, whatever the coordinate system. Rows that the book has are never "
                   "changed. The positions of all rows, vacant, taken or reserved, are written as a layer. A "
                   "layer file may hold a line a row, or two or more points a row."},
         .parameters = parameters(),
         .results = {laid_shape(), row_position_shape()},
         .examples = {{"One row between two surveyed points, shown but not written.",
                       {{"book", "BOOK"},
                        {"block", "Upper"},
                        {"row", "T1"},
                        {"spacing", "1.5"},
                        {"points", "522380 5331300, 522418.4 5331311.2"},
                        {"write", "no"},
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
                        {"as-of", "2026-03-20"}}},
                      {"Rows from a file of surveyed points.",
                       {{"book", "BOOK"},
                        {"block", "Upper"},
                        {"spacing", "2"},
                        {"layer-file", "FILE"},
                        {"write", "no"},
                        {"as-of", "2026-03-20"}},
                       "row,x,y\nN1,522380,5331300\nN1,522418.4,5331311.2\nN2,522379,5331304\nN2,522417.4,"
                       "5331315.2\n"}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
