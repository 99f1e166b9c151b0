// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/paper/pedigree_drawing.h"

/// Inside of the drawing of lines: what is put on the page.
namespace pipward::paper::detail {

struct PedigreeInk {
    const lineage::PedigreeView& view;
    const lineage::PedigreeLayout& layout;
    const PedigreeFacts& facts;
    double points = 8;
    const Wording& wording;
};

/// How links of a role are drawn, without their course.
LinePiece line_pen(lineage::PedigreeRole role);
void move_layout(lineage::PedigreeLayout& layout, lineage::PedigreeSpot by);
void put_links(const PedigreeInk& ink, Page& page);
void put_boxes(const PedigreeInk& ink, const std::vector<std::vector<BoxLine>>& texts, Page& page);
/// Title, legend and what the percentages mean.
void put_words(const PedigreeSheet& sheet, const lineage::PedigreeView& view, const PedigreeFacts& facts,
               const Wording& wording, Page& page);

}  // namespace pipward::paper::detail
