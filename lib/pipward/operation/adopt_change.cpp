// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "pipward/book/schema.h"
#include "pipward/operation/adopt.h"

namespace pipward::operation {
namespace {

book::GeometryKind geometry_of(const std::string& table) {
    return book::find_book_table(table)->geometry;
}

std::string wkt_of(book::GeometryKind kind, const std::vector<MapPoint>& points) {
    const bool high =
        std::ranges::all_of(points, [](const MapPoint& point) { return point.height.has_value(); });
    std::string text;
    for (const auto& point : points) {
        text += fmt::format("{}{} {}", text.empty() ? "" : ", ", point.x, point.y);
        text += high ? fmt::format(" {}", point.height->value) : "";
    }
    return kind == book::GeometryKind::polygon ? fmt::format("POLYGON {}(({}))", high ? "Z " : "", text)
                                               : fmt::format("LINESTRING {}({})", high ? "Z " : "", text);
}

MadeRow made_of(const AdoptRow& row, const std::string& table) {
    return {table, row.cells, row.points};
}

std::vector<MadeRow> rows_for(const Adoption& adoption, const std::string& table) {
    std::vector<MadeRow> rows;
    std::ranges::copy_if(adoption.made, std::back_inserter(rows),
                         [&](const MadeRow& row) { return row.table == table; });
    for (const auto& row : adoption.rows) {
        if (adoption.table == table && row.fate == Fate::added) {
            rows.push_back(made_of(row, table));
        }
    }
    return rows;
}

Row cells_of(const MadeRow& made, const TableShape& shape) {
    Row row;
    const auto kind = geometry_of(made.table);
    for (const auto& column : shape.columns) {
        const auto cell = made.cells.find(column.name);
        row.cells.push_back(cell == made.cells.end() ? Cell{} : cell->second);
    }
    if (kind == book::GeometryKind::point && !made.points.empty()) {
        row.at = made.points.front();
    } else if (!made.points.empty() && kind != book::GeometryKind::none) {
        row.cells.back() = wkt_of(kind, made.points);
    }
    return row;
}

Table table_for(const std::string& name, const std::vector<MadeRow>& rows) {
    Table table;
    table.shape.name = name;
    for (const auto& column : book::find_book_table(name)->columns) {
        table.shape.columns.push_back({std::string(column.name), column.type, "", "", ""});
    }
    const auto kind = geometry_of(name);
    if (kind == book::GeometryKind::line || kind == book::GeometryKind::polygon) {
        table.shape.columns.push_back({std::string(book::wkt_column), CellType::text, "", "", ""});
    }
    for (const auto& row : rows) {
        table.rows.push_back(cells_of(row, table.shape));
    }
    return table;
}

constexpr std::array<const char*, 4> parents_first{"block", "tree_row", "accession", "tree"};

}  // namespace

std::vector<Table> added_tables(const Adoption& adoption) {
    std::vector<Table> tables;
    for (const auto* table : parents_first) {
        if (const auto rows = rows_for(adoption, table); !rows.empty()) {
            tables.push_back(table_for(table, rows));
        }
    }
    return tables;
}

}  // namespace pipward::operation
