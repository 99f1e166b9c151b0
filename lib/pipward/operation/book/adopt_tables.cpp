// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "pipward/intake/layer_columns.h"
#include "pipward/operation/book/detail/adopt_tables.h"
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

constexpr std::array guess_words{
    Word<intake::GuessedBy>{intake::GuessedBy::nothing, "none", "goes nowhere"},
    Word<intake::GuessedBy>{intake::GuessedBy::same_name, "same_name", "same name"},
    Word<intake::GuessedBy>{intake::GuessedBy::word, "trade_word", "trade word"},
    Word<intake::GuessedBy>{intake::GuessedBy::cut_short, "cut_short", "name cut short"},
    Word<intake::GuessedBy>{intake::GuessedBy::near_word, "near_word", "name some letters off"},
    Word<intake::GuessedBy>{intake::GuessedBy::values, "values", "its values are accessions of the book"},
    Word<intake::GuessedBy>{intake::GuessedBy::given, "given", "as you said"}};

std::vector<CodeWord> guesses_as_codes() {
    std::vector<CodeWord> codes;
    for (const auto& word : guess_words) {
        codes.push_back({std::string(word.word), std::string(word.meaning)});
    }
    return codes;
}

std::string guess_code(intake::GuessedBy by) {
    return std::string(std::ranges::find(guess_words, by, &Word<intake::GuessedBy>::value)->word);
}

const std::vector<ColumnOf<FieldRow>>& field_columns() {
    static const std::vector<ColumnOf<FieldRow>> columns{
        {{"field", text, "", "Field", "The field of the layer."},
         [](const FieldRow& f) { return text_cell(f.goal->field); }},
        {{"goes_to", text, "", "Goes to", "The column of the book; empty where it is not taken.",
          column_words()},
         [](const FieldRow& f) { return text_cell(f.goal->column); }},
        {{"guessed_by", text, "", "Guessed by", "How that was found.", guesses_as_codes()},
         [](const FieldRow& f) { return text_cell(guess_code(f.goal->by)); }},
        {{"word", text, "", "Word", "The word that its name was taken for."},
         [](const FieldRow& f) { return text_cell(f.goal->word); }},
        {{"instead", text, "", "Taken instead", "The field that the column is taken from instead."},
         [](const FieldRow& f) { return text_cell(f.goal->column.empty() ? f.goal->instead : ""); }},
        {{"samples", text, "", "Samples", "Some of its values."},
         [](const FieldRow& f) { return text_cell(f.samples); }},
        {{"known", whole, "", "Known", "Features that have a value."},
         [](const FieldRow& f) { return whole_cell(f.known); }},
        {{"unreadable", whole, "", "Unreadable", "Values that the column cannot hold."},
         [](const FieldRow& f) { return whole_cell(f.unreadable); }},
    };
    return columns;
}

std::string samples_of(const intake::FieldSample& field) {
    constexpr std::size_t enough = 3;
    constexpr std::size_t longest = 24;
    std::vector<std::string> seen;
    for (const auto& text : field.texts) {
        const auto shown = one_line(text, longest);
        if (seen.size() < enough && std::ranges::find(seen, shown) == seen.end()) {
            seen.push_back(shown);
        }
    }
    std::string samples;
    for (const auto& text : seen) {
        samples += (samples.empty() ? "" : " | ") + text;
    }
    return samples;
}

struct FateRow {
    const intake::AdoptRow* row = nullptr;
    std::string name{};
};

constexpr std::array fate_words{Word<intake::Fate>{intake::Fate::added, "added", "added"},
                                Word<intake::Fate>{intake::Fate::known, "known", "in the book already"},
                                Word<intake::Fate>{intake::Fate::left_out, "left_out", "left out"},
                                Word<intake::Fate>{intake::Fate::refused, "refused", "refused"}};

std::vector<CodeWord> fates_as_codes() {
    std::vector<CodeWord> codes;
    for (const auto& word : fate_words) {
        codes.push_back({std::string(word.word), std::string(word.meaning)});
    }
    return codes;
}

std::string fate_code(intake::Fate fate) {
    return std::string(std::ranges::find(fate_words, fate, &Word<intake::Fate>::value)->word);
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
        {{"fate", text, "", "What happens", "What writing does with it.", fates_as_codes()},
         [](const FateRow& r) { return text_cell(fate_code(r.row->fate)); }},
        {{"why", text, "", "Why", "The reason, where it is not simply added."},
         [](const FateRow& r) { return r.row->why.empty() ? Cell{} : Cell{r.row->why}; }},
    };
    return columns;
}

}  // namespace

TableShape adopt_field_shape() {
    return shape_of<FieldRow>(
        {"adopt_field", "Fields", "Where each field of the layer goes in the book.", false, {}},
        field_columns());
}

Table adopt_field_table(const intake::Adoption& adoption) {
    Table table{adopt_field_shape(), {}};
    for (std::size_t i = 0; i < adoption.fields.size(); ++i) {
        const auto& field = adoption.fields[i];
        const auto unreadable = adoption.unreadable.find(field.name);
        const FieldRow row{&adoption.mapping.goals[i], samples_of(field),
                           static_cast<int>(field.texts.size()),
                           unreadable == adoption.unreadable.end() ? 0 : unreadable->second};
        table.rows.push_back(row_of(row, field_columns()));
    }
    return table;
}

TableShape adopt_row_shape() {
    return shape_of<FateRow>(
        {"adopt_row", "Features", "What becomes of each feature of the layer.", true, {}}, row_columns());
}

Table adopt_row_table(const intake::Adoption& adoption) {
    Table table{adopt_row_shape(), {}};
    for (const auto& row : adoption.rows) {
        table.rows.push_back(row_of(FateRow{&row, one_line(row.text(adoption.key()), 60)}, row_columns()));
        if (!row.points.empty() && row.fate != intake::Fate::refused) {
            table.rows.back().at = row.points.front();
        }
    }
    return table;
}

}  // namespace pipward::operation::detail
