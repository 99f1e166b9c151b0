// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>

#include "pipward/book/schema.h"
#include "pipward/record/words.h"
#include "pipward/value/bbch.h"
#include "pipward/value/field_type.h"
#include "pipward/value/quantity.h"
#include "pipward/value/season.h"

/// The types that a field of a record may have. Each has three overloads: what a column of it is like, how
/// its value is shown as a cell, and how a cell is read into it.
namespace pipward::book::detail {

/// What the type of a field says of its column; the column may say otherwise.
struct FieldForm {
    CellType type = CellType::text;
    ColumnRole role = ColumnRole::text;
    std::string_view unit{};
    std::string_view domain{};
};

FieldForm form_of(const std::string&);
FieldForm form_of(int);
FieldForm form_of(double);
FieldForm form_of(Day);
FieldForm form_of(Bbch);
FieldForm form_of(Season);
FieldForm form_of(Metres);
FieldForm form_of(Milligrams);
FieldForm form_of(Share);
FieldForm form_of(Celsius);
FieldForm form_of(ChillPortions);

Cell show_value(const std::string& value);
Cell show_value(int value);
Cell show_value(double value);
Cell show_value(Day value);
Cell show_value(Bbch value);
Cell show_value(Season value);
Cell show_value(Metres value);
Cell show_value(Milligrams value);
Cell show_value(Share value);
Cell show_value(Celsius value);
Cell show_value(ChillPortions value);

/// False where the cell holds nothing of the type; the value is then as it was.
bool read_cell(const Cell& cell, std::string& value);
bool read_cell(const Cell& cell, int& value);
bool read_cell(const Cell& cell, double& value);
bool read_cell(const Cell& cell, Day& value);
bool read_cell(const Cell& cell, Bbch& value);
bool read_cell(const Cell& cell, Season& value);
bool read_cell(const Cell& cell, Metres& value);
bool read_cell(const Cell& cell, Milligrams& value);
bool read_cell(const Cell& cell, Share& value);
bool read_cell(const Cell& cell, Celsius& value);
bool read_cell(const Cell& cell, ChillPortions& value);

template <class Field>
concept CellField = OneOf < ValueOf<Field>,
        std::string,
int, double, Day, Bbch, Season, Metres, Milligrams, Share, Celsius, ChillPortions > || Worded<ValueOf<Field>>;

template <CellField Field>
FieldForm field_form() {
    if constexpr (Worded<ValueOf<Field>>) {
        return {CellType::text, ColumnRole::choice};
    } else {
        return form_of(ValueOf<Field>{});
    }
}

template <CellField Field>
Cell show_field(const Field& field) {
    if constexpr (OptionalOf<Field>::value) {
        return field ? show_field(*field) : Cell{};
    } else if constexpr (Worded<Field>) {
        return std::string(to_word(field));
    } else {
        return show_value(field);
    }
}

/// An unknown, or what is not of the type, leaves the field as it is.
template <CellField Field>
void fill_field(const Cell& cell, Field& field) {
    if constexpr (Worded<ValueOf<Field>>) {
        const auto* word = std::get_if<std::string>(&cell);
        if (const auto value = word ? from_word<ValueOf<Field>>(*word) : std::nullopt) {
            field = *value;
        }
    } else if (ValueOf<Field> value{}; read_cell(cell, value)) {
        field = std::move(value);
    }
}

}  // namespace pipward::book::detail
