// SPDX-License-Identifier: MIT
#include "pipward/book/detail/entry_reading.h"

#include <algorithm>
#include <array>
#include <set>
#include <string_view>

#include "pipward/book/part_reading.h"
#include "pipward/book/schema.h"

namespace pipward::book::detail {
namespace {

using Names = std::set<std::string>;

// Their rules compare each row with all others.
constexpr std::array judged_by_all{"tree", "accession", "blend", "cross_goal"};
// Of these no rule asks for more than the rows that are named.
constexpr std::array taken_by_name{"weather_day", "tree", "accession", "block", "tree_row", "trait_score"};

bool is_one_of(std::span<const char* const> tables, std::string_view table) {
    return std::ranges::find(tables, table) != tables.end();
}

Names named_in(const Entry& entry, std::string_view table) {
    Names names;
    for (const auto& column : find_book_table(entry.table)->columns) {
        const bool refers =
            std::ranges::find(column.references, table, &Reference::table) != column.references.end();
        const auto value = entry.values.find(std::string(column.name));
        const auto* name =
            refers && value != entry.values.end() ? std::get_if<std::string>(&value->second) : nullptr;
        if (name != nullptr) {
            names.insert(*name);
        }
    }
    return names;
}

void take_named(OrchardShelf& shelf, std::string_view table, std::string_view column, const Names& names) {
    if (!names.empty()) {
        const Held held{column, names};
        shelf.take(table, std::span(&held, 1));
    }
}

// A spring's observations are compared with those of other springs, whatever tree they are of.
bool takes_whole(const BookTable& table, const Entry& entry) {
    return (table.name == entry.table && table.name != "trait_score") ||
           (!is_one_of(taken_by_name, table.name) && table.name != "bloom_observation");
}

Names accessions_of(const Orchard& part) {
    Names names;
    for (const auto& tree : part.trees) {
        names.insert(tree.accession.value_or(""));
    }
    for (const auto& goal : part.goals) {
        names.insert({goal.seed_parent, goal.pollen_parent});
    }
    for (const auto& lot : part.pollen_lots) {
        names.insert(lot.donor);
    }
    for (const auto& member : part.blend_members) {
        names.insert(member.member);
    }
    names.erase("");
    return names;
}

Names trees_of(const Orchard& part, const Entry& entry) {
    auto labels = named_in(entry, "tree");
    const auto tags = named_in(entry, "pollination");
    for (const auto& work : part.pollinations) {
        if (tags.contains(work.tag)) {
            labels.insert(work.tree);
        }
    }
    return labels;
}

}  // namespace

std::optional<BookReading> read_for_entry(const BookAt& book, const Entry& entry) {
    const auto* table = find_book_table(entry.table);
    if (table == nullptr || is_one_of(judged_by_all, entry.table)) {
        return std::nullopt;
    }
    return read_part(book, [&](OrchardShelf& shelf) {
        for (const auto& other : book_tables()) {
            if (takes_whole(other, entry)) {
                shelf.take(other.name, {});
            }
        }
        take_named(shelf, "tree", "label", trees_of(shelf.taken(), entry));
        auto accessions = accessions_of(shelf.taken());
        accessions.merge(named_in(entry, "accession"));
        take_named(shelf, "accession", "name", accessions);
        return true;
    });
}

BookReading read_without_weather(const BookAt& book) {
    std::set<std::string> tables;
    for (const auto& table : book_tables()) {
        if (table.name != "weather_day") {
            tables.emplace(table.name);
        }
    }
    return read_tables(book, tables);
}

}  // namespace pipward::book::detail
