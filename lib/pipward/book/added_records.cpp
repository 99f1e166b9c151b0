// SPDX-License-Identifier: MIT
#include "pipward/book/added_records.h"

#include <algorithm>

#include "pipward/book/detail/check.h"
#include "pipward/book/records.h"

namespace pipward::book {
namespace {

BookRow row_of(const AddedRecord& record, const BookTable& table) {
    BookRow row;
    for (const auto& column : table.columns) {
        const auto cell = record.cells.find(std::string(column.name));
        row.cells.push_back(cell == record.cells.end() ? Cell{} : cell->second);
    }
    row.at = record.at;
    row.line = record.line;
    return row;
}

Orchard with(const Orchard& before, const std::vector<AddedRecord>& rows) {
    Orchard after = before;
    for (const auto& record : rows) {
        const auto& table = *find_book_table(record.table);
        add_record(after, table, row_of(record, table));
    }
    return after;
}

Findings said_of(const Orchard& orchard, Day as_of) {
    Findings findings;
    detail::check_references(orchard, detail::names_of(orchard, book_tables()), book_tables(), findings);
    detail::check_trees(orchard, as_of, findings);
    detail::check_accessions(orchard, findings);
    detail::check_pedigree(orchard, findings);
    return findings;
}

void check_names(const std::vector<AddedRecord>& rows, Findings& findings) {
    for (const auto& record : rows) {
        const auto* column = name_column(*find_book_table(record.table));
        const auto name =
            column == nullptr ? record.cells.end() : record.cells.find(std::string(column->name));
        if (name != record.cells.end()) {
            detail::check_writing(record.table, column->name, to_text(name->second), findings);
        }
    }
}

}  // namespace

Findings check_added(const Orchard& before, const std::vector<AddedRecord>& rows, Day as_of) {
    const auto old = said_of(before, as_of);
    auto findings = said_of(with(before, rows), as_of);
    std::erase_if(findings,
                  [&](const Finding& finding) { return std::ranges::find(old, finding) != old.end(); });
    check_names(rows, findings);
    return findings;
}

}  // namespace pipward::book
