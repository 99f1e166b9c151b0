// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/detail/adopting.h"
#include "pipward/intake/detail/book_value.h"
#include "pipward/value/utf8.h"

namespace pipward::intake::detail {
namespace {

struct Goal {
    const FieldGoal* goal;
    const book::BookColumn* column;
    bool own;        // of the rows' own table
    bool with_name;  // several fields go to it: each says what it was
};

std::vector<Goal> goals_of(const FieldMapping& mapping) {
    std::vector<Goal> goals;
    for (const auto& goal : mapping.goals) {
        const auto point = goal.column.find('.');
        const auto table = goal.column.substr(0, std::min(point, goal.column.size()));
        const auto* known = book::find_book_table(table);
        if (known != nullptr) {
            const auto others = std::ranges::count(mapping.goals, goal.column, &FieldGoal::column);
            goals.push_back({&goal, book::find_column(*known, goal.column.substr(point + 1)),
                             table == mapping.table, others > 1});
        }
    }
    return goals;
}

void put(std::map<std::string, Cell>& cells, const Goal& goal, const Cell& value) {
    auto& cell = cells[std::string(goal.column->name)];
    if (!goal.with_name) {
        cell = value;
        return;
    }
    const auto before = to_text(cell);
    cell = before + (before.empty() ? "" : "; ") + goal.goal->field + ": " + to_text(value);
}

void read_cell(Adoption& adoption, AdoptRow& row, const Goal& goal, const std::string& text) {
    constexpr std::size_t enough = 80;
    const auto& field = goal.goal->field;
    auto read = read_value(*goal.column, text);
    if (read.wrong) {
        ++adoption.unreadable[field];
        read.wrong->field = field;
        read.wrong->value = one_line(text, enough);
        adoption.complain_of(row, std::move(*read.wrong));
    } else if (!std::holds_alternative<std::monostate>(read.cell)) {
        put(goal.own ? row.cells : row.accession, goal, read.cell);
    }
}

void expect_name(Adoption& adoption, AdoptRow& row) {
    const bool mapped = adoption.mapping.to(adoption.table + "." + adoption.key()) != nullptr;
    if (mapped && row.text(adoption.key()).empty()) {
        adoption.complain(row, {Level::error,
                                adoption.mapping.to(adoption.table + "." + adoption.key())->field,
                                {},
                                adoption.table == "tree" ? say("It has no label.") : say("It has no name."),
                                say("Fill it in, or remove the feature from the layer.")});
    }
}

void fill_in(AdoptRow& row, const std::string& table, const AdoptOptions& options) {
    if (table == "tree") {
        const auto purpose = options.purpose.value_or(TreePurpose::other);
        row.cells.try_emplace("purpose", std::string(to_word(purpose)));
    }
    if (table == "tree_row") {
        row.cells.try_emplace("first_position", std::int64_t{1});
    }
    if (table == "accession") {
        fill_in_accession(row.cells, options);
    }
    if ((table == "tree" || table == "tree_row") && !options.block.empty()) {
        row.cells.try_emplace("block", options.block);
    }
}

void expect_required(Adoption& adoption) {
    const auto missing = [&](const std::string& column) {
        return std::ranges::any_of(adoption.rows, [&](const AdoptRow& row) {
            return row.fate != Fate::left_out && row.text(column).empty();
        });
    };
    if (adoption.table == "accession" && missing("kind")) {
        adoption.tell(
            Level::error, "accession-kind", {}, say("The layer does not give the kind of every accession."),
            say("Give it for those with accession-kind: cultivar, selection, seedling, species or unknown."));
    }
    if (adoption.table == "tree_row" && missing("block")) {
        adoption.tell(Level::error, "block", {}, say("The layer does not give the block of every row."),
                      say("Give it for those with block."));
    }
}

}  // namespace

void fill_in_accession(std::map<std::string, Cell>& cells, const AdoptOptions& options) {
    if (options.accession_kind) {
        cells.try_emplace("kind", std::string(to_word(*options.accession_kind)));
    }
    const auto species =
        read_value(*book::find_column(*book::find_book_table("accession"), "species"), options.species).cell;
    if (!std::holds_alternative<std::monostate>(species)) {
        cells.try_emplace("species", species);
    }
}

void read_values(Adoption& adoption, const book::UserLayer& layer, const AdoptOptions& options) {
    const auto goals = goals_of(adoption.mapping);
    for (std::size_t i = 0; i < adoption.rows.size(); ++i) {
        auto& row = adoption.rows[i];
        if (row.fate == Fate::left_out) {
            continue;
        }
        const auto& texts = layer.features[i].texts;
        // The name first: it is what findings call the row.
        for (const bool naming : {true, false}) {
            for (const auto& goal : goals) {
                const auto text = texts.find(goal.goal->field);
                const bool names = goal.own && goal.column->name == adoption.key();
                if (text != texts.end() && names == naming) {
                    read_cell(adoption, row, goal, text->second);
                }
            }
        }
        expect_name(adoption, row);
        fill_in(row, adoption.table, options);
    }
    expect_required(adoption);
}

}  // namespace pipward::intake::detail
