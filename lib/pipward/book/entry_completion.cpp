// SPDX-License-Identifier: MIT
#include "pipward/book/detail/entry_completion.h"

#include <map>

#include "pipward/book/detail/entry_judgement.h"

namespace pipward::book::detail {
namespace {

using RowsByName = std::map<std::string, BookRow>;

bool is_unknown(const Cell& cell) {
    return std::holds_alternative<std::monostate>(cell);
}

RowsByName rows_by_name(const BookTable& table, const BookColumn& key, const Orchard& orchard) {
    const auto at = static_cast<std::size_t>(&key - table.columns.data());
    RowsByName rows;
    for (const auto* record : table.records.all(orchard)) {
        auto row = table.records.show(record);
        auto name = to_text(row.cells[at]);
        rows.emplace(std::move(name), std::move(row));
    }
    return rows;
}

const BookColumn& key_of(const BookTable& table) {
    if (const auto* key = key_column(table)) {
        return *key;
    }
    throw Error(Trouble::usage, error({table.name}, say("Rows of this table have no name of their own."),
                                      say("Record a new row instead.")));
}

Finding filled_already(const BookTable& table, const std::string& name, const BookColumn& column,
                       const Cell& there) {
    return error({table.name, name, column.name, to_text(there)},
                 say("The row says {} there already; only empty cells are filled.", to_text(there)),
                 say("Leave it out, or correct the row in a GIS."));
}

// The row's cells, with those of the entry where the row has none.
Entry merged(const Entry& entry, const BookTable& table, const BookRow& row, Findings& findings) {
    Entry whole{entry.table, {}};
    bool fills = false;
    const auto name = row_name(entry, table);
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const auto& column = table.columns[i];
        const auto given = value_of(entry, column.name);
        const auto& there = row.cells[i];
        if (!is_unknown(given) && !is_unknown(there) && to_text(given) != to_text(there)) {
            findings.push_back(filled_already(table, name, column, there));
        }
        fills = fills || (!is_unknown(given) && is_unknown(there));
        whole.values.emplace(column.name, is_unknown(there) ? given : there);
    }
    if (!fills && findings.empty()) {
        findings.push_back(error({table.name, name}, say("The row says all of this already."),
                                 say("Nothing need be recorded.")));
    }
    return whole;
}

Finding no_such_row(const BookTable& table, const BookColumn& key, const std::string& name) {
    return error({table.name, name, key.name, name}, say("The book has no {} of this name.", table.row_words),
                 say("Record it as a whole first, or correct the name."));
}

}  // namespace

Completion complete(const BookReading& book, std::span<const Entry> entries, Schema schema) {
    Completion completion{book, {}, {}};
    if (entries.empty()) {
        return completion;
    }
    const auto& table = entry_table(entries.front(), schema);
    const auto& key = key_of(table);
    const auto rows = rows_by_name(table, key, book.orchard);
    for (const auto& entry : entries) {
        const auto name = to_text(value_of(entry, key.name));
        auto& findings = completion.findings.emplace_back();
        const auto row = rows.find(name);
        if (row == rows.end()) {
            findings.push_back(no_such_row(table, key, name));
            completion.whole.push_back(entry);
            continue;
        }
        completion.whole.push_back(merged(entry, table, row->second, findings));
        table.records.remove(completion.without.orchard, row->second.fid);
    }
    return completion;
}

}  // namespace pipward::book::detail
