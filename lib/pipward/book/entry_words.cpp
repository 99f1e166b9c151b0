// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <sstream>

#include "pipward/book/detail/entry_judgement.h"
#include "pipward/book/detail/with_schema.h"
#include "pipward/book/schema_words.h"

namespace pipward::book {
namespace {

// A code says little; what it stands for is added.
Sentence meaning_in(const BookColumn& column, const std::string& value) {
    const auto* domain = find_domain(column.domain);
    if (domain == nullptr) {
        return {};
    }
    const auto found = std::ranges::find(domain->choices, value, &Choice::value);
    return found == domain->choices.end() ? Sentence{} : meaning_of(*found);
}

Sentence part(const BookColumn& column, const Cell& cell) {
    const auto text = to_text(cell);
    const bool has_unit = !column.unit.empty() && column.unit != "count";
    const auto value = has_unit ? fmt::format("{} {}", text, column.unit) : text;
    const auto meaning = meaning_in(column, text);
    return meaning.empty() ? say("{} {}", inside_label(column), value)
                           : say("{} {} ({})", inside_label(column), value, meaning);
}

// Its content as texts. A line that begins with no column's name goes on from a remark before it.
Entry entry_of(const AddedRow& row) {
    Entry entry{row.table, {}};
    const auto* table = find_book_table(row.table);
    std::istringstream lines(row.content);
    for (std::string line; table != nullptr && std::getline(lines, line);) {
        const auto name = line.substr(0, line.find(": "));
        if (name.size() < line.size() && find_column(*table, name) != nullptr) {
            entry.values[name] = line.substr(name.size() + 2);
        }
    }
    return entry;
}

}  // namespace

std::span<const std::string_view> entry_tables() {
    static const auto tables = detail::entry_tables_of(book_tables());
    return tables;
}

std::vector<std::string_view> detail::entry_tables_of(Schema schema) {
    std::vector<std::string_view> names;
    for (const auto& table : schema) {
        if (!table.entry_words.empty()) {
            names.push_back(table.name);
        }
    }
    return names;
}

Sentence in_words(const Entry& entry) {
    return detail::in_words(entry, book_tables());
}

Sentence detail::in_words(const Entry& entry, Schema schema) {
    const auto* table = find_book_table(entry.table, schema);
    const auto name =
        table == nullptr || table->entry_words.empty() ? verbatim(entry.table) : table->entry_words;
    // The words keep the columns' own labels: no copy of the columns would live long enough.
    static const std::vector<BookColumn> none;
    std::vector<Sentence> parts;
    for (const auto& column : table == nullptr ? none : table->columns) {
        const auto given = entry.values.find(std::string(column.name));
        if (given != entry.values.end() && !std::holds_alternative<std::monostate>(given->second)) {
            parts.push_back(part(column, given->second));
        }
    }
    if (entry.completes) {
        return say("{}, completed: {}", name, joined(parts, verbatim(", ")));
    }
    return parts.empty() ? name : say("{}: {}", name, joined(parts, verbatim(", ")));
}

Sentence in_words(const AddedRow& row) {
    auto entry = entry_of(row);
    entry.completes = !row.filled.empty();
    const auto* table = find_book_table(row.table);
    std::erase_if(entry.values, [&](const auto& value) {
        const bool is_key =
            table != nullptr && std::ranges::find(table->key, value.first) != table->key.end();
        return entry.completes && !is_key && std::ranges::find(row.filled, value.first) == row.filled.end();
    });
    return in_words(entry);
}

std::string name_of(const AddedRow& row) {
    return fmt::format("{}/{}", row.table, row.fid);
}

}  // namespace pipward::book
