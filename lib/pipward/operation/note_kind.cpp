// SPDX-License-Identifier: MIT
#include "pipward/operation/note_kind.h"

#include <algorithm>
#include <array>

namespace pipward::operation {
namespace {

// Spreadsheets take text that begins with one of these for a formula, or for the end of a cell.
constexpr std::string_view formula_beginnings = "=+-@\t\r";

bool begins_as_formula(std::string_view text) {
    return !text.empty() && formula_beginnings.find(text.front()) != std::string_view::npos;
}

}  // namespace

std::span<const Word<NoteKind>> words(NoteKind) {
    static constexpr std::array<Word<NoteKind>, 8> table{
        {{NoteKind::bloom, "bloom", "stages of bloom"},
         {NoteKind::pollination, "pollination", "flowers worked"},
         {NoteKind::pollen_test, "pollen-test", "germination tests of pollen"},
         {NoteKind::pick, "pick", "fruit picked"},
         {NoteKind::seed_lot, "seed-lot", "seed lots"},
         {NoteKind::sprouts, "sprouts", "sprout counts"},
         {NoteKind::seed_out, "seed-out", "seed taken out"},
         {NoteKind::score, "score", "trait scores"}}};
    return table;
}

const book::BookTable& table_of(NoteKind kind) {
    static constexpr std::array<std::string_view, 8> tables{"bloom_note", "pollination", "pollen_test",
                                                            "fruit",      "seed_lot",    "sprout_count",
                                                            "seed_out",   "trait_score"};
    return *book::find_book_table(tables.at(static_cast<std::size_t>(kind)));
}

const book::BookColumn* day_column_of(const book::BookTable& table) {
    const auto found = std::ranges::find_if(table.columns, [](const book::BookColumn& column) {
        return column.type == CellType::day && column.required;
    });
    return found == table.columns.end() ? nullptr : &*found;
}

bool is_the_note_itself(const book::BookColumn& column) {
    return column.required && (column.type == CellType::whole || column.type == CellType::number);
}

std::string harmless(const std::string& text) {
    return begins_as_formula(text) ? "'" + text : text;
}

std::string_view without_apostrophe(std::string_view text) {
    return text.starts_with('\'') && begins_as_formula(text.substr(1)) ? text.substr(1) : text;
}

}  // namespace pipward::operation
