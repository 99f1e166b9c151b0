// SPDX-License-Identifier: MIT
#include "pipward/operation/place/detail/label_sheet_grid.h"

namespace pipward::operation::detail {
namespace {

struct Limits {
    double least = 0;
    double most = 0;
};

Bound<paper::SheetWish> dimension(std::optional<double> paper::SheetWish::*field, std::string key,
                                  std::string label, std::string help, const Limits& limits) {
    return parameter(field, std::move(key), std::move(label), std::move(help))
        .in("mm")
        .between(limits.least, limits.most)
        .advanced();
}

}  // namespace

std::vector<Bound<paper::SheetWish>> sheet_parameters() {
    return {
        parameter(&paper::SheetWish::sheet, "sheet", "Sheet",
                  "Sheet format by its dimensions; the options for dimensions override single values."),
        dimension(&paper::SheetWish::page_width, "page-width", "Page width", "How wide the page is.",
                  {20, 1200}),
        dimension(&paper::SheetWish::page_height, "page-height", "Page height", "How high the page is.",
                  {10, 1200}),
        dimension(&paper::SheetWish::label_width, "label-width", "Label width", "How wide a label is.",
                  {1, 1200}),
        dimension(&paper::SheetWish::label_height, "label-height", "Label height", "How high a label is.",
                  {1, 1200}),
        parameter(&paper::SheetWish::columns, "columns", "Columns", "How many labels lie beside each other.")
            .between(1, 50)
            .advanced(),
        parameter(&paper::SheetWish::rows, "label-rows", "Rows of labels",
                  "How many labels lie below each other.")
            .between(1, 100)
            .advanced(),
        dimension(&paper::SheetWish::left, "margin-left", "Left margin",
                  "From the page's edge to the first label.", {0, 500}),
        dimension(&paper::SheetWish::top, "margin-top", "Upper margin",
                  "From the page's edge to the first label.", {0, 500}),
        dimension(&paper::SheetWish::gap_across, "gap-across", "Gap between columns",
                  "From a label to the next one beside it.", {0, 500}),
        dimension(&paper::SheetWish::gap_down, "gap-down", "Gap between rows",
                  "From a label to the next one below it.", {0, 500})};
}

}  // namespace pipward::operation::detail
