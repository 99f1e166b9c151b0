// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/adopt_known.h"

#include <cmath>

#include "pipward/book/records.h"

namespace pipward::intake::detail {
namespace {

bool says_something(const std::string& column, const Cell& cell) {
    return !std::holds_alternative<std::monostate>(cell) &&
           !(column == "purpose" && to_text(cell) == "other");
}

bool same(const Cell& a, const Cell& b) {
    const auto* x = std::get_if<double>(&a);
    const auto* y = std::get_if<double>(&b);
    return x != nullptr && y != nullptr ? std::abs(*x - *y) < 0.5 : to_text(a) == to_text(b);
}

}  // namespace

std::map<std::string, KnownThing> known_things(const std::string& table, const Orchard& orchard) {
    const auto& known_table = *book::find_book_table(table);
    const bool is_row = table == "tree_row";
    std::map<std::string, KnownThing> known;
    for (const auto& row : book::rows_of(known_table, orchard)) {
        KnownThing thing{book::known_cells(known_table, row), row.at};
        if (!row.line.empty()) {
            thing.at = row.line.front();
        }
        const auto name = to_text(book::cell_of(known_table, row, table == "tree" ? "label" : "name"));
        known.emplace(is_row ? to_text(book::cell_of(known_table, row, "block")) + "\n" + name : name,
                      std::move(thing));
    }
    return known;
}

std::vector<Difference> differences(const AdoptRow& row, const KnownThing& known) {
    std::vector<Difference> found;
    for (const auto& [column, value] : row.cells) {
        const auto other = known.cells.find(column);
        if (other != known.cells.end() && says_something(column, value) &&
            says_something(column, other->second) && !same(value, other->second)) {
            found.push_back({column, to_text(value), to_text(other->second)});
        }
    }
    return found;
}

}  // namespace pipward::intake::detail
