// SPDX-License-Identifier: MIT
#include "pipward/record/table_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "pipward/record/spreadsheet_text.h"
#include "pipward/record/terminal_text.h"
#include "pipward/value/utf8.h"

namespace pipward::record {
namespace {

std::string csv_field(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
        return text;
    }
    std::string quoted = "\"";
    for (const char c : text) {
        quoted += c == '"' ? "\"\"" : std::string(1, c);
    }
    return quoted + "\"";
}

template <class Items, class Text>
std::string csv_line(const Items& items, Text text) {
    std::string line;
    for (const auto& item : items) {
        line += (&item == &items.front() ? "" : ",") + csv_field(text(item));
    }
    return line + "\r\n";
}

/// Numbers and days are ours; only text can be anything.
std::string csv_text(const Cell& cell) {
    const bool is_text = std::holds_alternative<std::string>(cell) || std::holds_alternative<Sentence>(cell);
    return is_text ? harmless_in_spreadsheet(to_text(cell)) : to_text(cell);
}

/// Longer than any sentence of ours; a note pasted into a name must not bury the table.
constexpr std::size_t longest_plain_cell = 800;

std::string terminal_cell(const Column& column, const Cell& cell) {
    if (std::holds_alternative<std::monostate>(cell)) {
        return "-";
    }
    if (const auto* number = std::get_if<double>(&cell)) {
        return short_number(*number);
    }
    return one_line(to_plain_text(column, cell), longest_plain_cell);
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool to_the_right(CellType type) {
    return type == CellType::whole || type == CellType::number;
}

using Lines = std::vector<std::vector<std::string>>;

std::vector<int> widths_of(const Lines& lines, std::size_t columns) {
    std::vector<int> widths(columns, 0);
    for (const auto& line : lines) {
        for (std::size_t c = 0; c < columns; ++c) {
            widths[c] = std::max(widths[c], terminal_width(line[c]));
        }
    }
    return widths;
}

std::string aligned(const std::vector<std::string>& line, const std::vector<int>& widths,
                    const std::vector<Column>& columns) {
    std::string text;
    for (std::size_t c = 0; c < line.size(); ++c) {
        const std::string blanks(static_cast<std::size_t>(widths[c] - terminal_width(line[c])), ' ');
        text += (c == 0 ? "" : "  ") + (to_the_right(columns[c].type) ? blanks + line[c] : line[c] + blanks);
    }
    text.erase(text.find_last_not_of(' ') + 1);
    return text + "\n";
}

}  // namespace

std::string short_number(double number) {
    auto text = fmt::format("{:.3f}", number);
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') {
            text.pop_back();
        }
    }
    return text == "-0" ? "0" : text;
}

std::string head_of(const Column& column) {
    const bool says_it = std::ranges::equal(column.label, column.unit, {}, lower, lower);
    return column.unit.empty() || says_it ? column.label : column.label + " (" + column.unit + ")";
}

std::string to_csv(const Table& plain) {
    const auto table = with_lines_as_text(plain);
    std::string text = csv_line(table.shape.columns, [](const Column& column) { return column.name; });
    for (const auto& row : table.rows) {
        text += csv_line(row.cells, csv_text);
    }
    return text;
}

std::string to_terminal(const Table& table) {
    const auto& columns = table.shape.columns;
    Lines lines(1);
    std::ranges::transform(columns, std::back_inserter(lines.front()), head_of);
    for (const auto& row : table.rows) {
        std::ranges::transform(columns, row.cells, std::back_inserter(lines.emplace_back()), terminal_cell);
    }
    const auto widths = widths_of(lines, columns.size());
    std::string text = table.shape.title + "\n";
    for (const auto& line : lines) {
        text += aligned(line, widths, columns);
    }
    return table.rows.empty() ? text + "(nothing)\n" : text;
}

}  // namespace pipward::record
