// SPDX-License-Identifier: MIT
#include "pipward/operation/place/detail/row_tables.h"

#include <fmt/format.h>

#include "pipward/book/book.h"
#include "pipward/operation/declare/column_of.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct PositionRow {
    const place::RowPosition* place = nullptr;
    Sentence address{};
};

const std::vector<ColumnOf<PositionRow>>& position_columns() {
    static const std::vector<ColumnOf<PositionRow>> columns{
        {{"block", text, "", "Block", "The block that the row stands in."},
         [](const PositionRow& p) { return text_cell(p.place->block); }},
        {{"row", text, "", "Tree row", "The row within the block."},
         [](const PositionRow& p) { return text_cell(p.place->row); }},
        {{"position", whole, "", "Position", "Its number in the row."},
         [](const PositionRow& p) { return whole_cell(p.place->position); }},
        {{"state", text, "", "State",
          "taken: a tree stands there; reserved: one is to be planted; vacant: none."},
         [](const PositionRow& p) { return text_cell(place::to_text(p.place->state)); }},
        {{"tree", text, "", "Tree", "The label of the tree that stands or is to stand there."},
         [](const PositionRow& p) { return text_cell(p.place->tree); }},
        {{"off_m", number, "m", "Off", "How far the tree's point on the map lies from the position."},
         [](const PositionRow& p) { return p.place->off ? number_cell(p.place->off->value, 2) : Cell{}; }},
        {{"address", text, "", "Address", "Block, row and position in words."},
         [](const PositionRow& p) { return text_cell(p.address); }},
    };
    return columns;
}

std::string line_wkt(const TreeRow& row) {
    const bool high = !row.line.empty() && row.line.front().height && row.line.back().height;
    std::string points;
    for (const auto& point : row.line) {
        points += fmt::format("{}{} {}", points.empty() ? "" : ", ", point.x, point.y);
        points += high ? fmt::format(" {}", point.height.value_or(Metres{}).value) : "";
    }
    return fmt::format("LINESTRING {}({})", high ? "Z " : "", points);
}

}  // namespace

TableShape row_position_shape() {
    return shape_of<PositionRow>({"row_position",
                                  "Row positions",
                                  "Every numbered place in the rows, and what stands there.",
                                  true,
                                  {}},
                                 position_columns());
}

Table row_position_table(std::span<const place::RowPosition> positions, std::span<const TreeRow> rows) {
    Table table{row_position_shape(), {}};
    for (const auto& position : positions) {
        const PositionRow record{&position, place::address_of_position(position, rows)};
        table.rows.push_back(row_of(record, position_columns()));
        table.rows.back().at = position.at;
    }
    return table;
}

Table tree_row_table(std::span<const TreeRow> rows) {
    Table table;
    table.shape.name = "tree_row";
    table.shape.columns = {
        {"block", text, "", "", ""},        {"name", text, "", "", ""},
        {"spacing_m", number, "m", "", ""}, {"first_position", whole, "", "", ""},
        {"note", text, "", "", ""},         {std::string(book::wkt_column), text, "", "", ""}};
    for (const auto& row : rows) {
        Row made;
        made.cells.resize(table.shape.columns.size());
        made.cells[0] = row.block;
        made.cells[1] = row.name;
        if (row.spacing) {
            made.cells[2] = row.spacing->value;
        }
        made.cells[3] = whole_cell(row.first_position);
        made.cells[4] = cell(row.note);
        if (row.line.size() > 1) {
            made.cells[5] = line_wkt(row);
        }
        table.rows.push_back(std::move(made));
    }
    return table;
}

}  // namespace pipward::operation::detail
