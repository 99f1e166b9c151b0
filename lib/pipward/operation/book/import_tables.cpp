// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/layer_columns.h"
#include "pipward/operation/book/detail/import_tables.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/value/utf8.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct FieldRow {
    const intake::FieldGoal* goal = nullptr;
    std::string samples{};
    int known = 0;
    int unreadable = 0;
};

std::vector<CodeWord> column_words() {
    std::vector<CodeWord> codes;
    for (const auto& column : intake::layer_columns()) {
        codes.push_back({column.code, std::string(column.label)});
    }
    return codes;
}

const std::vector<ColumnOf<FieldRow>>& field_columns() {
    static const std::vector<ColumnOf<FieldRow>> columns{
        {{"field", text, "", "Field", "The field of the layer."},
         [](const FieldRow& f) { return text_cell(f.goal->field); }},
        {{"goes_to", text, "", "Target column",
          "The column of the book; empty where the field is not imported.", column_words()},
         [](const FieldRow& f) { return text_cell(f.goal->column); }},
        {{"guessed_by", text, "", "Recognised by", "How it was recognised.", codes_of<intake::GuessedBy>()},
         [](const FieldRow& f) { return text_cell(to_word(f.goal->by)); }},
        {{"word", text, "", "Word", "The word recognised in its name."},
         [](const FieldRow& f) { return text_cell(f.goal->word); }},
        {{"instead", text, "", "Imported instead", "The field that the column is imported from instead."},
         [](const FieldRow& f) { return text_cell(f.goal->column.empty() ? f.goal->instead : ""); }},
        {{"samples", text, "", "Samples", "Some of its values."},
         [](const FieldRow& f) { return text_cell(f.samples); }},
        {{"known", whole, "", "Known", "Features with a value."},
         [](const FieldRow& f) { return whole_cell(f.known); }},
        {{"unreadable", whole, "", "Unreadable", "Values that the column cannot hold."},
         [](const FieldRow& f) { return whole_cell(f.unreadable); }},
    };
    return columns;
}

constexpr TableOf<FieldRow> adopt_field_rows{
    "import_field", "Field mapping", "Column of the book for each field of the layer.", field_columns, [] {
        return TableView{.first = {"field", "goes_to", "guessed_by", "samples", "known", "unreadable"}};
    }};

struct FateRow {
    const intake::AdoptRow* row = nullptr;
    std::string name{};
};

std::optional<MapPoint> place_of(const FateRow& fate) {
    return fate.row->points.empty() || fate.row->fate == intake::Fate::refused
               ? std::nullopt
               : std::optional{fate.row->points.front()};
}

const std::vector<ColumnOf<FateRow>>& row_columns() {
    static const std::vector<ColumnOf<FateRow>> columns{
        {{"feature", text, "", "Feature", "The row of the layer, by its number."},
         [](const FateRow& r) { return text_cell(r.row->feature); }},
        {{"name", text, "", "Name", "Its label or name in the book."},
         [](const FateRow& r) { return text_cell(r.name); }},
        {{"accession", text, "", "Accession", "A tree's accession, as the book writes it."},
         [](const FateRow& r) { return text_cell(r.row->text("accession")); }},
        {{"block", text, "", "Block", "The block that it stands in."},
         [](const FateRow& r) { return text_cell(r.row->text("block")); }},
        {{"row", text, "", "Tree row", "A tree's row within the block."},
         [](const FateRow& r) { return text_cell(r.row->text("row")); }},
        {{"position", text, "", "Position", "A tree's position in the row."},
         [](const FateRow& r) { return text_cell(r.row->text("position")); }},
        {{"action", text, "", "What happens", "What writing does with it.", codes_of<intake::Fate>()},
         [](const FateRow& r) { return text_cell(to_word(r.row->fate)); }},
        {{"why", text, "", "Why", "The reason, where it is not simply added."},
         [](const FateRow& r) { return r.row->why.empty() ? Cell{} : Cell{r.row->why}; }},
    };
    return columns;
}

constexpr TableOf<FateRow> adopt_row_rows{
    "import_feature",
    "Features",
    "What happens to each feature of the layer.",
    row_columns,
    [] {
        return TableView{.first = {"feature", "name", "action", "accession", "block", "row", "position"},
                         .below = {"why"}};
    },
    place_of};

}  // namespace

ResultShape import_field_shape() {
    return adopt_field_rows.shape();
}

Table import_field_table(const intake::Adoption& adoption) {
    std::vector<FieldRow> rows;
    for (std::size_t i = 0; i < adoption.fields.size(); ++i) {
        const auto& field = adoption.fields[i];
        const auto unreadable = adoption.unreadable.find(field.name);
        rows.push_back({&adoption.mapping.goals[i], intake::samples_of(field),
                        static_cast<int>(field.texts.size()),
                        unreadable == adoption.unreadable.end() ? 0 : unreadable->second});
    }
    return adopt_field_rows.of(rows);
}

ResultShape import_feature_shape() {
    return adopt_row_rows.shape();
}

Table import_feature_table(const intake::Adoption& adoption) {
    std::vector<FateRow> rows;
    for (const auto& row : adoption.rows) {
        rows.push_back({&row, one_line(row.text(adoption.key()), 60)});
    }
    return adopt_row_rows.of(rows);
}

}  // namespace pipward::operation::detail
