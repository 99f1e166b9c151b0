// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/paper/line_drawing.h"

/// Inside of the drawing of lines: what is put on the page.
namespace pipward::paper::detail {

struct LineInk {
    const lineage::LineView& view;
    const lineage::LineLayout& layout;
    const LineFacts& facts;
    double points = 8;
    const Wording& wording;
};

/// How links of a role are drawn, without their course.
LinePiece line_pen(lineage::LineRole role);
void move_layout(lineage::LineLayout& layout, lineage::LineSpot by);
void put_links(const LineInk& ink, Page& page);
void put_boxes(const LineInk& ink, const std::vector<std::vector<BoxLine>>& texts, Page& page);
/// Title, legend and what the percentages mean.
void put_words(const LineSheet& sheet, const lineage::LineView& view, const LineFacts& facts,
               const Wording& wording, Page& page);

}  // namespace pipward::paper::detail
