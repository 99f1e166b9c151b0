// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "pipward/paper/millimetres.h"
#include "pipward/record/words.h"
#include "pipward/value/finding.h"
#include "pipward/value/sentence.h"

/// Where labels lie on a sheet.
namespace pipward::paper {

/// Equal labels in columns and rows. On a roll the page is one label.
struct LabelGrid {
    PageSize page;           ///< of the sheet
    Millimetres width;       ///< of a label
    Millimetres height;      ///< of a label
    int columns = 1;         ///< 1 or more
    int rows = 1;            ///< 1 or more
    Millimetres left;        ///< from the page's left edge to the first column
    Millimetres top;         ///< from the page's top edge to the first row
    Millimetres gap_across;  ///< between columns
    Millimetres gap_down;    ///< between rows

    /// 1 or more.
    constexpr int labels_a_page() const { return columns * rows; }
    /// One label a page, and as wide as it.
    bool is_roll() const { return columns == 1 && rows == 1 && page.width <= width; }
};

/// Sheets and rolls that are common, by their dimensions (common practice, no source); or the user's own.
enum class LabelSheet {
    a4_70x37,       ///< 70 x 37 mm, 3 x 8
    a4_63x38,       ///< 63.5 x 38.1 mm, 3 x 7
    a4_99x68,       ///< 99.1 x 67.7 mm, 2 x 4
    a4_105x74,      ///< 105 x 74 mm, 2 x 4
    a4_48x25,       ///< 48.5 x 25.4 mm, 4 x 10
    letter_67x25,   ///< 66.7 x 25.4 mm, 3 x 10
    letter_102x51,  ///< 101.6 x 50.8 mm, 2 x 5
    roll_100x50,    ///< 100 x 50 mm
    roll_89x36,     ///< 89 x 36 mm
    roll_57x32,     ///< 57 x 32 mm
    own             ///< the user's dimensions
};
/// The sheets as they are typed, with their dimensions.
std::span<const Word<LabelSheet>> words(LabelSheet);
/// Of `own` an empty one.
LabelGrid grid_of(LabelSheet sheet);

/// The sheet that a user names, and what differs from it: lengths in millimetres.
struct SheetWish {
    LabelSheet sheet = LabelSheet::a4_70x37;
    std::optional<double> page_width;
    std::optional<double> page_height;
    std::optional<double> label_width;
    std::optional<double> label_height;
    std::optional<int> columns;
    std::optional<int> rows;
    std::optional<double> left;
    std::optional<double> top;
    std::optional<double> gap_across;
    std::optional<double> gap_down;
};
/// A sheet of one's own lies on A4 and has no margins and gaps where nothing else is said.
LabelGrid grid_of(const SheetWish& wish);

/// A label of the page, row by row from the upper left; 0 is the first.
Box label_box(const LabelGrid& grid, int place);
/// The part of it that can be printed on and cut or torn without loss: not at its own edges, and as much less
/// as the sheet's outermost labels lose to its last 5 mm, where most printers do not print (common practice,
/// no source). Alike on every label of a sheet.
Box printable_box(const LabelGrid& grid, int place);

/// What is wrong with a grid: labels that lie beyond the page or on one another, or are too small to print
/// on.
Findings problems_of(const LabelGrid& grid);
/// The same, and a sheet of one's own without the size of its labels.
Findings problems_of(const SheetWish& wish);

}  // namespace pipward::paper
