// SPDX-License-Identifier: MIT
#include "pipward/book/detail/check.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "pipward/book/detail/check_slips.h"
#include "pipward/book/detail/with_schema.h"

namespace pipward::book {
namespace {

Finding finding(Level level, detail::Whereabouts place, Sentence message, Sentence remedy) {
    return {.level = level,
            .table = std::string(place.table),
            .row = std::move(place.row),
            .field = std::string(place.field),
            .value = std::move(place.value),
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

std::set<std::string> texts_in(const BookTable& table, const BookColumn& column, const Orchard& orchard) {
    std::set<std::string> texts;
    for (const auto* record : table.records.all(orchard)) {
        texts.insert(to_text(column.field.show(record)));
    }
    return texts;
}

// One letter wrong, missing, added, or two neighbours swapped.
bool one_slip_apart(std::string_view a, std::string_view b) {
    if (a.size() > b.size()) {
        std::swap(a, b);
    }
    if (b.size() - a.size() > 1 || b.size() < 4) {
        return false;
    }
    const auto start = static_cast<std::size_t>(std::ranges::mismatch(a, b).in1 - a.begin());
    const auto rest = [&](std::string_view text, std::size_t skip) {
        return text.substr(std::min(text.size(), start + skip));
    };
    if (a.size() < b.size()) {
        return rest(a, 0) == rest(b, 1);
    }
    const bool swapped = start + 1 < a.size() && a[start] == b[start + 1] && a[start + 1] == b[start];
    return rest(a, 1) == rest(b, 1) || (swapped && rest(a, 2) == rest(b, 2));
}

// A row that is there but could not be read still answers to its name.
void add_unread(detail::Names& names, const UnreadRows& unread, Schema schema) {
    for (const auto& [name, rows] : unread) {
        names.unread.insert(name);
        const auto* table = find_book_table(name, schema);
        if (const auto* key = table == nullptr ? nullptr : naming_column(*table)) {
            names.by_column[{table->name, key->name}].insert(rows.begin(), rows.end());
        }
    }
}

}  // namespace

Finding detail::error(detail::Whereabouts place, Sentence message, Sentence remedy) {
    return finding(Level::error, std::move(place), std::move(message), std::move(remedy));
}

Finding detail::warning(detail::Whereabouts place, Sentence message, Sentence remedy) {
    return finding(Level::warning, std::move(place), std::move(message), std::move(remedy));
}

Finding detail::notice(detail::Whereabouts place, Sentence message, Sentence remedy) {
    return finding(Level::notice, std::move(place), std::move(message), std::move(remedy));
}

std::string detail::fid_name(std::int64_t fid) {
    return fmt::format("fid {}", fid);
}

std::string detail::folded(std::string_view name) {
    std::string text;
    for (const char letter : name) {
        const auto byte = static_cast<unsigned char>(letter);
        if (std::isspace(byte) != 0) {
            text += text.empty() || text.back() == ' ' ? "" : " ";
        } else {
            text += byte < 0x80 ? static_cast<char>(std::tolower(byte)) : letter;
        }
    }
    if (text.ends_with(' ')) {
        text.pop_back();
    }
    return text;
}

std::string detail::likely_name(const std::string& name, const std::set<std::string>& known) {
    const auto wanted = detail::folded(name);
    for (const auto& candidate : known) {
        if (detail::folded(candidate) == wanted) {
            return candidate;
        }
    }
    for (const auto& candidate : known) {
        if (one_slip_apart(detail::folded(candidate), wanted)) {
            return candidate;
        }
    }
    return {};
}

std::string detail::row_name(const BookTable& table, const void* record) {
    const auto* key = naming_column(table);
    return key == nullptr ? detail::fid_name(table.records.show(record).fid)
                          : to_text(key->field.show(record));
}

const std::set<std::string>& detail::Names::of(std::string_view table, std::string_view column) const {
    static const std::set<std::string> none;
    const auto found = by_column.find({table, column});
    return found == by_column.end() ? none : found->second;
}

detail::Names detail::names_of(const Orchard& orchard, Schema schema) {
    std::set<detail::Names::Column> wanted;
    for (const auto& table : schema) {
        if (const auto* name = name_column(table)) {
            wanted.insert({table.name, name->name});
        }
        for (const auto& column : table.columns) {
            for (const auto& to : column.references) {
                wanted.insert({to.table, to.column});
            }
        }
    }
    detail::Names names;
    for (const auto& [name, of] : wanted) {
        const auto* table = find_book_table(name, schema);
        const auto* column = table == nullptr ? nullptr : find_column(*table, of);
        if (column != nullptr) {
            names.by_column[{table->name, column->name}] = texts_in(*table, *column, orchard);
        }
    }
    return names;
}

UnreadRows unread_in(const Findings& findings) {
    UnreadRows unread;
    for (const auto& finding : findings) {
        if (finding.level == Level::error) {
            auto& rows = unread[finding.table];
            if (!finding.row.empty()) {
                rows.insert(finding.row);
            }
        }
    }
    return unread;
}

Findings check_orchard(const Orchard& orchard, Day as_of, const UnreadRows& unread) {
    return detail::check_orchard(orchard, as_of, unread, book_tables());
}

Findings detail::check_orchard(const Orchard& orchard, Day as_of, const UnreadRows& unread, Schema schema) {
    Findings findings;
    auto names = detail::names_of(orchard, schema);
    const OrchardIndex book(orchard);
    add_unread(names, unread, schema);
    detail::check_emptiness(orchard, names, findings);
    detail::check_keys(orchard, schema, findings);
    detail::check_references(orchard, names, schema, findings);
    detail::check_numbers(orchard, schema, findings);
    detail::check_trees(orchard, as_of, findings);
    detail::check_bloom_observations(book, as_of, findings);
    detail::check_time_of_bloom(orchard, as_of, findings);
    detail::check_weather(orchard, as_of, findings);
    detail::check_warmth(orchard, findings);
    detail::check_accessions(orchard, findings);
    detail::check_pedigree(orchard, findings);
    detail::check_descent(book, findings);
    detail::check_blends(orchard, names, findings);
    detail::check_goals(book, names, as_of, findings);
    detail::check_pollen(book, as_of, findings);
    detail::check_branches(book, as_of, findings);
    detail::check_seed(book, as_of, findings);
    detail::check_slips(orchard, schema, findings);
    return findings;
}

}  // namespace pipward::book
