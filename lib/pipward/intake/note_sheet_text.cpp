// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/cells.h"
#include "pipward/intake/record_prefill.h"
#include "pipward/record/table_text.h"

namespace pipward::intake {
namespace {

std::string name_in(const Orchard& orchard, std::string_view table) {
    const auto& known = *book::find_book_table(table);
    const auto records = known.records.all(orchard);
    return records.empty() ? std::string{} : to_text(book::name_column(known)->field.show(records.back()));
}

bool names_a_place(const KnownCells& line) {
    return line.contains(where_column);
}

std::string cell_of(const KnownCells& line, std::string_view column) {
    const auto cell = line.find(column);
    return cell == line.end() ? std::string{} : harmless(cell->second);
}

Column heading(std::string_view name) {
    return {.name = std::string(name), .type = CellType::text, .unit = {}, .label = {}, .description = {}};
}

}  // namespace

std::string example_of(const book::BookColumn& column, const book::BookTable& table, const Orchard& orchard,
                       Day as_of) {
    if (!column.references.empty()) {
        return name_in(orchard, column.references.front().table);
    }
    if (column.name == "trait") {
        return orchard.trait_scores.empty() ? std::string{} : orchard.trait_scores.back().trait;
    }
    if (!table.key.empty() && table.key.front() == column.name) {
        return name_in(orchard, table.name);
    }
    switch (column.type) {
        case CellType::day:
            return to_iso(as_of);
        case CellType::whole:
            return column.domain == "bbch_stage" ? "65" : column.domain == "count" ? "40" : "1";
        case CellType::number:
            return column.name == "stratification_c" ? "3" : "7.5";
        default:
            return {};
    }
}

std::string note_sheet_text(RecordKind kind, const std::vector<KnownCells>& lines) {
    Table sheet;
    for (const auto& column : table_of(kind).columns) {
        sheet.shape.columns.push_back(heading(column.name));
    }
    if (std::ranges::any_of(lines, names_a_place)) {
        sheet.shape.columns.push_back(heading(where_column));
    }
    for (const auto& line : lines) {
        auto& row = sheet.rows.emplace_back();
        for (const auto& column : sheet.shape.columns) {
            const auto known = cell_of(line, column.name);
            row.cells.push_back(known.empty() ? Cell{} : Cell{known});
        }
    }
    return to_csv(sheet);
}

}  // namespace pipward::intake
