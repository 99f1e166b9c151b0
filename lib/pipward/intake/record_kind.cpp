// SPDX-License-Identifier: MIT
#include "pipward/intake/record_kind.h"

#include <array>

namespace pipward::intake {

std::span<const Word<RecordKind>> words(RecordKind) {
    static constexpr std::array<Word<RecordKind>, 8> table{
        {{RecordKind::bloom, "bloom", "stages of bloom"},
         {RecordKind::pollination, "pollination", "flowers pollinated"},
         {RecordKind::pollen_test, "pollen-test", "germination tests of pollen"},
         {RecordKind::harvest, "harvest", "fruit harvested"},
         {RecordKind::seed_lot, "seed-lot", "seed lots"},
         {RecordKind::germination, "germination", "germination counts"},
         {RecordKind::seed_withdrawal, "seed-withdrawal", "seed withdrawals"},
         {RecordKind::score, "score", "trait scores"}}};
    return table;
}

const book::BookTable& table_of(RecordKind kind) {
    static constexpr std::array<std::string_view, 8> tables{
        "bloom_observation", "pollination",       "pollen_test",     "fruit",
        "seed_lot",          "germination_count", "seed_withdrawal", "trait_score"};
    return *book::find_book_table(tables.at(static_cast<std::size_t>(kind)));
}

const book::BookColumn* day_column_of(const book::BookTable& table) {
    const auto* day = book::find_column(table, table.day_column);
    return day != nullptr && day->required ? day : nullptr;
}

bool is_the_record_itself(const book::BookColumn& column) {
    return column.required && (column.type == CellType::whole || column.type == CellType::number);
}

}  // namespace pipward::intake
