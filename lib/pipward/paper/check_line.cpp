// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/check_line.h"

namespace pipward::paper::detail {
namespace {

constexpr Millimetres line_length{50};
constexpr Millimetres tick{1};
constexpr Millimetres stroke{0.2};
constexpr double points = 7;
// Below the part of a page where most printers do not print.
constexpr Millimetres page_edge{5};
constexpr Millimetres room{3.5};

}  // namespace

std::vector<PagePiece> check_line(PaperSpot left_end, const TextRuler& ruler, const Wording& wording) {
    const PaperSpot right_end{left_end.x + line_length, left_end.y};
    const auto words = say("50 mm: print at 100 %, then measure this line").in(wording);
    const auto size = ruler(words, {points, false}, {});
    std::vector<PagePiece> pieces;
    pieces.push_back(LinePiece{{left_end, right_end}, stroke, black_paint});
    for (const auto& end : {left_end, right_end}) {
        pieces.push_back(LinePiece{{{end.x, end.y - tick}, {end.x, end.y + tick}}, stroke, black_paint});
    }
    pieces.push_back(
        TextPiece{words,
                  {right_end.x + Millimetres{2}, left_end.y - size.height / 2, size.width, size.height},
                  {points, false}});
    return pieces;
}

std::vector<PagePiece> check_line_in_margin(const LabelGrid& grid, const TextRuler& ruler,
                                            const Wording& wording) {
    const auto end = label_box(grid, grid.labels_a_page() - 1).bottom();
    const auto left = std::max(grid.left, page_edge);
    if (grid.top >= page_edge + room) {
        return check_line({left, (grid.top + page_edge) / 2}, ruler, wording);
    }
    if (grid.page.height - end >= page_edge + room) {
        return check_line({left, (end + grid.page.height - page_edge) / 2}, ruler, wording);
    }
    return {};
}

}  // namespace pipward::paper::detail
