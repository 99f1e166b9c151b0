// SPDX-License-Identifier: MIT
#include "pipward/record/screen_cell.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

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

std::string day_on_screen(Day day, std::optional<int> year) {
    static constexpr std::array<std::string_view, 7> names{"Thu", "Fri", "Sat", "Sun", "Mon", "Tue", "Wed"};
    const auto since_a_thursday = static_cast<std::size_t>((day.since_1970 % 7 + 7) % 7);  // 1970-01-01
    auto text = fmt::format("{} {}", names[since_a_thursday], to_short_text(day));
    const auto own_year = parts_of(day).year;
    return own_year == year ? text : fmt::format("{} {}", text, own_year);
}

std::string per_cent(double share) {
    const double hundredths = 100 * share;
    if (hundredths > 0 && hundredths < 0.05) {
        return "<0.1 %";
    }
    if (share < 1 && hundredths >= 99.5) {
        return ">99 %";
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
        return day_on_screen(*day, year);
    }
    return one_line(to_plain_text(column, cell), longest_cell);
}

std::string head_on_screen(const Column& column) {
    return is_part_of_whole(column) ? column.label : head_of(column);
}

}  // namespace pipward::record
