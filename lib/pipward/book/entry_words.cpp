// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <sstream>

#include "pipward/book/entry.h"
#include "pipward/book/schema.h"

namespace pipward {
namespace {

struct EntryKind {
    std::string_view table;
    std::string_view name;
};

constexpr std::array kinds{
    EntryKind{"bloom_note", "Bloom note"},   EntryKind{"pollen_test", "Pollen test"},
    EntryKind{"pollination", "Pollination"}, EntryKind{"fruit", "Pick"},
    EntryKind{"seed_lot", "Seed lot"},       EntryKind{"sprout_count", "Sprout count"},
    EntryKind{"seed_out", "Seed taken out"}, EntryKind{"trait_score", "Trait score"},
};

constexpr auto table_names = [] {
    std::array<std::string_view, kinds.size()> names;
    std::ranges::transform(kinds, names.begin(), &EntryKind::table);
    return names;
}();

// In the middle of a sentence; but "BBCH stage" stays.
std::string inside(std::string_view label) {
    std::string text(label);
    const bool is_word = text.size() > 1 && text[1] >= 'a' && text[1] <= 'z';
    if (is_word && text[0] >= 'A' && text[0] <= 'Z') {
        text[0] = static_cast<char>(text[0] - 'A' + 'a');
    }
    return text;
}

// A code says little; what it stands for is added.
std::string meaning_of(const BookColumn& column, const std::string& value) {
    const auto* domain = find_domain(column.domain);
    if (domain == nullptr) {
        return {};
    }
    const auto found = std::ranges::find(domain->choices, value, &Choice::value);
    return found == domain->choices.end() ? std::string{} : fmt::format(" ({})", found->meaning);
}

std::string part(const BookColumn& column, const Cell& cell) {
    const auto value = to_text(cell);
    const auto unit = column.unit.empty() || column.unit == "count" ? "" : fmt::format(" {}", column.unit);
    return fmt::format("{} {}{}{}", inside(column.label), value, unit, meaning_of(column, value));
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
    return table_names;
}

std::string in_words(const Entry& entry) {
    const auto kind = std::ranges::find(kinds, entry.table, &EntryKind::table);
    const auto* table = find_book_table(entry.table);
    std::string text(kind == kinds.end() ? std::string_view(entry.table) : kind->name);
    std::string_view joint = ": ";
    for (const auto& column : table == nullptr ? std::vector<BookColumn>{} : table->columns) {
        const auto given = entry.values.find(std::string(column.name));
        if (given != entry.values.end() && !std::holds_alternative<std::monostate>(given->second)) {
            text += joint;
            text += part(column, given->second);
            joint = ", ";
        }
    }
    return text;
}

std::string in_words(const AddedRow& row) {
    return in_words(entry_of(row));
}

std::string name_of(const AddedRow& row) {
    return fmt::format("{}/{}", row.table, row.fid);
}

}  // namespace pipward
