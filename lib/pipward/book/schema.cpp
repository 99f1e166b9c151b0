// SPDX-License-Identifier: MIT
#include "pipward/book/schema.h"

#include <algorithm>
#include <array>

#include "pipward/book/detail/schema_groups.h"

namespace pipward::book {

Schema book_tables() {
    using namespace detail;
    static const std::vector<BookTable> tables{block_table(),
                                               tree_row_table(),
                                               station_table(),
                                               accession_table(),
                                               blend_table(),
                                               tree_table(),
                                               bloom_observation_table(),
                                               weather_day_table(),
                                               cross_goal_table(),
                                               pollen_lot_table(),
                                               pollen_test_table(),
                                               pollen_move_table(),
                                               pollination_table(),
                                               branch_work_table(),
                                               fruit_set_table(),
                                               fruit_table(),
                                               seed_lot_table(),
                                               germination_count_table(),
                                               seed_withdrawal_table(),
                                               trait_table(),
                                               trait_score_table()};
    return tables;
}

const BookTable& table_of_type(std::type_index record) {
    return *std::ranges::find(book_tables(), record,
                              [](const BookTable& table) { return table.records.type; });
}

const BookColumn* name_column(const BookTable& table) {
    const auto found = std::ranges::find(table.columns, ColumnRole::name, &BookColumn::role);
    return found == table.columns.end() ? nullptr : &*found;
}

const BookColumn* key_column(const BookTable& table) {
    return table.key.size() == 1 ? find_column(table, table.key.front()) : nullptr;
}

const BookColumn* naming_column(const BookTable& table) {
    const auto* name = name_column(table);
    const auto* last = table.key.empty() ? nullptr : find_column(table, table.key.back());
    const bool with_day = table.key.size() == 2 && name != nullptr && name->name == table.key.front() &&
                          last->role == ColumnRole::day;
    return with_day ? name : key_column(table);
}

const BookTable* find_book_table(std::string_view name, Schema schema) {
    const auto found = std::ranges::find(schema, name, &BookTable::name);
    return found == schema.end() ? nullptr : &*found;
}

const BookColumn* find_column(const BookTable& table, std::string_view name) {
    const auto found = std::ranges::find(table.columns, name, &BookColumn::name);
    return found == table.columns.end() ? nullptr : &*found;
}

std::span<const std::string_view> result_table_names() {
    static constexpr std::array<std::string_view, 12> names{
        "bloom_window", "bloom_model", "bloom_skill",  "bloom_left_out", "meeting_skill",  "cross_outlook",
        "pollen_task",  "field_task",  "row_position", "tree_number",    "first_fruiting", "chill_heat_day"};
    return names;
}

Sentence to_text(GeometryKind kind) {
    switch (kind) {
        case GeometryKind::point:
            return say("point");
        case GeometryKind::line:
            return say("line");
        case GeometryKind::polygon:
            return say("polygon");
        case GeometryKind::none:
            break;
    }
    return say("none");
}

}  // namespace pipward::book
