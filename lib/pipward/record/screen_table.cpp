// SPDX-License-Identifier: MIT
#include "pipward/record/screen_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>
#include <vector>

#include "pipward/record/screen_cell.h"
#include "pipward/record/terminal_text.h"

namespace pipward::record {
namespace {

constexpr int gap = 2;
constexpr int indent = 4;
constexpr int usual_text_width = 24;  ///< a text gets more where there is room
constexpr std::string_view between = " \u00B7 ";

using Indices = std::vector<std::size_t>;

/// Which columns stand where.
struct Parts {
    Indices above;   ///< alike in all rows
    Indices beside;  ///< in columns, weightiest first
    Indices below;   ///< under the row
};

struct Sized {
    std::size_t column;
    int width;
    int wished;
};

struct Texts {
    std::vector<std::string> heads;               ///< by column
    std::vector<std::vector<std::string>> cells;  ///< by row and column
};

std::size_t index_of(const TableShape& shape, const std::string& name) {
    return static_cast<std::size_t>(std::ranges::find(shape.columns, name, &Column::name) -
                                    shape.columns.begin());
}

bool holds(const Indices& indices, std::size_t index) {
    return std::ranges::find(indices, index) != indices.end();
}

bool is_alike(const Table& table, std::size_t column) {
    return !table.rows.empty() && std::ranges::all_of(table.rows, [&](const Row& row) {
        return row.cells[column] == table.rows.front().cells[column];
    });
}

bool is_unknown(const Table& table, std::size_t column) {
    return std::ranges::all_of(table.rows, [&](const Row& row) {
        return std::holds_alternative<std::monostate>(row.cells[column]);
    });
}

Indices indices_of(const TableShape& shape, const std::vector<std::string>& names) {
    Indices indices;
    for (const auto& name : names) {
        if (const auto index = index_of(shape, name); index < shape.columns.size()) {
            indices.push_back(index);
        }
    }
    return indices;
}

Parts parts_of(const Table& table, const TableView& view, Extent extent) {
    const auto& shape = table.shape;
    Parts parts{indices_of(shape, view.once), indices_of(shape, view.first), indices_of(shape, view.below)};
    const bool chosen = !parts.beside.empty();
    const auto differing = std::ranges::stable_partition(
        parts.above, [&](std::size_t column) { return is_alike(table, column); });
    parts.beside.insert(parts.beside.begin(), differing.begin(), differing.end());
    parts.above.erase(differing.begin(), differing.end());
    if (extent == Extent::whole || !chosen) {
        for (std::size_t column = 0; column < shape.columns.size(); ++column) {
            if (!holds(parts.above, column) && !holds(parts.beside, column) && !holds(parts.below, column)) {
                parts.beside.push_back(column);
            }
        }
    }
    if (extent == Extent::part && !table.rows.empty()) {
        const auto idle = [&](std::size_t column) { return is_unknown(table, column); };
        std::erase_if(parts.above, idle);
        std::erase_if(parts.beside, idle);
    }
    return parts;
}

Texts texts_of(const Table& table, const Screen& screen) {
    Texts texts;
    std::ranges::transform(table.shape.columns, std::back_inserter(texts.heads), head_on_screen);
    for (const auto& row : table.rows) {
        auto& cells = texts.cells.emplace_back();
        for (std::size_t column = 0; column < row.cells.size(); ++column) {
            cells.push_back(cell_on_screen(table.shape.columns[column], row.cells[column], screen.year));
        }
    }
    return texts;
}

/// So that the head of a column takes two lines or fewer.
int width_of_head(const std::string& head) {
    int width = std::max(2, longest_word(head));
    while (broken_into_lines(head, width).size() > 2) {
        ++width;
    }
    return width;
}

Sized wished_size(const Table& table, const Texts& texts, std::size_t column) {
    int widest = 0;
    for (const auto& cells : texts.cells) {
        widest = std::max(widest, terminal_width(cells[column]));
    }
    const int least = std::max({2, widest, longest_word(texts.heads[column])});
    const bool is_text = table.shape.columns[column].type == CellType::text;
    return {column, is_text ? std::min(least, usual_text_width) : least,
            std::max(least, width_of_head(texts.heads[column]))};
}

int width_of(const std::vector<Sized>& sizes) {
    return std::accumulate(sizes.begin(), sizes.end(), -gap,
                           [](int sum, const Sized& size) { return sum + size.width + gap; });
}

/// The weightiest that have room, each as wide as it wishes while there is some.
std::vector<Sized> fitted(const Table& table, const Texts& texts, const Indices& columns, int room) {
    std::vector<Sized> sizes;
    for (const auto column : columns) {
        auto size = wished_size(table, texts, column);
        size.width = std::min(size.width, room);
        sizes.push_back(size);
        if (width_of(sizes) > room) {
            sizes.pop_back();
        }
    }
    int left = room - width_of(sizes);
    for (auto& size : sizes) {
        const int more = std::min(left, size.wished - size.width);
        size.width += more;
        left -= more;
    }
    return sizes;
}

bool to_the_right(const Column& column) {
    return column.type == CellType::whole || column.type == CellType::number;
}

std::string in_width(const std::string& text, int width, bool right) {
    const std::string blanks(static_cast<std::size_t>(std::max(0, width - terminal_width(text))), ' ');
    return right ? blanks + text : text + blanks;
}

/// One row of cells, as many lines as its tallest cell has; heads stand on the line below them.
std::vector<std::string> lines_of(const Table& table, const std::vector<Sized>& sizes,
                                  const std::vector<std::string>& cells, bool at_the_foot) {
    std::vector<std::vector<std::string>> broken;
    std::size_t height = 1;
    for (const auto& size : sizes) {
        broken.push_back(broken_into_lines(cells[size.column], size.width));
        height = std::max(height, broken.back().size());
    }
    std::vector<std::string> lines(height);
    for (std::size_t s = 0; s < sizes.size(); ++s) {
        const auto skipped = at_the_foot ? height - broken[s].size() : 0;
        for (std::size_t line = 0; line < height; ++line) {
            const bool filled = line >= skipped && line - skipped < broken[s].size();
            const auto text = filled ? broken[s][line - skipped] : std::string{};
            lines[line] += (s == 0 ? "" : std::string(gap, ' ')) +
                           in_width(text, sizes[s].width, to_the_right(table.shape.columns[sizes[s].column]));
        }
    }
    for (auto& line : lines) {
        line.erase(line.find_last_not_of(' ') + 1);
    }
    return lines;
}

std::string moved_in(const std::string& text, int width) {
    std::string all;
    for (const auto& line : broken_into_lines(text, width - indent)) {
        all += std::string(indent, ' ') + line + "\n";
    }
    return all;
}

std::string labelled(const Texts& texts, const std::vector<std::string>& cells, std::size_t column) {
    return texts.heads[column] + ": " + cells[column];
}

/// What has no room beside the others, in one text, and each long text by itself.
std::string under_row(const Table& table, const Texts& texts, std::size_t row, const Parts& parts,
                      const Indices& without_room, int width) {
    const auto known = [&](std::size_t column) {
        return !std::holds_alternative<std::monostate>(table.rows[row].cells[column]);
    };
    std::vector<std::string> short_ones;
    for (const auto column : without_room) {
        if (known(column)) {
            short_ones.push_back(labelled(texts, texts.cells[row], column));
        }
    }
    auto text = short_ones.empty() ? "" : moved_in(fmt::format("{}", fmt::join(short_ones, between)), width);
    for (const auto column : parts.below) {
        if (known(column)) {
            text += moved_in(parts.below.size() == 1 ? texts.cells[row][column]
                                                     : labelled(texts, texts.cells[row], column),
                             width);
        }
    }
    return text;
}

Indices without(const Indices& all, const std::vector<Sized>& sizes) {
    Indices rest;
    std::ranges::copy_if(all, std::back_inserter(rest), [&](std::size_t column) {
        return std::ranges::find(sizes, column, &Sized::column) == sizes.end();
    });
    return rest;
}

std::string said_once(const Texts& texts, const Parts& parts, int width) {
    std::vector<std::string> pieces;
    for (const auto column : parts.above) {
        pieces.push_back(fmt::format("{}: {}", texts.heads[column], texts.cells.front()[column]));
    }
    std::string text;
    if (!pieces.empty()) {
        for (const auto& line : broken_into_lines(fmt::format("{}", fmt::join(pieces, between)), width)) {
            text += line + "\n";
        }
    }
    return text;
}

std::string title_of(const Table& table, const Screen& screen) {
    std::string text;
    for (const auto& line : broken_into_lines(table.shape.title, screen.width)) {
        text += bold(line, screen) + "\n";
    }
    return text;
}

}  // namespace

std::string bold(const std::string& text, const Screen& screen) {
    return screen.styled ? "\x1B[1m" + text + "\x1B[0m" : text;
}

std::string screen_table(const Table& plain, const TableView& view, const Screen& screen, Extent extent) {
    const auto table = extent == Extent::whole ? with_lines_as_text(plain) : plain;
    auto text = title_of(table, screen);
    if (table.rows.empty()) {
        return text + "(nothing)\n";
    }
    const auto parts = parts_of(table, view, extent);
    const auto texts = texts_of(table, screen);
    auto sizes = fitted(table, texts, parts.beside, screen.width);
    if (view.in_order) {
        std::ranges::sort(sizes, {}, &Sized::column);
    }
    const auto rest = extent == Extent::whole ? without(parts.beside, sizes) : Indices{};
    text += said_once(texts, parts, screen.width);
    for (const auto& line : lines_of(table, sizes, texts.heads, true)) {
        text += bold(line, screen) + "\n";
    }
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        for (const auto& line : lines_of(table, sizes, texts.cells[row], false)) {
            text += line + "\n";
        }
        text += under_row(table, texts, row, parts, rest, screen.width);
    }
    return text;
}

bool leaves_out(const Table& table, const TableView& view, const Screen& screen) {
    if (table.rows.empty()) {
        return false;
    }
    const auto parts = parts_of(table, view, Extent::part);
    const auto sizes = fitted(table, texts_of(table, screen), parts.beside, screen.width);
    Indices shown = parts.above;
    std::ranges::copy(parts.below, std::back_inserter(shown));
    std::ranges::transform(sizes, std::back_inserter(shown), &Sized::column);
    for (std::size_t column = 0; column < table.shape.columns.size(); ++column) {
        if (!holds(shown, column) && !is_unknown(table, column)) {
            return true;
        }
    }
    return false;
}

}  // namespace pipward::record
