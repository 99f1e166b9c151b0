// SPDX-License-Identifier: MIT
#include "pipward/book/records.h"

#include <fmt/format.h>

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
    for (const auto key : table.key) {
        const auto text = to_text(cell_of(table, row, key));
        if (text.empty()) {
            return fmt::format("fid {}", row.fid);
        }
        name += (name.empty() ? "" : " ") + text;
    }
    return name.empty() ? fmt::format("fid {}", row.fid) : name;
}

}  // namespace pipward::book
