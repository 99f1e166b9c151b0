// SPDX-License-Identifier: MIT
#include "pipward/record/table_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <span>
#include <vector>

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

struct Range {
    char32_t first;
    char32_t last;
};

bool within(char32_t c, std::span<const Range> ranges) {
    return std::ranges::any_of(ranges, [c](Range range) { return c >= range.first && c <= range.last; });
}

// The blocks that names and notes can be expected to hold (Unicode: East_Asian_Width W and F; Mn).
constexpr std::array wide_blocks{Range{0x1100, 0x115F}, Range{0x2E80, 0xA4CF},   Range{0xAC00, 0xD7A3},
                                 Range{0xF900, 0xFAFF}, Range{0xFE30, 0xFE6F},   Range{0xFF00, 0xFF60},
                                 Range{0xFFE0, 0xFFE6}, Range{0x1F300, 0x1FAFF}, Range{0x20000, 0x3FFFD}};
constexpr std::array no_width_blocks{Range{0x0300, 0x036F}, Range{0x200B, 0x200F}, Range{0xFE00, 0xFE0F},
                                     Range{0xFEFF, 0xFEFF}};

/// Three decimals at most, trailing zeros gone.
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

/// Longer than any sentence of ours; a note pasted into a name must not bury the table.
constexpr std::size_t longest_cell = 800;

std::string terminal_cell(const Column& column, const Cell& cell) {
    if (std::holds_alternative<std::monostate>(cell)) {
        return "-";
    }
    if (const auto* number = std::get_if<double>(&cell)) {
        return short_number(*number);
    }
    return one_line(to_plain_text(column, cell), longest_cell);
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// The label with its unit, where the label is not the unit's name already.
std::string head(const Column& column) {
    const bool says_it = std::ranges::equal(column.label, column.unit, {}, lower, lower);
    return column.unit.empty() || says_it ? column.label : column.label + " (" + column.unit + ")";
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

int terminal_width(std::string_view utf8) {
    int width = 0;
    for (const char32_t character : code_points_of(utf8)) {
        width += within(character, no_width_blocks) ? 0 : within(character, wide_blocks) ? 2 : 1;
    }
    return width;
}

std::string to_csv(const Table& plain) {
    const auto table = with_lines_as_text(plain);
    std::string text = csv_line(table.shape.columns, [](const Column& column) { return column.name; });
    for (const auto& row : table.rows) {
        text += csv_line(row.cells, [](const Cell& cell) { return to_text(cell); });
    }
    return text;
}

std::string to_terminal(const Table& table) {
    const auto& columns = table.shape.columns;
    Lines lines(1);
    std::ranges::transform(columns, std::back_inserter(lines.front()), head);
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
