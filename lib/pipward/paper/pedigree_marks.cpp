// SPDX-License-Identifier: MIT
#include "pipward/paper/detail/pedigree_marks.h"

#include <algorithm>

#include "pipward/paper/text.h"

namespace pipward::paper::detail {
namespace {

constexpr double side_padding = 1.2;  // millimetres
constexpr Paint pale_paint{236, 236, 236};

Box box_of(const lineage::PlacedBox& placed) {
    return {{placed.left}, {placed.top}, {placed.width}, {placed.height}};
}

std::vector<PaperSpot> corners_of(const Box& box) {
    return {
        {box.left, box.top}, {box.right(), box.top}, {box.right(), box.bottom()}, {box.left, box.bottom()}};
}

// A blend has its corners cut off.
std::vector<PaperSpot> cut_corners_of(const Box& box) {
    const Millimetres cut{1.5};
    return {{box.left + cut, box.top},         {box.right() - cut, box.top},
            {box.right(), box.top + cut},      {box.right(), box.bottom() - cut},
            {box.right() - cut, box.bottom()}, {box.left + cut, box.bottom()},
            {box.left, box.bottom() - cut},    {box.left, box.top + cut}};
}

void put_frame(const lineage::PedigreeBox& box, const PedigreeInk& ink, const Box& at, Page& page) {
    const bool is_blend = box.node >= 0 && ink.facts.graph->nodes[box.node].is_blend;
    if (!box.family.empty()) {  // a sheet behind the sheet
        const Millimetres by{0.5};
        const Box behind{at.left + by, at.top - by, at.width, at.height};
        page.pieces.push_back(ShapePiece{corners_of(behind), white_paint, black_paint, {0.2}});
    }
    if (box.node < 0) {
        page.pieces.push_back(ShapePiece{corners_of(at), white_paint, white_paint, {0}});
        auto outline = outline_of(at, {0.2}, grey_paint);
        outline.dashes = {{1.2}, {0.8}};
        page.pieces.push_back(outline);
        return;
    }
    const Millimetres edge{box.side == lineage::PedigreeSide::subject ? 0.7 : 0.25};
    page.pieces.push_back(ShapePiece{is_blend ? cut_corners_of(at) : corners_of(at),
                                     box.is_shared ? pale_paint : white_paint, black_paint, edge});
    if (box.is_shared) {
        page.pieces.push_back(outline_of(inset(at, {0.55}), {0.2}, black_paint));
    }
}

void put_text(const std::vector<BoxLine>& lines, const Box& at, double points, const Paint& paint,
              Page& page) {
    const Box inner{at.left + Millimetres{side_padding},
                    at.top,
                    at.width - Millimetres{2 * side_padding},
                    {line_height(points)}};
    double top = at.top.value + box_padding;
    for (const auto& line : lines) {
        const Box where{inner.left, {top}, inner.width, inner.height};
        const auto tab = line.text.find('\t');
        page.pieces.push_back(
            TextPiece{line.text.substr(0, tab), where, {points, line.is_bold}, Align::left, false, paint});
        if (tab != line.text.npos) {
            page.pieces.push_back(
                TextPiece{line.text.substr(tab + 1), where, {points, false}, Align::right, false, paint});
        }
        top += line_height(points);
    }
}

}  // namespace

// Dark tones that stay apart for every common kind of colour blindness; dashes tell the same without any.
LinePiece line_pen(lineage::PedigreeRole role) {
    switch (role) {
        case lineage::PedigreeRole::seed:
            return {{}, {0.5}, {52, 16, 45}, {}};
        case lineage::PedigreeRole::pollen:
            return {{}, {0.5}, {138, 80, 0}, {{1.8}, {1.0}}};
        case lineage::PedigreeRole::member:
            return {{}, {0.4}, {31, 111, 139}, {{0.5}, {0.9}}};
        case lineage::PedigreeRole::sport:
            break;
    }
    return {{}, {0.4}, {80, 80, 80}, {{3.0}, {0.8}, {0.6}, {0.8}}};
}

void move_layout(lineage::PedigreeLayout& layout, lineage::PedigreeSpot by) {
    for (auto& box : layout.boxes) {
        box.left += by.x;
        box.top += by.y;
    }
    for (auto& link : layout.links) {
        for (auto& spot : link.through) {
            spot.x += by.x;
            spot.y += by.y;
        }
    }
}

void put_links(const PedigreeInk& ink, Page& page) {
    for (const auto& placed : ink.layout.links) {
        auto pen = line_pen(ink.view.links[placed.link].role);
        for (const auto& spot : placed.through) {
            pen.through.push_back({{spot.x}, {spot.y}});
        }
        page.pieces.push_back(std::move(pen));
    }
}

void put_boxes(const PedigreeInk& ink, const std::vector<std::vector<BoxLine>>& texts, Page& page) {
    for (std::size_t i = 0; i < ink.view.boxes.size(); ++i) {
        const auto& box = ink.view.boxes[i];
        const auto at = box_of(ink.layout.boxes[i]);
        put_frame(box, ink, at, page);
        put_text(texts[i], at, ink.points, box.node < 0 ? Paint{80, 80, 80} : black_paint, page);
    }
}

}  // namespace pipward::paper::detail
