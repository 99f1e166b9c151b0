// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/known_rows.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/book/schema.h"

namespace pipward::intake::detail {
namespace {

bool holds(const std::string& content, const std::string& line) {
    return content.starts_with(line) || content.find("\n" + line) != std::string::npos;
}

// Remarks come last in every table, so the first line that begins with a column's name is the column's.
std::string value_of(const std::string& content, std::string_view column) {
    const auto begin = fmt::format("{}: ", column);
    const bool is_first = content.starts_with(begin);
    const auto at = is_first ? 0 : content.find("\n" + begin);
    if (at == std::string::npos) {
        return {};
    }
    const auto from = at + begin.size() + (is_first ? 0 : 1);
    return content.substr(from, content.find('\n', from) - from);
}

bool says_all(const std::string& content, const std::vector<std::string>& lines) {
    return std::ranges::all_of(lines, [&](const std::string& line) { return holds(content, line); });
}

std::string key_of(const book::Entry& entry) {
    const auto* column = book::key_column(*book::find_book_table(entry.table));
    const auto value = column == nullptr ? entry.values.end() : entry.values.find(std::string(column->name));
    return value == entry.values.end() ? std::string{} : to_text(value->second);
}

}  // namespace

std::vector<std::string> lines_of(const book::Entry& entry) {
    std::vector<std::string> lines;
    for (const auto& column : book::find_book_table(entry.table)->columns) {
        const auto value = entry.values.find(std::string(column.name));
        if (value != entry.values.end() && !std::holds_alternative<std::monostate>(value->second)) {
            lines.push_back(fmt::format("{}: {}\n", column.name, to_text(value->second)));
        }
    }
    return lines;
}

KnownRows::KnownRows(const std::string& table, const std::vector<book::AddedRow>& rows) : table_(table) {
    const auto& key = book::find_book_table(table)->key;
    for (const auto& row : rows) {
        rows_.emplace(required_part(row.content), row);
        if (!key.empty()) {
            names_.emplace(value_of(row.content, key.front()), row);
        }
    }
}

const book::AddedRow* KnownRows::named(const std::string& name) const {
    const auto found = names_.find(name);
    return found == names_.end() ? nullptr : &found->second;
}

std::string KnownRows::required_part(const std::string& content) const {
    std::string part;
    for (const auto& column : book::find_book_table(table_)->columns) {
        if (column.required) {
            part += value_of(content, column.name) + '\n';
        }
    }
    return part;
}

std::optional<std::string> KnownRows::take(const book::Entry& entry) {
    std::string content;
    const auto lines = lines_of(entry);
    if (entry.completes) {
        const auto* row = named(key_of(entry));
        return row != nullptr && says_all(row->content, lines) ? std::optional{book::name_of(*row)}
                                                               : std::nullopt;
    }
    for (const auto& line : lines) {
        content += line;
    }
    auto [row, end] = rows_.equal_range(required_part(content));
    for (; row != end; ++row) {
        if (says_all(row->second.content, lines)) {
            auto name = book::name_of(row->second);
            rows_.erase(row);
            return name;
        }
    }
    return std::nullopt;
}

}  // namespace pipward::intake::detail
