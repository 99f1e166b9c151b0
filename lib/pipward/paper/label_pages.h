// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/paper/label_grid.h"
#include "pipward/paper/label_layout.h"
#include "pipward/value/finding.h"
#include "pipward/value/sentence.h"

namespace pipward::paper {

/// How labels are printed.
struct LabelJob {
    LabelGrid grid;        ///< without problems_of()
    int first_place = 0;   ///< on a part-used first sheet; 0 is the first
    int copies = 1;        ///< of each label, one after the other
    bool outline = false;  ///< draws the labels' edges, for plain paper
};

/// A label and the row of the book that its findings speak of.
struct NamedLabel {
    std::string table;  ///< of the book
    std::string row;    ///< its name
    LabelText text;     ///< what the label says
};

/// Where a label came to lie.
struct PlacedLabel {
    std::size_t label = 0;  ///< into the labels given
    int page = 0;           ///< into LabelPages::pages
    int place = 0;          ///< on the page
    LaidLabel laid;         ///< without its pieces
};

/// Labels, ready to print.
struct LabelPages {
    std::vector<Page> pages;          ///< sheet by sheet
    std::vector<PlacedLabel> labels;  ///< one a label and copy, in the order printed
};

/// Lays labels out in their order, and a line of 50 mm to measure after printing where a margin has room for
/// it. Findings tell of letters and codes that are too small to read, of characters that no font of this
/// machine has, and (errors) of labels that do not fit at all.
LabelPages label_pages(
    std::span<const NamedLabel> labels, const LabelJob& job, const Typesetter& typesetter,
    const Wording& wording, Findings& findings,
    const std::function<void(double share)>& tell = [](double) {});

/// A warning where the machine lacks the font that labels are laid out for.
Findings font_findings(const Typesetter& typesetter);

}  // namespace pipward::paper
