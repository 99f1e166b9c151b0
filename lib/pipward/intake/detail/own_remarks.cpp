// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/own_remarks.h"

#include <algorithm>
#include <cctype>
#include <cmath>

#include "pipward/intake/detail/plain_number.h"

namespace pipward::intake::detail {
namespace {

constexpr double largest_whole = 1e9;

Cell number_cell(CellType type, std::string_view value) {
    const auto number = plain_number(value);
    if (!number || type == CellType::number) {
        return number ? Cell{*number} : Cell{};
    }
    return std::abs(*number) < largest_whole ? Cell{static_cast<std::int64_t>(*number)} : Cell{};
}

// Unknown where the value is not of the type.
Cell cell_of(CellType type, std::string_view value) {
    if (type == CellType::day) {
        const auto day = parse_iso_day(value);
        return day ? Cell{*day} : Cell{};
    }
    return type == CellType::text ? Cell{std::string(value)} : number_cell(type, value);
}

}  // namespace

std::vector<const book::BookColumn*> own_remarks() {
    std::vector<const book::BookColumn*> columns;
    for (const auto& column : book::table_of_records<Accession>().columns) {
        if (column.passport == "REMARKS" && column.role != book::ColumnRole::remark) {
            columns.push_back(&column);
        }
    }
    return columns;
}

std::string remark_name(const book::BookColumn& column) {
    std::string name(column.name);
    std::ranges::transform(name, name.begin(), [](unsigned char c) { return std::toupper(c); });
    return name;
}

bool fill_remark(Accession& accession, std::string_view name, std::string_view value) {
    for (const auto* column : own_remarks()) {
        const auto cell = remark_name(*column) == name ? cell_of(column->type, value) : Cell{};
        if (!std::holds_alternative<std::monostate>(cell)) {
            column->field.fill(cell, &accession);
            return true;
        }
    }
    return false;
}

}  // namespace pipward::intake::detail
