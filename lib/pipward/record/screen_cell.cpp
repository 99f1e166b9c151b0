// SPDX-License-Identifier: MIT
#include "pipward/record/screen_cell.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "pipward/record/reader_days.h"
#include "pipward/record/table_text.h"
#include "pipward/value/utf8.h"

namespace pipward::record {
namespace {

constexpr std::string_view hundredth = "%";
constexpr std::array<std::string_view, 4> units_of_one{"share", "of 1", "0 to 1", "0 to 1 (%)"};

/// Longer than any text of ours; a book pasted into a note must not bury the table.
constexpr std::size_t longest_cell = 2000;

std::string number_on_screen(const Column& column, double number) {
    if (!is_part_of_whole(column)) {
        return short_number(number);
    }
    return per_cent(column.unit == hundredth ? number / 100 : number);
}

}  // namespace

bool is_part_of_whole(const Column& column) {
    return column.type == CellType::number &&
           (column.unit == hundredth || std::ranges::find(units_of_one, column.unit) != units_of_one.end());
}

std::string per_cent(double share) {
    const double hundredths = 100 * share;
    if (hundredths > 0 && hundredths < 0.05) {
        return "<0.1 %";
    }
    if (share < 1 && hundredths >= 99.5) {
        return ">99 %";
    }
    // Kinship is counted in halves of halves: half sibs share 12.5 %, not 12.
    if (std::round(share * 16) == share * 16) {
        return fmt::format("{:.4g} %", hundredths);
    }
    const bool is_small = std::abs(hundredths) < 9.95 && std::round(hundredths) != hundredths;
    return fmt::format("{:.{}f} %", hundredths, is_small ? 1 : 0);
}

std::string cell_on_screen(const Column& column, const Cell& cell, std::optional<int> year) {
    if (std::holds_alternative<std::monostate>(cell)) {
        return "-";
    }
    if (const auto* number = std::get_if<double>(&cell)) {
        return number_on_screen(column, *number);
    }
    if (const auto* day = std::get_if<Day>(&cell)) {
        return reader_day(*day, year).text();
    }
    return one_line(to_plain_text(column, cell), longest_cell);
}

std::string head_on_screen(const Column& column) {
    return is_part_of_whole(column) ? column.label : head_of(column);
}

}  // namespace pipward::record
