// SPDX-License-Identifier: MIT
#include "pipward/operation/place/detail/label_sheet_grid.h"

#include "pipward/value/complaint.h"
#include "pipward/value/sentence.h"

namespace pipward::operation::detail {
namespace {

void take(paper::Millimetres& dimension, const std::optional<double>& wished) {
    dimension.value = wished.value_or(dimension.value);
}

paper::LabelGrid known_grid(paper::LabelSheet sheet) {
    auto grid = paper::grid_of(sheet);
    if (sheet == paper::LabelSheet::own) {
        grid.page = paper::a4_page;
    }
    return grid;
}

Bound<SheetWish> dimension(std::optional<double> SheetWish::*field, std::string key, std::string label,
                           std::string help, double least, double most) {
    return parameter(field, std::move(key), std::move(label), std::move(help))
        .in("mm")
        .between(least, most)
        .advanced();
}

}  // namespace

std::vector<Bound<SheetWish>> sheet_parameters() {
    return {
        parameter(&SheetWish::sheet, "sheet", "Sheet",
                  "The labels by their dimensions; the options of dimensions change what they name."),
        dimension(&SheetWish::page_width, "page-width", "Page width", "How wide the page is.", 20, 1200),
        dimension(&SheetWish::page_height, "page-height", "Page height", "How high the page is.", 10, 1200),
        dimension(&SheetWish::label_width, "label-width", "Label width", "How wide a label is.", 1, 1200),
        dimension(&SheetWish::label_height, "label-height", "Label height", "How high a label is.", 1, 1200),
        parameter(&SheetWish::columns, "columns", "Columns", "How many labels lie beside each other.")
            .between(1, 50)
            .advanced(),
        parameter(&SheetWish::rows, "label-rows", "Rows of labels", "How many labels lie below each other.")
            .between(1, 100)
            .advanced(),
        dimension(&SheetWish::left, "margin-left", "Left margin", "From the page's edge to the first label.",
                  0, 500),
        dimension(&SheetWish::top, "margin-top", "Upper margin", "From the page's edge to the first label.",
                  0, 500),
        dimension(&SheetWish::gap_across, "gap-across", "Gap between columns",
                  "From a label to the next one beside it.", 0, 500),
        dimension(&SheetWish::gap_down, "gap-down", "Gap between rows",
                  "From a label to the next one below it.", 0, 500)};
}

paper::LabelGrid grid_of(const SheetWish& wish) {
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
    if (wish.sheet == paper::LabelSheet::own && (!wish.label_width || !wish.label_height)) {
        return {about_parameter("sheet", "own", say("A sheet of your own needs the size of its labels."),
                                say("Give label-width and label-height, or take one of the sheets named."))};
    }
    return paper::problems_of(grid_of(wish));
}

}  // namespace pipward::operation::detail
