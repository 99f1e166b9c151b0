// SPDX-License-Identifier: MIT
#include "pipward/paper/label_grid.h"

#include <algorithm>
#include <array>

#include "pipward/value/complaint.h"

namespace pipward::paper {
namespace {

constexpr Millimetres label_edge{1.5};
constexpr Millimetres sheet_edge{5};
constexpr PageSize least_label{{20}, {10}};
constexpr Millimetres hair{0.05};  // dimensions are rounded to a tenth of a millimetre

struct KnownSheet {
    Word<LabelSheet> word;
    LabelGrid grid;
};

constexpr LabelGrid roll(double width, double height) {
    return {{{width}, {height}}, {width}, {height}, 1, 1, {0}, {0}, {0}, {0}};
}

constexpr std::array<KnownSheet, 11> sheets{
    {{{LabelSheet::a4_70x37, "a4-70x37", "70 x 37 mm, 3 x 8 on A4"},
      {a4_page, {70}, {37}, 3, 8, {0}, {0.5}, {0}, {0}}},
     {{LabelSheet::a4_63x38, "a4-63x38", "63.5 x 38.1 mm, 3 x 7 on A4"},
      {a4_page, {63.5}, {38.1}, 3, 7, {7.2}, {15.1}, {2.5}, {0}}},
     {{LabelSheet::a4_99x68, "a4-99x68", "99.1 x 67.7 mm, 2 x 4 on A4"},
      {a4_page, {99.1}, {67.7}, 2, 4, {4.7}, {13.1}, {2.5}, {0}}},
     {{LabelSheet::a4_105x74, "a4-105x74", "105 x 74 mm, 2 x 4 on A4"},
      {a4_page, {105}, {74}, 2, 4, {0}, {0.5}, {0}, {0}}},
     {{LabelSheet::a4_48x25, "a4-48x25", "48.5 x 25.4 mm, 4 x 10 on A4"},
      {a4_page, {48.5}, {25.4}, 4, 10, {8}, {21.5}, {0}, {0}}},
     {{LabelSheet::letter_67x25, "letter-67x25", "66.7 x 25.4 mm, 3 x 10 on Letter"},
      {letter_page, {66.675}, {25.4}, 3, 10, {4.75}, {12.7}, {3.175}, {0}}},
     {{LabelSheet::letter_102x51, "letter-102x51", "101.6 x 50.8 mm, 2 x 5 on Letter"},
      {letter_page, {101.6}, {50.8}, 2, 5, {4}, {12.7}, {4.7}, {0}}},
     {{LabelSheet::roll_100x50, "roll-100x50", "a roll of 100 x 50 mm labels"}, roll(100, 50)},
     {{LabelSheet::roll_89x36, "roll-89x36", "a roll of 89 x 36 mm labels"}, roll(89, 36)},
     {{LabelSheet::roll_57x32, "roll-57x32", "a roll of 57 x 32 mm labels"}, roll(57, 32)},
     {{LabelSheet::own, "own", "the dimensions given by the other options"}, {}}}};

constexpr auto word_table = [] {
    std::array<Word<LabelSheet>, sheets.size()> table{};
    std::ranges::transform(sheets, table.begin(), &KnownSheet::word);
    return table;
}();

Finding problem(Sentence message, Sentence remedy) {
    return {Level::error, "", "", "sheet", "", std::move(message), std::move(remedy)};
}

Millimetres right_end(const LabelGrid& grid) {
    return grid.left + grid.width * grid.columns + grid.gap_across * (grid.columns - 1);
}

Millimetres lower_end(const LabelGrid& grid) {
    return grid.top + grid.height * grid.rows + grid.gap_down * (grid.rows - 1);
}

void take(Millimetres& dimension, const std::optional<double>& wished) {
    dimension.value = wished.value_or(dimension.value);
}

LabelGrid known_grid(LabelSheet sheet) {
    auto grid = grid_of(sheet);
    if (sheet == LabelSheet::own) {
        grid.page = a4_page;
    }
    return grid;
}

}  // namespace

std::span<const Word<LabelSheet>> words(LabelSheet) {
    return word_table;
}

LabelGrid grid_of(LabelSheet sheet) {
    return std::ranges::find(sheets, sheet, [](const KnownSheet& known) { return known.word.value; })->grid;
}

Box label_box(const LabelGrid& grid, int place) {
    const int column = place % grid.columns;
    const int row = place / grid.columns;
    return {grid.left + (grid.width + grid.gap_across) * column,
            grid.top + (grid.height + grid.gap_down) * row, grid.width, grid.height};
}

namespace {

struct Lost {
    Millimetres left;
    Millimetres top;
    Millimetres right;
    Millimetres bottom;
};

/// What the labels at the sheet's edges lose to them. All labels give up as much, so that they look alike.
Lost lost_to_edges(const LabelGrid& grid) {
    constexpr Millimetres none{0};
    const auto sheet = inset({{0}, {0}, grid.page.width, grid.page.height}, sheet_edge);
    const auto first = inset(label_box(grid, 0), label_edge);
    const auto last = inset(label_box(grid, grid.labels_a_page() - 1), label_edge);
    return {std::max(none, sheet.left - first.left), std::max(none, sheet.top - first.top),
            std::max(none, last.right() - sheet.right()), std::max(none, last.bottom() - sheet.bottom())};
}

}  // namespace

Box printable_box(const LabelGrid& grid, int place) {
    const auto box = inset(label_box(grid, place), label_edge);
    if (grid.is_roll()) {
        return box;
    }
    const auto lost = lost_to_edges(grid);
    return {box.left + lost.left, box.top + lost.top, box.width - lost.left - lost.right,
            box.height - lost.top - lost.bottom};
}

Findings problems_of(const LabelGrid& grid) {
    Findings findings;
    if (grid.width < least_label.width || grid.height < least_label.height) {
        findings.push_back(problem(say("A label of {:.1f} x {:.1f} mm is too small to print on.",
                                       grid.width.value, grid.height.value),
                                   say("It must be at least {:.0f} x {:.0f} mm.", least_label.width.value,
                                       least_label.height.value)));
    }
    if (right_end(grid) > grid.page.width + hair) {
        findings.push_back(
            problem(say("The labels end {:.1f} mm from the left, but the page is {:.1f} mm wide.",
                        right_end(grid).value, grid.page.width.value),
                    say("Correct the margin, the gap, the width or the number of columns.")));
    }
    if (lower_end(grid) > grid.page.height + hair) {
        findings.push_back(
            problem(say("The labels end {:.1f} mm from the top, but the page is {:.1f} mm high.",
                        lower_end(grid).value, grid.page.height.value),
                    say("Correct the margin, the gap, the height or the number of rows.")));
    }
    return findings;
}

LabelGrid grid_of(const SheetWish& wish) {
    auto grid = known_grid(wish.sheet);
    take(grid.page.width, wish.page_width);
    take(grid.page.height, wish.page_height);
    take(grid.width, wish.label_width);
    take(grid.height, wish.label_height);
    take(grid.left, wish.left);
    take(grid.top, wish.top);
    take(grid.gap_across, wish.gap_across);
    take(grid.gap_down, wish.gap_down);
    grid.columns = wish.columns.value_or(grid.columns);
    grid.rows = wish.rows.value_or(grid.rows);
    return grid;
}

Findings problems_of(const SheetWish& wish) {
    if (wish.sheet == LabelSheet::own && (!wish.label_width || !wish.label_height)) {
        return {about_parameter("sheet", "own", say("A custom sheet needs the size of its labels."),
                                say("Give label-width and label-height, or choose one of the sheets."))};
    }
    return problems_of(grid_of(wish));
}

}  // namespace pipward::paper
