// SPDX-License-Identifier: MIT
#include "pipward/paper/reading_page.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace pipward::paper {
namespace {

constexpr double page_width = 297;  // millimetres, all of them
constexpr double page_height = 210;
constexpr double page_margin = 12;
constexpr double heading_height = 30;
constexpr Paint row_paint{31, 97, 141};
constexpr Paint odd_paint{175, 96, 26};

/// From the map to a panel.
struct Scale {
    double low_x = 0;
    double high_y = 0;
    double factor = 1;  // millimetres a unit of the map
    double left = 0;

    PaperSpot of(const ReadTree& tree) const {
        return {Millimetres{left + (tree.x - low_x) * factor},
                Millimetres{heading_height + (high_y - tree.y) * factor}};
    }
};

Scale scale_of(const ReadingPanel& panel, double left, double width) {
    const auto [low_x, high_x] = std::ranges::minmax(panel.trees, {}, &ReadTree::x);
    const auto [low_y, high_y] = std::ranges::minmax(panel.trees, {}, &ReadTree::y);
    const double wide = std::max(high_x.x - low_x.x, 1e-9);
    const double high = std::max(high_y.y - low_y.y, 1e-9);
    return {low_x.x, high_y.y, std::min(width / wide, (page_height - heading_height - page_margin) / high),
            left};
}

TextPiece text(const std::string& words, PaperSpot at, double points, double width) {
    return {words,
            {at.x, at.y, Millimetres{width}, Millimetres{6}},
            {points, false},
            Align::left,
            false,
            black_paint,
            true};
}

void draw(const ReadingPanel& panel, const Scale& scale, double width, Page& page) {
    page.pieces.emplace_back(
        text(panel.title, {Millimetres{scale.left}, Millimetres{heading_height - 10}}, 9, width));
    std::map<std::string, std::vector<const ReadTree*>> rows;
    for (const auto& tree : panel.trees) {
        if (tree.position) {
            rows[tree.row].push_back(&tree);
        }
        page.pieces.emplace_back(DiscPiece{scale.of(tree), Millimetres{0.8},
                                           tree.position ? black_paint : white_paint,
                                           tree.position ? black_paint : grey_paint});
    }
    int drawn = 0;
    for (auto& [name, trees] : rows) {
        std::ranges::sort(trees, {}, [](const ReadTree* tree) { return *tree->position; });
        std::vector<PaperSpot> through;
        for (const auto* tree : trees) {
            through.push_back(scale.of(*tree));
        }
        if (through.size() >= 2) {
            page.pieces.emplace_back(
                LinePiece{through, Millimetres{0.25}, drawn++ % 2 == 0 ? row_paint : odd_paint, {}});
        }
        page.pieces.emplace_back(
            text(fmt::format("{}/{}", name, *trees.front()->position), scale.of(*trees.front()), 5, 20));
        page.pieces.emplace_back(
            text(fmt::format("{}", *trees.back()->position), scale.of(*trees.back()), 5, 20));
    }
}

}  // namespace

Page reading_page(const std::string& question, std::span<const ReadingPanel> panels) {
    Page page{{Millimetres{page_width}, Millimetres{page_height}}, {}};
    page.pieces.emplace_back(
        text(question, {Millimetres{page_margin}, Millimetres{page_margin - 4}}, 12, page_width));
    const auto count = static_cast<double>(std::max<std::size_t>(panels.size(), 1));
    const double width = (page_width - (count + 1) * page_margin) / count;
    double left = page_margin;
    for (const auto& panel : panels) {
        if (!panel.trees.empty()) {
            draw(panel, scale_of(panel, left, width), width, page);
        }
        left += width + page_margin;
    }
    return page;
}

}  // namespace pipward::paper
