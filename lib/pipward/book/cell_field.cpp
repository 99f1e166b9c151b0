// SPDX-License-Identifier: MIT
#include "pipward/book/detail/cell_field.h"

namespace pipward::book::detail {
namespace {

template <class Held, class Value, class Make>
bool read_as(const Cell& cell, Value& value, const Make& make) {
    const auto* held = std::get_if<Held>(&cell);
    if (held != nullptr) {
        value = make(*held);
    }
    return held != nullptr;
}

/// A type that is made from one number.
template <class Quantity>
bool read_quantity(const Cell& cell, Quantity& value) {
    return read_as<double>(cell, value, [](double number) { return Quantity{number}; });
}

template <class Coded>
bool read_code(const Cell& cell, Coded& value) {
    return read_as<std::int64_t>(cell, value,
                                 [](std::int64_t code) { return Coded{static_cast<int>(code)}; });
}

template <class Held>
bool read_held(const Cell& cell, Held& value) {
    return read_as<Held>(cell, value, [](const Held& held) { return held; });
}

}  // namespace

FieldForm form_of(const std::string&) {
    return {CellType::text, ColumnRole::text};
}
FieldForm form_of(int) {
    return {CellType::whole, ColumnRole::number};
}
FieldForm form_of(double) {
    return {CellType::number, ColumnRole::number};
}
FieldForm form_of(Day) {
    return {CellType::day, ColumnRole::day};
}
FieldForm form_of(Bbch) {
    return {CellType::whole, ColumnRole::stage, {}, "bbch_stage"};
}
FieldForm form_of(Season) {
    return {CellType::whole, ColumnRole::number, {}, "season"};
}
FieldForm form_of(Metres) {
    return {CellType::number, ColumnRole::number, "m"};
}
FieldForm form_of(Milligrams) {
    return {CellType::number, ColumnRole::number, "mg"};
}
FieldForm form_of(Share) {
    return {CellType::number, ColumnRole::share, {}, "share"};
}
FieldForm form_of(Celsius) {
    return {CellType::number, ColumnRole::number, "°C"};
}
FieldForm form_of(ChillPortions) {
    return {CellType::number, ColumnRole::number, "chill portions"};
}

Cell show_value(const std::string& value) {
    return value;
}
Cell show_value(int value) {
    return std::int64_t{value};
}
Cell show_value(double value) {
    return value;
}
Cell show_value(Day value) {
    return value;
}
Cell show_value(Bbch value) {
    return std::int64_t{value.code};
}
Cell show_value(Season value) {
    return std::int64_t{value.year};
}
Cell show_value(Metres value) {
    return value.value;
}
Cell show_value(Milligrams value) {
    return value.value;
}
Cell show_value(Share value) {
    return value.value;
}
Cell show_value(Celsius value) {
    return value.degrees;
}
Cell show_value(ChillPortions value) {
    return value.value;
}

bool read_cell(const Cell& cell, std::string& value) {
    return read_held(cell, value);
}
bool read_cell(const Cell& cell, int& value) {
    return read_code(cell, value);
}
bool read_cell(const Cell& cell, double& value) {
    return read_held(cell, value);
}
bool read_cell(const Cell& cell, Day& value) {
    return read_held(cell, value);
}
bool read_cell(const Cell& cell, Bbch& value) {
    return read_code(cell, value);
}
bool read_cell(const Cell& cell, Season& value) {
    return read_code(cell, value);
}
bool read_cell(const Cell& cell, Metres& value) {
    return read_quantity(cell, value);
}
bool read_cell(const Cell& cell, Milligrams& value) {
    return read_quantity(cell, value);
}
bool read_cell(const Cell& cell, Share& value) {
    return read_quantity(cell, value);
}
bool read_cell(const Cell& cell, Celsius& value) {
    return read_quantity(cell, value);
}
bool read_cell(const Cell& cell, ChillPortions& value) {
    return read_quantity(cell, value);
}

}  // namespace pipward::book::detail
