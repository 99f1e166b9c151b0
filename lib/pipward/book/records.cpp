// SPDX-License-Identifier: MIT
#include "pipward/book/records.h"

#include <fmt/format.h>

#include <algorithm>

namespace pipward::book {

void add_record(Orchard& orchard, const BookTable& table, const BookRow& row) {
    table.records.add(orchard, row);
}

std::vector<BookRow> rows_of(const BookTable& table, const Orchard& orchard) {
    std::vector<BookRow> rows;
    for (const auto* record : table.records.all(orchard)) {
        rows.push_back(table.records.show(record));
    }
    return rows;
}

Table rows_to_append(const BookTable& table, const std::vector<BookRow>& rows) {
    Table made;
    made.shape.name = table.name;
    made.shape.has_points = table.geometry == GeometryKind::point;
    for (const auto& row : rows) {
        made.rows.push_back({.cells = {}, .at = row.at});
    }
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const auto& column = table.columns[i];
        const auto is_known = [i](const BookRow& row) {
            return !std::holds_alternative<std::monostate>(row.cells[i]);
        };
        if (column.required || std::ranges::any_of(rows, is_known)) {
            made.shape.columns.push_back({.name = std::string(column.name),
                                          .type = column.type,
                                          .unit = {},
                                          .label = {},
                                          .description = {}});
            for (std::size_t row = 0; row < rows.size(); ++row) {
                made.rows[row].cells.push_back(rows[row].cells[i]);
            }
        }
    }
    return made;
}

const Cell& cell_of(const BookTable& table, const BookRow& row, std::string_view column) {
    const auto* found = find_column(table, column);
    return row.cells[static_cast<std::size_t>(found - table.columns.data())];
}

std::map<std::string, Cell> known_cells(const BookTable& table, const BookRow& row) {
    std::map<std::string, Cell> known;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        if (!std::holds_alternative<std::monostate>(row.cells[i])) {
            known.emplace(table.columns[i].name, row.cells[i]);
        }
    }
    return known;
}

std::string name_of(const BookTable& table, const BookRow& row) {
    std::string name;
    const auto* naming = naming_column(table);
    const auto keys = naming == nullptr ? table.key : std::vector{naming->name};
    for (const auto key : keys) {
        const auto text = to_text(cell_of(table, row, key));
        if (text.empty()) {
            return fmt::format("fid {}", row.fid);
        }
        name += (name.empty() ? "" : " ") + text;
    }
    return name.empty() ? fmt::format("fid {}", row.fid) : name;
}

}  // namespace pipward::book
