// SPDX-License-Identifier: MIT
#include "pipward/intake/note_kind.h"

#include <array>

namespace pipward::intake {

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
    const auto* day = book::find_column(table, table.day_column);
    return day != nullptr && day->required ? day : nullptr;
}

bool is_the_note_itself(const book::BookColumn& column) {
    return column.required && (column.type == CellType::whole || column.type == CellType::number);
}

}  // namespace pipward::intake
