// SPDX-License-Identifier: MIT
#include "pipward/intake/record_kind.h"

#include <algorithm>
#include <array>
#include <vector>

namespace pipward::intake {
namespace {

/// What makes a kind of records out of a table.
struct KindForm {
    RecordKind kind = RecordKind::bloom;
    std::string_view table;
    std::vector<std::string_view> columns{};  ///< empty: all of them
    std::vector<std::string_view> needed{};   ///< besides those that the table requires
    bool completes = false;
};

const std::vector<KindForm>& forms() {
    static const std::vector<KindForm> all{
        {RecordKind::bloom, "bloom_observation"},
        {RecordKind::pollination, "pollination"},
        {RecordKind::pollen_test, "pollen_test"},
        {RecordKind::harvest, "fruit"},
        {RecordKind::seed_lot, "seed_lot"},
        {RecordKind::germination, "germination_count"},
        {RecordKind::seed_withdrawal, "seed_withdrawal"},
        {RecordKind::score, "trait_score"},
        {RecordKind::pollen_lot, "pollen_lot"},
        {RecordKind::pollen_move, "pollen_move"},
        {RecordKind::branch_work, "branch_work"},
        {RecordKind::fruit_set, "fruit_set"},
        {RecordKind::stratification,
         "seed_lot",
         {"code", "stratified_from", "stratification_c", "stratified_to", "treatment", "medium"},
         {"stratified_from"},
         true},
        {RecordKind::goal, "cross_goal"},
        {RecordKind::accession, "accession"},
        {RecordKind::blend, "blend"},
        {RecordKind::tree, "tree"},
        {RecordKind::station, "station"},
        {RecordKind::trait, "trait"}};
    return all;
}

bool is_among(const std::vector<std::string_view>& names, std::string_view name) {
    return std::ranges::find(names, name) != names.end();
}

book::BookColumn degrees_column(std::string_view name, std::string_view label, std::string_view description) {
    book::BookColumn column;
    column.name = name;
    column.type = CellType::number;
    column.label = label;
    column.description = description;
    column.unit = "°";
    column.role = book::ColumnRole::number;
    return column;
}

// Before the remark, which comes last in every table.
void add_place(book::BookTable& table) {
    const auto remark = std::ranges::find(table.columns, book::ColumnRole::remark, &book::BookColumn::role);
    table.columns.insert(remark,
                         {degrees_column(latitude_column, "Latitude", "North of the equator, WGS 84."),
                          degrees_column(longitude_column, "Longitude", "East of Greenwich, WGS 84.")});
}

book::BookTable made(const KindForm& form) {
    auto table = *book::find_book_table(form.table);
    std::erase_if(table.columns, [&](const book::BookColumn& column) {
        return !form.columns.empty() && !is_among(form.columns, column.name);
    });
    for (auto& column : table.columns) {
        column.required = column.required || is_among(form.needed, column.name);
    }
    if (form.completes) {
        table.day_column = form.needed.front();
    }
    if (table.geometry == book::GeometryKind::point) {
        add_place(table);
    }
    return table;
}

const KindForm& form_of(RecordKind kind) {
    return *std::ranges::find(forms(), kind, &KindForm::kind);
}

std::vector<book::BookTable> make_tables() {
    std::vector<book::BookTable> tables;
    for (const auto& form : forms()) {
        tables.push_back(made(form));
    }
    return tables;
}

}  // namespace

std::span<const Word<RecordKind>> words(RecordKind) {
    static constexpr std::array<Word<RecordKind>, 19> table{
        {{RecordKind::bloom, "bloom", "stages of bloom"},
         {RecordKind::pollination, "pollination", "flowers pollinated"},
         {RecordKind::pollen_test, "pollen-test", "germination tests of pollen"},
         {RecordKind::harvest, "harvest", "fruit harvested"},
         {RecordKind::seed_lot, "seed-lot", "seed lots"},
         {RecordKind::germination, "germination", "germination counts"},
         {RecordKind::seed_withdrawal, "seed-withdrawal", "seed withdrawals"},
         {RecordKind::score, "score", "trait scores"},
         {RecordKind::pollen_lot, "pollen-lot", "pollen collected"},
         {RecordKind::pollen_move, "pollen-move", "pollen brought to another store"},
         {RecordKind::branch_work, "branch-work", "bags, emasculation, branches cut"},
         {RecordKind::fruit_set, "fruit-set", "fruit counted on the tree"},
         {RecordKind::stratification, "stratification", "seed lots put into stratification"},
         {RecordKind::goal, "goal", "cross goals"},
         {RecordKind::accession, "accession", "accessions"},
         {RecordKind::blend, "blend", "members of pollen blends"},
         {RecordKind::tree, "tree", "trees"},
         {RecordKind::station, "station", "weather stations"},
         {RecordKind::trait, "trait", "traits that are scored"}}};
    return table;
}

const book::BookTable& table_of(RecordKind kind) {
    static const auto tables = make_tables();
    return tables[static_cast<std::size_t>(&form_of(kind) - forms().data())];
}

bool completes_rows(RecordKind kind) {
    return form_of(kind).completes;
}

const book::BookColumn* day_column_of(const book::BookTable& table) {
    const auto* day = book::find_column(table, table.day_column);
    return day != nullptr && day->required ? day : nullptr;
}

bool is_the_record_itself(const book::BookColumn& column) {
    return column.required && (column.type == CellType::whole || column.type == CellType::number);
}

}  // namespace pipward::intake
